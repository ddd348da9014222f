import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = 'black jerseys, back numbers white, names too'
const list = "9 Lindqvist L\n19 Tremblay XL\n27 O'Dell 2XL\n61 Sorensen M"
const given = "19 gets the captain's C on the left chest, 9 and 27 get an A"

/** Who wears which letter after the last message: "19C 9A". */
const letters = async (language: 'en' | 'es', says: readonly string[]): Promise<string> => {
  const { rows, played } = await heard(language, says)
  expect(rows).toEqual(['9 Lindqvist men L', '19 Tremblay men XL', "27 O'Dell men 2XL", '61 Sorensen men M'])
  return Object.values(played.conversation.draft.rows)
    .flatMap(({ number, extras = {} }) => Object.values(extras).map(({ text }) => `${number}${text}`))
    .join(' ')
}

test.each([
  ['Scratch the A on 9. 61 gets it instead', '19C 27A 61A'],
  ['take the A off Lindqvist, Sorensen wears it now', '19C 27A 61A'],
  ['actually no A for 9. Give it to 61', '19C 27A 61A'],
  ["61 gets 9's A", '19C 27A 61A'],
  ["Sorensen gets Lindqvist's A", '19C 27A 61A'],
  ['move the C from 19 to 27, and 19 gets the A', '9A 19A 27C'],
  ["9 isn't an alternate anymore, 61 is", '19C 27A 61A'],
  ['Lindqvist gave up the A. Sorensen has it from now on', '19C 27A 61A'],
  ["change of captain: it's 27 now, not 19. 19 gets 27's A", '9A 19A 27C'],
  ['the A that was on 9 should be on 61', '19C 27A 61A'],
  ['9 loses the A, 61 gets one', '19C 27A 61A'],
  ['lose the C on 19, nobody is captain now', '9A 27A'],
  ['Scratch that, 27 is the C and 19 gets an A. 9 keeps his', '9A 19A 27C'],
  ['swap the letters: 19 gets the A and 27 gets the C', '9A 19A 27C'],
  ['no A on 27 please', '9A 19C'],
  ['drop the letter for 9. Sorensen gets it instead', '19C 27A 61A'],
])('a letter goes from one to another: %s', async (words, worn) => {
  expect(await letters('en', [order, list, given, words])).toBe(worn)
})

test.each([
  ['captain is Tremblay, As are Lindqvist and Sorensen', '9A 19C 61A'],
  ["C is Tremblay, A's are Sorensen and O'Dell", '19C 27A 61A'],
  ['The As: Lindqvist, Sorensen. C: Tremblay', '9A 19C 61A'],
  ['the C goes to 27 and the As go to 9 and 61', '9A 27C 61A'],
  ['Put letters on: captain 19, alternates 9 and 61', '9A 19C 61A'],
  ['Tremblay is captain with a C, Lindqvist and Sorensen wear an A', '9A 19C 61A'],
  ["Tremblay's the captain so put a C on his, and an A each for 9 and 27", '9A 19C 27A'],
])('letters that are given: %s', async (words, worn) => {
  expect(await letters('en', [order, list, words])).toBe(worn)
})

test.each([
  ['ya no lleva la A el 9, ahora la lleva el 61', '19C 27A 61A'],
  ['quítenle la A al 9, la trae el 61', '19C 27A 61A'],
])('una letra que cambia: %s', async (words, worn) => {
  expect(
    await letters('es', [
      'jerseys negros, números y nombres blancos atrás',
      list,
      'el 19 lleva la C en el pecho, el 9 y el 27 la A',
      words,
    ]),
  ).toBe(worn)
})
