import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** What stays off, and where: only that is taken away. Sentences of our own; common practice. */
const shop = await starterShop()

const all = 'front-number back-number name'

const english = {
  base: '12 navy soccer jerseys for the Marsh Harriers, white numbers front and back, white names on the back',
  sentences: [
    ['no names on the back, just numbers', 'front-number back-number'],
    ['no names on the back', 'front-number back-number'],
    ['actually no names on the back', 'front-number back-number'],
    ['skip the names on the back', 'front-number back-number'],
    ["we don't want names on the back", 'front-number back-number'],
    ["let's not do names", 'front-number back-number'],
    ["let's not do the names on the back after all", 'front-number back-number'],
    ["we don't need the names anymore", 'front-number back-number'],
    ['leave the names off', 'front-number back-number'],
    ['take the names off the back please', 'front-number back-number'],
    ['no names after all, numbers only', 'front-number back-number'],
    ['no numbers on the front', 'back-number name'],
    ['no numbers on front please', 'back-number name'],
    ['we want no number on the front', 'back-number name'],
    ["don't put numbers on the front", 'back-number name'],
    ["we don't need numbers on the front", 'back-number name'],
    ["let's not do numbers on the front", 'back-number name'],
    ['without the numbers on the front', 'back-number name'],
    ['leave the front blank', 'back-number name'],
    ['keep the front plain', 'back-number name'],
    ['nothing on the front', 'back-number name'],
    ['the front stays blank', 'back-number name'],
    ['leave the numbers off the front', 'back-number name'],
    ['numbers only on the back', 'back-number name'],
    ['no front numbers', 'back-number name'],
    ['on the front no numbers please', 'back-number name'],
    ['no numbers on the sleeves', all],
    ['no numbers on the front and no names', 'back-number'],
    ['neither names nor numbers on the front', 'back-number name'],
  ],
} as const

const spanish = {
  base: '12 jerseys de futbol azul marino para los Gavilanes de Anáhuac, números blancos adelante y atrás, el nombre atrás en blanco',
  sentences: [
    ['sin nombres atrás, nomás números', 'front-number back-number'],
    ['sin nombre en la espalda', 'front-number back-number'],
    ['mejor sin nombres atrás', 'front-number back-number'],
    ['no le pongan nombres atrás', 'front-number back-number'],
    ['ya no queremos los nombres', 'front-number back-number'],
    ['ya no llevan nombre atrás', 'front-number back-number'],
    ['quítenle los nombres de atrás', 'front-number back-number'],
    ['siempre no van los nombres', 'front-number back-number'],
    ['sin números adelante', 'back-number name'],
    ['sin número al frente', 'back-number name'],
    ['no queremos números adelante', 'back-number name'],
    ['no le pongan número al frente', 'back-number name'],
    ['ya no llevan número adelante', 'back-number name'],
    ['quiten los números de adelante', 'back-number name'],
    ['dejen el frente liso', 'back-number name'],
    ['el frente déjenlo sin nada', 'back-number name'],
    ['nada adelante', 'back-number name'],
    ['adelante no lleva nada', 'back-number name'],
    ['adelante va liso', 'back-number name'],
    ['números nomás atrás', 'back-number name'],
    ['al frente sin número por favor', 'back-number name'],
    ['adelante sin números', 'back-number name'],
    ['atrás sin nombre', 'front-number back-number'],
    ['sin números en las mangas', all],
    ['sin números adelante y sin nombres', 'back-number'],
  ],
} as const

const tables = [
  { language: 'en', ...english },
  { language: 'es', ...spanish },
] as const

const cases = tables.flatMap(({ language, base, sentences }) =>
  sentences.flatMap(([sentence, left]) => [
    { language, left, says: [base, sentence] },
    { language, left, says: [`${base}. ${sentence}`] },
  ]),
)

test.each([
  ['en', 'no number on the front please'],
  ['en', 'on the front no number'],
  ['es', 'adelante sin número por favor'],
  ['es', 'sin número al frente'],
] as const)('%s: "%s" is of all, though it is said of one number and the list is there', (language, sentence) => {
  const { base } = language === 'en' ? english : spanish
  const says = [`${base}\n1 Ana YM\n2 Bea YM\n9 Cleo YL`, sentence]
  const { composed } = play({ id: 'left-off', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  expect(composed.order.decorations.map(({ place }) => place).sort()).toEqual(['back-number', 'name'])
})

test.each(cases)('$says leaves $left', ({ language, says, left }) => {
  const { composed } = play({ id: 'left-off', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  expect(composed.order.decorations.map(({ place }) => place).sort()).toEqual(left.split(' ').sort())
})

/** Every place where something stands, once. */
const placesOf = (language: 'en' | 'es', says: readonly string[]): string => {
  const { composed } = play({ id: 'left-off', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return [...new Set(composed.order.decorations.map(({ place }) => place))].sort().join(' ')
}

test.each([
  ['en', 'home is kelly green with white numbers on the back, away is white with kelly green numbers. names on neither'],
  ['en', 'home jersey white, away jersey navy, gold numbers on the back of both. no names on either'],
  ['en', 'home jersey white, away jersey navy, gold numbers on the back. Names go on neither of them'],
  ['es', 'camiseta local blanca y camiseta visitante azul marino, número dorado atrás en las dos. Nombres en ninguna de las dos'],
  ['es', 'camiseta local blanca y camiseta visitante azul marino, número dorado atrás en las dos. Los nombres no van en ninguna'],
] as const)('what is on none of the garments is on neither: %s: %s', (language, words) => {
  expect(placesOf(language, [words])).toBe('back-number')
})

test.each([
  ['en', 'black tees with LYNX on the front in silver. No bib numbers or names anywhere'],
  ['en', 'black tees with LYNX on the front in silver. No race numbers anywhere, no names'],
  ['es', 'playeras negras con LINCES al frente en plata. Sin dorsal ni nombres en ninguna parte'],
] as const)('numbers and names of a kind that are refused leave nothing behind: %s: %s', (language, words) => {
  expect(placesOf(language, [words])).toBe('full-front')
})
