import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const base = {
  en: '6 red lacrosse jerseys for the Fen Otters, numbers 1 to 6, all adult M.',
  es: '6 jerseys rojos de futbol para las Nutrias del Fen, números del 1 al 6, todas M de adulto.',
}

test.each([
  ['en', 'Numbers 2 and 5 are the keepers so long sleeves for those two', ['2', '5']],
  ['en', 'long sleeves on #4', ['4']],
  ['en', '1 thru 3 need long sleeves', ['1', '2', '3']],
  ['en', '3 is our goalie, she wants long sleeves', ['3']],
  ['en', 'Long sleeves for 2, 4 and 6 please', ['2', '4', '6']],
  ['en', 'Everyone in long sleeves except 6', []],
  ['en', 'no long sleeves for 3', []],
  ['en', 'All of them long sleeve', []],
  ['es', 'El 2 y el 5 son los porteros, manga larga para esos dos', ['2', '5']],
  ['es', 'La 4 va de manga larga', ['4']],
  ['es', 'Manga larga para la 1 y la 6', ['1', '6']],
  ['es', 'Todas de manga larga', []],
] as const)('%s: numbers by a range in the same message, and “%s”: long sleeves for %j', async (language, words, numbers) => {
  const { played } = await heard(language, [`${base[language]} ${words}`])
  const { roster } = played.composed.order
  expect(roster).toHaveLength(6)
  expect(roster.flatMap(({ number, note }) => (note === undefined ? [] : [number])).sort()).toEqual(numbers)
})

test.each([
  ['en', '6 red jerseys for the Fen Otters, long sleeves for 1 and 2, numbers 1 to 6, all adult M', ['1', '2']],
  ['en', '6 red lacrosse jerseys for the Fen Otters with long sleeves, numbers 1 to 6, all adult M', []],
  ['en', '6 red long sleeve jerseys for the Fen Otters, numbers 1 to 6, all adult M', []],
  ['es', '6 jerseys rojos de manga larga para las Nutrias del Fen, números del 1 al 6, todas M de adulto', []],
] as const)('%s: “%s”: long sleeves for %j', async (language, words, numbers) => {
  const { played } = await heard(language, [words])
  const { roster } = played.composed.order
  expect(roster.flatMap(({ number, note }) => (note === undefined ? [] : [number])).sort()).toEqual(numbers)
})
