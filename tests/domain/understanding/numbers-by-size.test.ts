import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = 'navy jerseys, white number on the back'
const spanish = 'jerseys negros con número blanco atrás'
const five = ['1 men M', '17 men M', '44 men M', '6 men L', '29 men L']

test.each([
  'mens M: 1, 17, 44. mens L: 6, 29',
  'M: #1, #17, #44; L: #6, #29',
  'Medium: 1, 17, 44\nLarge: 6, 29',
  'mens M - 1, 17, 44 / mens L - 6, 29',
  'mediums are 1, 17 and 44, larges are 6 and 29',
  'numbers 1, 17 and 44 in medium, 6 and 29 in large',
])('numbers told by their size in English: %j', async (list) => {
  expect((await heard('en', [english, list])).rows).toEqual(five)
})

test.each([
  'hombre M: 1, 17 y 44. hombre G: 6, 29',
  'talla M: el 1, el 17 y el 44\ntalla G: el 6 y el 29',
  'los números 1, 17 y 44 en mediana, el 6 y el 29 en grande',
  'M - 1, 17, 44\nG - 6, 29',
])('numbers told by their size in Spanish: %j', async (list) => {
  expect((await heard('es', [spanish, list])).rows).toEqual(five)
})

test('cuts and single numbers beside several are kept', async () => {
  expect((await heard('en', [english, 'womens S: 3 and 90, youth XL: 42'])).rows).toEqual([
    '3 women S',
    '90 women S',
    '42 youth XL',
  ])
})

test.each([
  ['en', 'mens M: 4. mens L: 6. womens S: 3', ['men M x4', 'men L x6', 'women S x3']],
  ['en', 'S: 2, M: 4, L: 3', ['men S x2', 'men M x4', 'men L x3']],
  ['es', 'dama CH: 3. hombre M: 4', ['women S x3', 'men M x4']],
  ['en', '3 small, 4 medium', ['men S x3', 'men M x4']],
] as const)('one figure for each size counts them: %s %j', async (language, list, rows) => {
  expect((await heard(language, [language === 'en' ? english : spanish, list])).rows).toEqual(rows)
})

test('numbers that are on the list get the size that heads them', async () => {
  const first = 'navy jerseys, white number on the back, numbers 1, 17, 44, 6 and 29'
  expect((await heard('en', [first, 'M - 1, 17, 44\nL - 6, 29'])).rows).toEqual(five)
})

test.each([
  ['en', '29 should be in the medium lot'],
  ['en', 'move 29 over to the mediums'],
  ['en', '29 belongs in the medium group'],
  ['es', 'el 29 va en el grupo de las medianas'],
  ['es', 'el 29 debe ir en el lote mediano'],
] as const)('a number moves to another size: %s %j', async (language, words) => {
  const list = language === 'en' ? 'mens M: 1, 17. mens L: 6, 29' : 'hombre M: 1, 17. hombre G: 6, 29'
  const { rows } = await heard(language, [language === 'en' ? english : spanish, list, words])
  expect(rows).toEqual(['1 men M', '17 men M', '6 men L', '29 men M'])
})

test.each([
  ['Ann M #4 / Bo L #7 / Cy S #9', ['4 Ann men M', '7 Bo men L', '9 Cy men S']],
  ['Ann (4, M), Bo (7, L), Cy (9, S)', ['4 Ann men M', '7 Bo men L', '9 Cy men S']],
])('a size behind a name heads no numbers: %j', async (list, rows) => {
  const named = 'navy jerseys, white names and numbers on the back'
  expect((await heard('en', [named, list])).rows).toEqual(rows)
})
