import type { Words } from '../../../src/domain/understanding/words/word-list.ts'

/** A few words of Portuguese, as a language's folder would hold them. */
const words: { readonly [Room in keyof Words]?: Partial<Words[Room]> } = {
  notBorrowed: ['nos', 'com', 'a', 'um', 'no'],
  basics: {
    small: ['nas', 'nos', 'com', 'para', 'somos', 'precisamos', 'dia', 'e', 'as', 'os', 'camisas', 'nossa'],
    letters: /[ãõç]/,
    nounFirst: true,
    monthFirst: false,
    bends: true,
    months: [
      ['janeiro'],
      ['fevereiro'],
      ['marco'],
      ['abril'],
      ['maio'],
      ['junho'],
      ['julho'],
      ['agosto'],
      ['setembro'],
      ['outubro'],
      ['novembro'],
      ['dezembro'],
    ],
    weekdays: [['domingo'], ['segunda'], ['terca'], ['quarta'], ['quinta'], ['sexta'], ['sabado']],
    sizes: { pequenas: 'S', medias: 'M', grandes: 'L' },
    cuts: { infantil: 'youth' },
  },
  shades: { words: [], before: false, near: {} },
  artwork: { words: ['logotipo'], lettered: [], refused: ['sem'] },
  faces: {
    lettering: [],
    typeface: [],
    called: [],
    plain: [],
    numbers: ['numeros'],
    names: ['nomes'],
    links: [],
    joins: [],
  },
  list: [
    { means: { kind: 'garment', id: 'jersey' }, words: ['camisas', 'camisa'] },
    { means: { kind: 'content', id: 'number' }, words: ['números', 'número'] },
    { means: { kind: 'content', id: 'name' }, words: ['nomes', 'nome'] },
    { means: { kind: 'place', id: 'back' }, words: ['nas costas', 'costas'] },
    { means: { kind: 'colour', id: 'white' }, words: ['brancas', 'brancos', 'branco'] },
    { means: { kind: 'colour', id: 'red' }, words: ['vermelhos', 'vermelhas', 'vermelho'] },
    { means: { kind: 'with' }, words: ['com'] },
    { means: { kind: 'sport', id: 'volleyball' }, words: ['vôlei'] },
  ],
  cancelling: { anywhere: ['cancela o pedido', 'ja nao quero o pedido'] },
  intents: {
    hesitates: ['nao', 'desculpa'],
    undo: ['desfaz', 'volta atras'],
    undoWhat: ['isso', 'por favor'],
    thanks: ['(?:muito )?obrigad[oa]'],
    greets: ['ola', 'bom dia'],
    language: ['em portugues(?: por favor)?'],
  },
  complaints: {
    lift: ['descol(?:ou|aram|ando)', 'esta (?:saindo|descolando)'],
    unwashed: ['nunca lav\\w+'],
    washes: ['lavagens?', 'vezes'],
    dryer: ['secadora'],
    numberSaid: ['numero '],
    and: ['e'],
    teamIs: ['[Tt]ime'],
  },
  washCounts: { before: { uma: 1, duas: 2, tres: 3 }, behind: {} },
  people: {
    nameIs: ['[Mm]e chamo', '[Mm]eu nome é'],
    paidBy: ['[Qq]uem paga é', '[Pp]aga'],
    ours: ['[Oo]', '[Aa]'],
    collect: ['vou buscar'],
  },
  clock: {
    hours: { uma: 1, duas: 2, cinco: 5, nove: 9 },
    parts: { manha: 'morning', tarde: 'afternoon', noite: 'evening' },
    ahead: { amanha: 1, 'depois de amanha': 2 },
    counted: null,
  },
  hours: { partLead: ['da'], lead: ['ate'], article: ['as'], andHalf: ['e meia'], noon: ['meio dia'] },
  days: { next: ['proxima'], beforeWeekday: ['proxima', 'esta'], ofMonth: ['de'], need: ['para', 'precisamos'] },
  later: { sizes: ['tamanhos'], soon: ['depois'], sends: ['mando'] },
  occasions: { leads: ['para'], article: ['o'], events: ['campeonato', 'jogo'] },
}

/** What the few words leave out is empty, as in a language that is only begun. */
export const portugueseBeside = (model: Words): Words =>
  Object.assign(
    {},
    ...Object.entries(model).map(([room, whole]) => {
      const own = Reflect.get(words, room) ?? []
      const none = Object.entries(whole).map(([key, value]) => [key, Array.isArray(value) ? [] : {}])
      return { [room]: Array.isArray(whole) ? own : { ...Object.fromEntries(none), ...own } }
    }),
  )
