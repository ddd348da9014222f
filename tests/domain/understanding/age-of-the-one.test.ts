import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const one = { en: 'one black hoodie with ANA in white on the back', es: 'una sudadera negra con ANA en blanco atrás' }
const several = { en: '6 black hoodies with GO in white on the back', es: '6 sudaderas negras con VAMOS en blanco atrás' }

const after = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { conversation, replies } = play({ id: 'one', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return { ages: conversation.draft.ages, strange: replies.some(({ code }) => code === 'off-topic' || code === 'not-understood') }
}

test.each([
  ['en', 'she is 2', 'under-3'],
  ['en', "he's 4 years old", '3-12'],
  ['en', 'my son is 9', '3-12'],
  ['en', 'my daughter turns 7 on saturday', '3-12'],
  ['en', "it's for my granddaughter, she's 20 months", 'under-3'],
  ['en', 'my nephew is 15', '13-up'],
  ['es', 'tiene 2 añitos', 'under-3'],
  ['es', 'mi hijo tiene 9', '3-12'],
  ['es', 'la niña cumple 5 el domingo', '3-12'],
  ['es', 'es para mi nieta que tiene 20 meses', 'under-3'],
  ['es', 'ella tiene 15 años', '13-up'],
] as const)('(%s) %j: the age of the one who wears it', (language, said, ages) => {
  expect(after(language, one[language], said)).toEqual({ ages, strange: false })
})

test.each([
  ['en', 'I want a red tee for my daughter who turns 7 on saturday', '3-12'],
  ['es', 'quiero una playera roja para mi niño que cumple 5 el domingo', '3-12'],
] as const)('(%s) %j: in the first message too', (language, said, ages) => {
  expect(after(language, said).ages).toBe(ages)
})

test.each([
  ['en', 'she turns 3 on sunday', 'mixed'],
  ['es', 'cumple 3 el domingo', 'mixed'],
] as const)('(%s) %j: about to be of another age, it is asked', (language, said, ages) => {
  expect(after(language, one[language], said).ages).toBe(ages)
})

test.each([
  ['en', 'my son is 9'],
  ['es', 'mi hijo tiene 9'],
] as const)('(%s) %j: of one among several nothing follows for the others', (language, said) => {
  expect(after(language, several[language], said).ages).toBeUndefined()
})

test.each([
  ['en', 'a red jersey for my son with a white number on the back', "he's 23"],
  ['es', 'un jersey rojo con número blanco atrás', 'mi hijo tiene 23'],
] as const)('(%s) %j, then %j: a figure that may be a number makes nobody a grown-up', (language, first, said) => {
  expect(after(language, first, said).ages).toBeUndefined()
})
