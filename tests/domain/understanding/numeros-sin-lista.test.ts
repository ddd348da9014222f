import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order =
  'fútbol, somos los Grajos: 5 camisetas naranjas, número atrás en negro. Para el miércoles 2 de diciembre a las 19:00'

test.each([
  ['los números son 1, 7, 8, 10 y 14. el 1 y el 8 talla L, los demás M', ['1 L', '7 M', '8 L', '10 M', '14 M']],
  ['números 1, 7, 8, 10 y 14: el 1 L, el resto M', ['1 L', '7 M', '8 M', '10 M', '14 M']],
  ['los dorsales son el 1, el 7, el 8, el 10 y el 14, todos en M menos el 8 que es L', ['1 M', '7 M', '8 L', '10 M', '14 M']],
  ['los números son 1, 7, 8, 10 y 14, todos M', ['1 M', '7 M', '8 M', '10 M', '14 M']],
])('players told by numbers alone, with their sizes: %s', async (words, rows) => {
  const { played, rows: found } = await heard('es', [order, words])
  expect(found.map((row) => row.replace(' men', ''))).toEqual(rows)
  expect(played.composed.order.needBy).toBe('2026-12-02T19:00')
})

test.each(['el 7 en XL', 'solo que el 7 en XL y listo', 'el 1 y el 8 talla L', 'el 10 que es L'])(
  'a number that is given a size is no day: %s',
  async (words) => {
    expect((await heard('es', [order, words])).played.conversation.draft.day).toBe('2026-12-02')
  },
)

test.each(['mejor para el 7', 'las necesito el 7', 'mejor para el 7, talla M todas'])('a day stays one: %s', async (words) => {
  expect((await heard('es', [order, words])).played.conversation.draft.day).toBe('2026-12-07')
})

test.each([
  [
    'firma y paga Leandro Bustamante. recoge su mujer, Pilar Cifuentes',
    ['Leandro Bustamante', 'Leandro Bustamante', 'Pilar Cifuentes'],
  ],
  ['paga y recoge la tesorera, Inés Roldán', [undefined, 'Inés Roldán', 'Inés Roldán']],
  ['firma, paga y recoge Nuria Albal', ['Nuria Albal', 'Nuria Albal', 'Nuria Albal']],
  ['firma mi cuñado Fermín Ochotorena', ['Fermín Ochotorena', undefined, undefined]],
])('one who does two things: %s', async (words, [signsOff, pays, collects]) => {
  const { people } = (await heard('es', [order, words])).played.composed.order
  expect([people.signsOff, people.pays, people.collects]).toEqual([signsOff, pays, collects])
})
