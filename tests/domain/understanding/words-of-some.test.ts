import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** Whose lines have a word, where and in which colour, and what stands on all. */
const after = (language: 'en' | 'es', says: readonly string[]) => {
  const { composed } = play({ id: 'some', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const worn = composed.order.roster.flatMap(({ number, extras = [] }) =>
    extras.map(({ place, content }) => `${number} ${place} ${content?.kind === 'text' ? content.text : ''}`),
  )
  const all = composed.order.decorations.map(({ place }) => place)
  return [...all, ...worn].join(', ')
}

const english =
  "maroon jerseys with white numbers on the back, no names\nwomen's sizes\n2 Amory M\n5 Bishara S\n9 Calloway M\n17 Dvorak L\n23 Eastman M"
const spanish =
  'jerseys guindas con número blanco atrás, sin nombres\ntallas de dama\n2 Amaya M\n5 Bravo CH\n9 Casas M\n17 Duarte G\n23 Elías M'
const five = 'back-number, 5 right-sleeve SENIOR, 9 right-sleeve SENIOR'

test.each([
  [english, '5 and 9 get SENIOR on the right sleeve in gold'],
  [english, 'put SENIOR on the right sleeve for Bishara and Calloway'],
  [
    english,
    'the seniors, 5, 9 and 23, get SENIOR on the right sleeve in gold. the other two do not',
    'So SENIOR is only for 5 and 9',
  ],
  [english, '5, 9 and 23 wear SENIOR on the right sleeve', "Eastman doesn't get SENIOR after all"],
  [english, 'SENIOR on the right sleeve in gold', 'SENIOR is only for 5 and 9 please'],
])('a word that some wear is theirs: %s / %s / %s', (...says) => {
  expect(
    after(
      'en',
      says.filter((one) => one !== undefined),
    ),
  ).toBe(five)
})

test.each([
  [spanish, '5 y 9 llevan SENIOR en la manga derecha en dorado'],
  [spanish, 'ponles SENIOR en la manga derecha a Bravo y a Casas'],
  [spanish, '5, 9 y 23 llevan SENIOR en la manga derecha', 'SENIOR es solo para la 5 y la 9'],
  [spanish, '5, 9 y 23 llevan SENIOR en la manga derecha', 'Elías no lleva SENIOR'],
])('una palabra que llevan algunas es de ellas: %s / %s / %s', (...says) => {
  expect(
    after(
      'es',
      says.filter((one) => one !== undefined),
    ),
  ).toBe(five)
})

test.each([
  ['en', english, 'GULLS on the right sleeve, 3 inches, in gold', 'back-number, right-sleeve'],
  ['en', english, 'everyone gets GULLS on the right sleeve', 'back-number, right-sleeve'],
  ['en', english, 'and 5 of them with GULLS on the front', 'back-number, full-front'],
  ['es', spanish, 'todas llevan LINCES en la manga derecha de 5 cm', 'back-number, right-sleeve'],
] as const)('a word that nobody alone wears is on all: %s: %s / %s', (language, first, next, expected) => {
  expect(after(language, [first, next])).toBe(expected)
})

test.each([
  [
    'en',
    'white hockey jerseys, navy numbers on the back. Letters go on the left chest\n5 Berg XL\n16 Dunn L\n30 Lach M',
    'C for 5, A for 16',
  ],
  [
    'es',
    'jerseys de hockey blancos, números azul marino atrás. Las letras van en el pecho izquierdo\n5 Berg XG\n16 Duna G\n30 Luz M',
    'C para el 5, A para el 16',
  ],
] as const)("the place of players' letters is no word of its own: %s: %s / %s", (language, ...says) => {
  expect(after(language, says)).toBe('back-number, 5 left-chest C, 16 left-chest A')
})
