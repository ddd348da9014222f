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
