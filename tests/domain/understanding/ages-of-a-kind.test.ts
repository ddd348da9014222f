import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const numbered = {
  en: 'black tees, white number on the back, numbers 1 to 15, all medium',
  es: 'playeras negras, número blanco atrás, del 1 al 15, todas M',
}

const numbersOf = async (language: 'en' | 'es', said: string) => {
  const { played } = await heard(language, [numbered[language], said])
  const { roster } = played.composed.order
  return {
    numbers: roster.map(({ number }) => Number(number)),
    ages: [...new Set(roster.map(({ age }) => age))],
    draft: played.conversation.draft.ages,
  }
}

const all = Array.from({ length: 15 }, (_, index) => index + 1)

test.each([
  ['es', 'son chavos de 13 a 15', '13-up'],
  ['es', 'son niñas de 6 a 9', '3-12'],
  ['es', 'puros chavitos de 8 a 10 años', '3-12'],
  ['es', 'las muchachas tienen entre 14 y 16', '13-up'],
  ['es', 'son jóvenes de 15 a 17.', '13-up'],
  ['es', 'son niños, de 7 a 9', '3-12'],
  ['en', 'kids 8-10', '3-12'],
  ['en', "they're girls from 9 to 11", '3-12'],
  ['en', 'the boys are 13 to 15', '13-up'],
  ['en', 'these are kids aged 7 to 9', '3-12'],
  ['en', 'girls between 14 and 16', '13-up'],
] as const)('(%s) %j: years of children are told and nobody gets another number', async (language, said, age) => {
  expect(await numbersOf(language, said)).toEqual({ numbers: all, ages: [age], draft: age })
})

test.each([
  ['es', 'son niños de 11 a 14'],
  ['en', 'kids 11 to 14'],
  ['es', 'son nenes de 2 a 4'],
] as const)('(%s) %j: of both sides of a bound, who is which is asked', async (language, said) => {
  expect(await numbersOf(language, said)).toMatchObject({ numbers: all, draft: 'mixed' })
})

test.each([
  ['es', 'cambia el 15 a 16', 16],
  ['en', '#15 should be 16', 16],
  ['es', 'el niño de la 15 va con el 16', 16],
] as const)('(%s) %j changes a number as before', async (language, said, number) => {
  const { numbers, draft } = await numbersOf(language, said)
  expect([numbers.includes(number), numbers.includes(15), draft]).toEqual([true, false, undefined])
})

test.each([
  ['en', 'boys 1 to 9 are small', undefined],
  ['es', 'las niñas del 1 al 9 son talla chica', undefined],
  ['en', 'girls 2-14', undefined],
] as const)('(%s) %j tells of numbers and of no years', async (language, said, ages) => {
  expect((await numbersOf(language, said)).draft).toBe(ages)
})
