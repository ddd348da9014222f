import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['family reunion tees, red, LOPEZ across the front in white', '2 3T, 4 youth S, 5 ladies M, 6 mens L']
const spanish = ['playeras rojas, LÓPEZ al frente en blanco', '2 3T, 4 CH de niño, 5 M de dama, 6 G de hombre']
const whole = ['toddler 3T x2', 'youth S x4', 'women M x5', 'men L x6']

test.each([
  'forget the 3T',
  'forget the 3Ts',
  'skip the 3T',
  'no 3T after all',
  'never mind the 3T',
  "we don't need the 3T anymore",
  'no more 3T',
  'lose the 3Ts',
  'take off the 3Ts',
  'zero 3T',
  '0 of the 3T',
  'leave out the 3Ts',
  'the 3Ts are out',
])('a counted size that is wanted no more: %s', async (words) => {
  expect((await heard('en', [...english, words])).rows).toEqual(whole.slice(1))
})

test.each([
  'olvida las 3T',
  'ya no las 3T',
  'sin las 3T',
  'las 3T ya no',
  'ya no ocupamos las 3T',
  'las 3T no van',
  'olvídate de las 3T',
  'cancela las 3T',
])('una talla que ya no va: %s', async (words) => {
  expect((await heard('es', [...spanish, words])).rows).toEqual(whole.slice(1))
})

test('two sizes may go at once', async () => {
  expect((await heard('en', [...english, 'forget the ladies M and the 3T'])).rows).toEqual(['youth S x4', 'men L x6'])
})

test.each(['so 6 of the ladies M', 'so 6 of the ladies M then', '6 ladies M now'])('another amount: %s', async (words) => {
  expect((await heard('en', [...english, words])).rows[2]).toBe('women M x6')
})

test('otra cantidad', async () => {
  const { rows, played } = await heard('es', [...spanish, 'entonces 6 de las M de dama'])
  expect(rows[2]).toBe('women M x6')
  expect(played.conversation.draft.team).toBeUndefined()
})

test.each([
  ['en', "don't forget the 3T"],
  ['en', 'no M runs small'],
  ['en', "the ladies M don't fit well"],
  ['en', 'if we skip the 3T is it cheaper'],
  ['en', 'no, the 3T are fine'],
  ['es', 'no olviden las 3T'],
  ['es', 'sin las 3T cuánto sale'],
] as const)('%s: nothing goes by: %s', async (language, words) => {
  expect((await heard(language, [...(language === 'en' ? english : spanish), words])).rows).toEqual(whole)
})
