import type { Shades } from '../word-list.ts'

/** Shades that are asked about, as they are called. */
export const esShades: Shades = {
  before: false,
  words: [
    ...['neón', 'fosforescente', 'fosfo', 'fluorescente', 'pastel', 'eléctrico', 'limón', 'militar', 'pistache', 'chillón'],
    ...['fuerte', 'quemado', 'petróleo', 'olivo', 'menta', 'esmeralda', 'bajito', 'claro', 'oscuro'],
  ],
  near: {
    lila: ['purple', 'pink'],
    lavanda: ['purple', 'pink'],
    ciruela: ['purple', 'maroon'],
    menta: ['teal', 'kelly'],
    limón: ['kelly', 'yellow'],
    esmeralda: ['kelly', 'dark-green'],
    olivo: ['dark-green', 'brown'],
    caqui: ['cream', 'brown'],
    beige: ['cream', 'brown'],
    arena: ['cream', 'brown'],
    coral: ['orange', 'pink'],
    durazno: ['orange', 'pink'],
    salmón: ['pink', 'orange'],
    magenta: ['pink', 'purple'],
    fucsia: ['pink', 'purple'],
    fiusha: ['pink', 'purple'],
    bronce: ['brown', 'gold'],
    cobre: ['brown', 'gold'],
    mostaza: ['gold', 'yellow'],
    índigo: ['navy', 'purple'],
  },
}
