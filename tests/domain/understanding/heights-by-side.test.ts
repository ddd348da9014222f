import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** Heights in tenths of a millimetre by place. */
const heightsAfter = (language: 'en' | 'es', says: readonly string[]) => {
  const { composed } = play({ id: 'sides', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return Object.fromEntries(
    composed.order.decorations.flatMap(({ place, height }) =>
      place !== undefined && height !== undefined && 'micrometres' in height ? [[place, height.micrometres / 100]] : [],
    ),
  )
}

const english = 'royal jerseys, white numbers front & back'
const spanish = 'jerseys azul rey, números blancos adelante y atrás'
const inches = { 'back-number': 2032, 'front-number': 1016 }
const centimetres = { 'back-number': 2000, 'front-number': 1000 }

test.each([
  'front 4 back 8',
  'back 8 front 4',
  '8 on the back and 4 on the front',
  '4 on the front and 8 on the back, inches',
  '8 inch on the back and 4 on the front',
  '8" back, 4" front',
  '8" in back and 4" in front',
  'back ones 8" front ones 4"',
  'the back ones 8 inches, the front ones 4',
  'the front number should be 4 inches and the back 8',
  'front: 4", back: 8"',
  'make the backs 8" and the fronts 4"',
  'back numbers 8 inches tall, front numbers 4 inches tall',
  '8 inches for the back and 4 for the front',
  'the big ones on the back 8", small ones on the front 4"',
])('each side has the height that is told of it, whichever stands first: %s', (words) => {
  expect(heightsAfter('en', [english, words])).toEqual(inches)
  expect(heightsAfter('en', [`${english}, ${words}`])).toEqual(inches)
})

test.each([
  'los de atrás de 20 cm y los de adelante de 10',
  'atrás 20 adelante 10',
  '10 adelante y 20 atrás',
  'de 20 atrás y de 10 adelante',
  'el de atrás 20 cm, el de adelante 10 cm',
  'en la espalda de 20 y enfrente de 10',
  'atrás: 20 cm, adelante: 10 cm',
])('cada lado con su altura: %s', (words) => {
  expect(heightsAfter('es', [spanish, words])).toEqual(centimetres)
  expect(heightsAfter('es', [`${spanish}, ${words}`])).toEqual(centimetres)
})

test.each([
  [
    'en',
    'royal jerseys, white numbers both front and back, front 4 inch back 8 inch, last name above the back number in white',
    inches,
  ],
  ['en', 'royal jerseys, white numbers on both the front and the back, four inches in front and eight inches behind', inches],
  ['es', 'jerseys azul rey, números blancos, diez centímetros adelante y veinte centímetros atrás', centimetres],
  ['es', 'jerseys azul rey, números blancos tanto adelante como atrás, de 20 cm atrás y de 10 cm adelante', centimetres],
  ['en', 'royal jerseys, white numbers, ten cm in front and twenty cm in back', centimetres],
] as const)('heights of both sides are told in words, and of both garments: %s: %s', (language, words, heights) => {
  const { name: _, ...found } = heightsAfter(language, [words])
  expect(found).toEqual(heights)
})

const front = 'royal jerseys, white numbers, 10 cm in front and 15 cm in back'
const delante = 'jerseys azul rey, números blancos, 10 cm adelante y 15 cm atrás'

test.each([
  ['en', front, 'raise the back ones to 20 cm, not the front ones'],
  ['en', front, 'make the back 20 cm, the front ones not'],
  ['en', front, 'back numbers 20 cm please, but not the front numbers'],
  ['es', delante, 'y los números de atrás súbanlos a 20 cm, los de adelante no'],
  ['es', delante, 'los de atrás que sean de veinte centímetros, pero no los de adelante'],
  ['es', delante, 'el de atrás de 20 cm, el de adelante no'],
] as const)('what a change does not touch stays as it is: %s: %s / %s', (language, ...says) => {
  expect(heightsAfter(language, says)).toEqual(centimetres)
})

test('a side that is refused without such words is none', () => {
  const only = { 'back-number': 2000 }
  expect(heightsAfter('en', [front, '20 cm on the back, nothing on the front'])).toEqual(only)
  expect(heightsAfter('en', ['royal jerseys, white numbers, 20 cm on the back, not on the front'])).toEqual(only)
})

test('two sides may share a height, and two heights stand in the order of their sides', () => {
  const sleeves = { 'back-number': 2540, 'front-number': 2540, 'left-sleeve': 762, 'right-sleeve': 762 }
  const says = ['maroon jerseys, white numbers front, back and both sleeves', 'Fronts and backs 10in, sleeves 3in']
  expect(heightsAfter('en', says)).toEqual(sleeves)
  expect(heightsAfter('en', ['royal jerseys, white numbers back and front, 8 and 4 inches'])).toEqual(inches)
})

test.each([
  [english, 'put 8 of them on the back burner and send 4 to the front office'],
  ['black hoodies, OTTERS in white', '8 on the back and 4 on the front'],
  [english, 'front 40 back 80'],
])('figures that are no heights are not taken for any: %s / %s', (...says) => {
  expect(heightsAfter('en', says)).toEqual({})
})
