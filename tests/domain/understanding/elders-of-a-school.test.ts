import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const agesOf = async (language: 'en' | 'es', words: string) =>
  (await heard(language, [words])).played.conversation.draft.ages ?? null

test.each([
  ['en', 'Westgate Elementary staff shirts: royal blue tees, WESTGATE across the chest in gold'],
  ['en', 'Tees for the teachers of Birch Elementary, navy with BIRCH in white on the front'],
  ['en', 'the parents of our kindergarten want red hoodies with KINDER CREW on the front in white'],
  ['es', 'Playeras para las maestras de la primaria Benito, azul marino con PRIMARIA adelante en blanco'],
  ['es', 'Sudaderas rojas para los papás del kinder, con KINDER adelante en blanco'],
  ['es', 'Polos grises para el personal de la primaria'],
] as const)('(%s) %j tells nobody’s age', async (language, words) => {
  expect(await agesOf(language, words)).toBe(null)
})

test.each([
  ['en', 'Field day tees for Birch Elementary, yellow with ROOM 12 on the front in black'],
  ['en', 'kindergarten soccer, red jerseys with white numbers on the back'],
  ['es', 'Playeras amarillas para los niños de la primaria, con SALÓN 12 adelante en negro'],
] as const)('(%s) %j is of children', async (language, words) => {
  expect(await agesOf(language, words)).toBe('3-12')
})
