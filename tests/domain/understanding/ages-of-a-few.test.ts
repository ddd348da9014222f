import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: '10 black hoodies with BRISA in silver stones on the back',
  es: '10 sudaderas negras con BRISA en piedras plateadas en la espalda',
}

const agesOf = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'few', now: '2026-11-20T10:00', language, says: [orders[language], ...says], facts: [] }, shop).conversation.draft
    .ages

test.each([
  ['en', 'girls are 6 to 9, two of them are 2'],
  ['en', 'girls are 6 to 9 years old, and two are 2 years old'],
  ['en', "they're 4 to 6, one is 2"],
  ['en', 'kids 5-8, one is only 20 months'],
  ['en', 'kids 5-8, the youngest is 2'],
  ['es', 'las niñas tienen entre 6 y 9 años, dos tienen 2 añitos'],
  ['es', 'son niñas de 4 a 6, una de 2'],
  ['es', 'son niños de 5 a 8, el más chiquito tiene 20 meses'],
  ['es', 'niñas de 6 a 9, la más chica tiene apenas 2'],
] as const)('(%s) %j: one under three among older children is asked about, and nobody’s stones are freed', (language, said) => {
  expect(agesOf(language, said)).toBe('mixed')
})

test.each([
  ['en', 'kids 5-8', 'one of them is 2'],
  ['es', 'son niñas de 5 a 8', 'una tiene 2 añitos'],
] as const)('(%s) %j, then %j: in a later message too', (language, first, said) => {
  expect(agesOf(language, first, said)).toBe('mixed')
})

test.each([
  ['en', 'girls are 6 to 9, two of them are 7', '3-12'],
  ['en', 'kids 5-8, one is 9', '3-12'],
  ['en', 'kids 5-8, two are large', '3-12'],
  ['es', 'son niñas de 4 a 6, dos de 5', '3-12'],
  ['es', 'son niñas de 6 a 9, dos son talla M', '3-12'],
] as const)('(%s) %j: of the same age nothing is asked', (language, said, ages) => {
  expect(agesOf(language, said)).toBe(ages)
})
