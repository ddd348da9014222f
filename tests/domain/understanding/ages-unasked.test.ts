import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const english = 'White jerseys, navy numbers on the back, December 18 at noon, Saltmarsh Swifts softball'
const spanish = 'Playeras blancas, número azul marino atrás, 18 de diciembre a mediodía, Garzas de softbol'

const ages = (language: 'en' | 'es', words: string, list: string) =>
  play({ id: 'ages', now: '2026-11-09T10:00', language, says: [`${words}\n${list}`], facts: [] }, shop).conversation.draft.ages ??
  null

test.each([
  ['everyones 13 or 14', '13-up'],
  ['everyone is 13 or 14', '13-up'],
  ['theyre all 13 or 14', '13-up'],
  ['they are 15 to 17', '13-up'],
  ['all girls are 13+', '13-up'],
  ['all our players are 14 and up', '13-up'],
  ['they are all 13 and older', '13-up'],
  ['kids are 8 to 11', '3-12'],
  ['my girls are 9 and 10', '3-12'],
  ['the kids are 9 and 10 years old', '3-12'],
  ['all the boys are 11 or 12', '3-12'],
  ['everyone is 10 and up', 'mixed'],
  ['the girls are 12 to 14', 'mixed'],
  ['number 13 and up are the starters', null],
  ['players 4 to 11', null],
  ['all 12 to 14 ounce cloth please', null],
])('%s', (words, wanted) => {
  expect(ages('en', `${english}, ${words}`, '3 Cole YL\n12 Foley YM')).toBe(wanted)
})

test.each([
  ['todas tienen 13 o 14', '13-up'],
  ['todos tienen 14 o más', '13-up'],
  ['todas son de 9 a 11', '3-12'],
  ['los niños tienen 8 o 9', '3-12'],
])('%s', (words, wanted) => {
  expect(ages('es', `${spanish}, ${words}`, '3 Soto CH\n12 Peña M')).toBe(wanted)
})
