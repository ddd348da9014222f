import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['es', 'oiga las playeras que nos hizo en julio'],
  ['es', 'hola, los jerseys que nos hicieron para las Nutrias'],
  ['es', 'unas sudaderas que les compramos a ustedes'],
  ['en', 'hi, the jerseys you made us in july'],
  ['en', 'those hoodies we got from you last year'],
  ['en', 'about the red shirts you guys printed for us'],
] as const)('(%s) %j: garments that were made begin no order, and what about them is asked', async (language, said) => {
  const { played } = await heard(language, [said])
  expect(played.conversation.draft.garments).toEqual({})
  expect(played.replies.map(({ code }) => code)).toEqual(['earlier-mentioned'])
})

test.each([
  ['es', 'oiga las playeras que nos hizo en julio', 'se les está despegando el número'],
  ['en', 'hi, the jerseys you made us in july', 'the numbers are peeling off'],
] as const)('(%s) %j, then %j: a complaint is told in several messages', async (language, first, said) => {
  const { played } = await heard(language, [first, said])
  expect(played.conversation.complaint?.kind).toBe('lift')
  expect(played.conversation.draft.garments).toEqual({})
})

test.each([
  ['es', 'quiero 5 playeras como las que nos hizo en julio'],
  ['es', 'necesitamos más jerseys de los que nos hicieron'],
  ['en', 'we need 5 more of the jerseys you made us in july'],
  ['en', 'can we get the same hoodies you made us last year'],
  ['en', 'black jerseys, gold numbers on the back'],
  ['en', 'the jerseys you made us in july are peeling'],
] as const)('(%s) %j: who orders or complains does that', async (language, said) => {
  const { played } = await heard(language, [said])
  expect(played.replies.map(({ code }) => code)).not.toContain('earlier-mentioned')
})
