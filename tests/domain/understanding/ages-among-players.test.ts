import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: 'red jerseys, white names and numbers on the back',
  es: 'camisetas rojas con nombre y número blanco atrás',
} as const

const listOf = async (language: 'en' | 'es', says: readonly string[]) => {
  const { played } = await heard(language, says)
  const { roster, needBy, gameDay } = played.composed.order
  const rows = roster.map(({ number, name, fit, size, age }) =>
    [number, name, fit, size, age === 'unknown' ? undefined : age].filter((part) => part !== undefined).join(' '),
  )
  return { rows, day: needBy ?? gameDay }
}

test.each([
  [
    'es',
    '4 Iker 8 años, 5 Leo, 11 Jan y 15 Pol. Todos talla M de niño menos Pol que es L',
    ['4 Iker youth M 3-12', '5 Leo youth M', '11 Jan youth M', '15 Pol youth L'],
  ],
  ['es', 'van: 4 Iker (8 años), 5 Leo (9 años), 6 Marc (14 años)', ['4 Iker men 3-12', '5 Leo men 3-12', '6 Marc men 13-up']],
  ['en', '4 Ian 8 years old, 5 Leo, 6 Mark and 7 Hugo', ['4 Ian men 3-12', '5 Leo men', '6 Mark men', '7 Hugo men']],
  ['en', '4 Ian, 8 yrs, youth M, 5 Leo, 9 yrs, youth L', ['4 Ian youth M 3-12', '5 Leo youth L 3-12']],
  ['en', '10 Bill\n11 Jan\n12 Neil', ['10 Bill men', '11 Jan men', '12 Neil men']],
] as const)('players with an age behind some of them, %s: %j', async (language, list, rows) => {
  expect(await listOf(language, [first[language], list])).toEqual({ rows, day: undefined })
})

test.each([
  [
    'en',
    'Milo, 2 yrs, 2T\nFinn, 6 and a half, YS\nBea, 18 months, 2T',
    ['Milo toddler 2T under-3', 'Finn youth S 3-12', 'Bea toddler 2T under-3'],
  ],
  ['en', 'Milo, 2 yrs, 2T\nAda, 4, 4T', ['Milo toddler 2T under-3', 'Ada toddler 4T 3-12']],
  ['en', 'Milo 2 years youth S\nBea (7 yrs) youth M', ['Milo youth S under-3', 'Bea youth M 3-12']],
  ['es', 'Milo, 2 años, 2T\nFina, 6 y medio, juvenil CH', ['Milo toddler 2T under-3', 'Fina youth S 3-12']],
  ['es', 'Bea, 18 meses, 2T\nLolo, 15 años, M', ['Bea toddler 2T under-3', 'Lolo men M 13-up']],
  // Without a word of years a figure is a number.
  ['en', 'Milo, 2, 2T\nAda, 4, 4T', ['2 Milo toddler 2T', '4 Ada toddler 4T']],
  ['es', 'Milo, 2, M\nAda, 4, L', ['2 Milo men M', '4 Ada men L']],
] as const)('ages in a column are no numbers, %s: %j', async (language, list, rows) => {
  expect((await listOf(language, [first[language], list])).rows).toEqual(rows)
})

test.each([
  ['en', 'we are 12 Tigers, 14 Lions, 10 Bears'],
  ['en', 'games are on 5 Jan, 6 Feb and 7 Mar'],
  ['en', '3 Red, 4 White, 5 Black'],
  ['es', 'jugamos el 5 de enero, 6 de febrero y 7 de marzo'],
] as const)('counts and days are no players, %s: %j', async (language, words) => {
  expect((await listOf(language, [first[language], words])).rows.filter((row) => /\d [A-Z]/.test(row))).toEqual([])
})
