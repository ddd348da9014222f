import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** First words of orders as they come, run on and cut short; common practice. */
const shop = await starterShop()

const orderOf = (language: 'en' | 'es', said: string) =>
  play({ id: 'first', now: '2026-11-20T10:00', language, says: [said], facts: [] }, shop).composed.order

test.each([
  ['en', '11 black long sleeve tops with RAVENS in silver rhinestones', [['tee', 'black']]],
  ['en', '20 black tees w white logo left chest, names on back', [['tee', 'black']]],
  ['en', '11 black long sleeve tees with white numbers on the back', [['tee', 'black']]],
] as const)('%s: "%s" names its garment', (language, said, garments) => {
  expect(orderOf(language, said).garments.map(({ id, colour }) => [id, colour])).toEqual(garments)
})

test.each([
  ['en', 'about 14 shirts. Need before our first game April 10'],
  ['en', 'looking for around 20 jerseys for the game April 10'],
  ['es', 'unas 14 playeras. Las necesitamos antes del partido del 10 de abril'],
] as const)('%s: "%s" names no hour', (language, said) => {
  expect(orderOf(language, said).needBy).toBeUndefined()
})
