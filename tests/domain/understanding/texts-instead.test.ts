import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** The texts by their places. */
const textsAfter = (language: 'en' | 'es', says: readonly string[]) => {
  const { composed } = play({ id: 'texts', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return Object.fromEntries(
    composed.order.decorations.flatMap(({ place, content }) =>
      place === undefined || content?.kind !== 'text' ? [] : [[place, content.text]],
    ),
  )
}

const english = 'grey hoodies, NIGHT OWLS on the front in purple, and VOLUNTEER on the right sleeve in purple'
const spanish = 'sudaderas grises, BÚHOS al frente en morado y VOLUNTARIO en la manga derecha en morado'

test.each([
  'can the sleeve say HELPER instead of VOLUNTEER? the junior ones get confused otherwise',
  'HELPER instead of VOLUNTEER please',
  'change VOLUNTEER to HELPER',
  'the sleeve should read HELPER, not VOLUNTEER',
  'make the sleeve one HELPER rather than VOLUNTEER, in gold',
])('a text takes the place of another: %s', (words) => {
  expect(textsAfter('en', [english, words])).toEqual({ 'full-front': 'NIGHT OWLS', 'right-sleeve': 'HELPER' })
})

test.each([
  'que la manga diga AYUDANTE en vez de VOLUNTARIO',
  'cambien VOLUNTARIO por AYUDANTE',
  'en la manga AYUDANTE, no VOLUNTARIO',
  'mejor AYUDANTE en lugar de VOLUNTARIO, en amarillo',
])('un texto ocupa el lugar de otro: %s', (words) => {
  expect(textsAfter('es', [spanish, words])).toEqual({ 'full-front': 'BÚHOS', 'right-sleeve': 'AYUDANTE' })
})

test.each([
  ['en', english, 'also put RUN BRIGHT on the nape', { nape: 'RUN BRIGHT' }],
  ['en', english, 'and CREW on the left sleeve in white', { 'left-sleeve': 'CREW' }],
  ['es', spanish, 'y en la nuca CORRE', { nape: 'CORRE' }],
] as const)('a text at a place of its own leaves the others alone: %s: %s / %s', (language, first, next, added) => {
  const before = textsAfter(language, [first])
  expect(textsAfter(language, [first, next])).toEqual({ ...before, ...added })
})

test.each([
  [
    'en',
    'black hoodies, LYNX on the front in white and 25 YEARS on the left sleeve',
    { 'full-front': 'LYNX', 'left-sleeve': '25 YEARS' },
  ],
  ['en', 'black tees, 10TH ANNIVERSARY on the front in gold', { 'full-front': '10TH ANNIVERSARY' }],
  ['en', 'black tees with VELVET GUTTERS huge on the front in gold', { 'full-front': 'VELVET GUTTERS' }],
  ['en', 'grey hoodies, READ ALL NIGHT on the front in purple', { 'full-front': 'READ ALL NIGHT' }],
  [
    'en',
    'grey hoodies, LYNX on the front in white, on the left sleeve the year, 2027, in gold',
    { 'full-front': 'LYNX', 'left-sleeve': '2027' },
  ],
  [
    'es',
    'sudaderas negras: BOTA FLOJA delante en naranja, y en la manga derecha 25 AÑOS en naranja',
    { 'full-front': 'BOTA FLOJA', 'right-sleeve': '25 AÑOS' },
  ],
  [
    'es',
    'sudaderas negras, LA MURGA adelante en plata y en la manga derecha el año, 2027, en blanco',
    { 'full-front': 'LA MURGA', 'right-sleeve': '2027' },
  ],
  ['en', '12 LYNX hoodies in black, LYNX on the front in white', { 'full-front': 'LYNX' }],
  ['en', 'black tees, LYNX on the front in gold glitter. We need them this year, 2027 is too late', { 'full-front': 'LYNX' }],
  ['es', 'playeras negras, LINCES al frente en blanco. El equipo cumple 25 años', { 'full-front': 'LINCES' }],
] as const)('figures, years and words of the trade are written where they belong to a text: %s: %s', (language, words, texts) => {
  expect(textsAfter(language, [words])).toEqual(texts)
})
