import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white jerseys, navy names and numbers on the back', "9 Josiah S\n7 Talia M\n12 O'Malley L\n4 Noelle XL"]
const spanish = ['jerseys blancos con nombres y números en negro', '9 Josué S\n7 Ana P. M\n4 Nunez L\n0 Cota XL']

test.each([
  ['9 wants to be 25 now', 0, '25 Josiah men S'],
  ['Josiah would rather wear 25', 0, '25 Josiah men S'],
  ['Josiah should be 25 instead of 9', 0, '25 Josiah men S'],
  ['talia goes down to a small', 1, '7 Talia men S'],
  ['Talia moves up to a 2x', 1, '7 Talia men 2XL'],
  ['Talias mom says it should be Thalia with an h', 1, '7 Thalia men M'],
  ["O'Malley should be O'Mally, no e", 2, "12 O'Mally men L"],
  ['its Noëlle with the two dots', 3, '4 Noëlle men XL'],
  ['make Josiah a medium, and his name should say Jo-Ann', 0, '9 Jo-Ann men M'],
])('"%s" changes that one line', async (words, line, told) => {
  const { rows } = await heard('en', [...english, words])
  expect(rows).toHaveLength(4)
  expect(rows[line]).toBe(told)
})

test.each([
  ['Josué es la 16 perdón', 0, '16 Josué men S'],
  ['Josué mejor que sea 77', 0, '77 Josué men S'],
  ['Josué que traiga el 19 en vez del 9', 0, '19 Josué men S'],
  ['Josué quiere el 14', 0, '14 Josué men S'],
  ['Ana P. que sea XG', 1, '7 Ana P. men XL'],
  ['Ana P. es la 17', 1, '17 Ana P. men M'],
  ['la 4 es Núñez, con ñ y acento', 2, '4 Núñez men L'],
  ['el 0 se apellida Cota-Ríos', 3, '0 Cota-Ríos men XL'],
])('"%s" changes that one line', async (words, line, told) => {
  const { rows } = await heard('es', [...spanish, words])
  expect(rows).toHaveLength(4)
  expect(rows[line]).toBe(told)
})

test('both halves of a sentence are heard', async () => {
  expect((await heard('en', [...english, 'Josiah is 13 not 9 and Talia needs a large'])).rows.slice(0, 2)).toEqual([
    '13 Josiah men S',
    '7 Talia men L',
  ])
  expect((await heard('en', [...english, 'josiah goes up to an xl, talia down to a small'])).rows.slice(0, 2)).toEqual([
    '9 Josiah men XL',
    '7 Talia men S',
  ])
  expect((await heard('es', [...spanish, 'Josué quiere el 7 y Ana P. el 9'])).rows.slice(0, 2)).toEqual([
    '7 Josué men S',
    '9 Ana P. men M',
  ])
})

test('an exchange with words about one of the two behind it', async () => {
  const { rows } = await heard('en', [...english, '9 and 7 are backwards, swap em. Talia is 9'])
  expect(rows.slice(0, 2)).toEqual(['7 Josiah men S', '9 Talia men M'])
})

test('a name that is near to one of the list is not taken from somebody else', async () => {
  const { rows } = await heard('en', [...english, '9 should be Talia B'])
  expect(rows[1]).toBe('7 Talia men M')
})

test('pieces are no number', async () => {
  expect((await heard('en', [...english, 'Josiah wants 2 jerseys'])).rows[0]).toMatch(/^9 Josiah men S/)
})

test.each([
  ['en', 'make 9 an L', 'wait undo that shes playing after all'],
  ['en', 'make 9 an L', 'undo that, 9 stays as it was'],
  ['es', 'el 9 que sea G', 'no espera, deshaz eso, el 9 se queda como estaba'],
  ['es', 'el 9 que sea G', 'deshaz eso, el 9 queda igual'],
] as const)('%s: "%s" is taken back by "%s"', async (language, change, undo) => {
  const list = language === 'en' ? english : spanish
  expect((await heard(language, [...list, change])).rows[0]).toMatch(/ L$/)
  expect((await heard(language, [...list, change, undo])).rows[0]).toMatch(/ S$/)
})
