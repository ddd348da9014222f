import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const wish = 'white tees that say MARCHETTI REUNION across the front in red flock'
const counted = '2T x2\n3T x1\nYS x3\nmens L x4\nladies M x5'

/** Lines with an age that is known: "2T under-3". */
const aged = async (says: readonly string[]): Promise<string> => {
  const { played } = await heard('en', says)
  return played.composed.order.roster
    .filter(({ age }) => age !== 'unknown')
    .map(({ size, age }) => `${size} ${age}`)
    .join(', ')
}

test.each([
  ["the two 2Ts are for the twins, they're 20 months old", '2T under-3'],
  ["the 3T is for Leo, he's 2 years old", '3T under-3'],
  ['the YS kids are 6 and 7 years old', 'S 3-12'],
  ['the two in 2T are 1 year old', '2T under-3'],
  ['the 4 year olds wear YS', 'S 3-12'],
])('years told of one size of a list: %s', async (words, ages) => {
  const before = await heard('en', [wish, counted])
  expect(await aged([wish, counted, words])).toBe(ages)
  expect((await heard('en', [wish, counted, words])).rows).toEqual(before.rows)
})

test.each([
  ["two in 2T for the twins (they're 2 years old), one women's medium for me, one men's XL for my husband", '2T under-3'],
  ["one 3T for my son, he's 2 years old, and a mens L for me", '3T under-3'],
  ["a womens M for me and two 2T for the twins, they're 2 years old", '2T under-3'],
  ["one women's M and two 2T for the babies (18 months)", '2T under-3'],
  ["one youth S, she's 6 years old, and one adult L for dad", 'S 3-12'],
  ["12 YM and 3 YL, they're 9 years old", 'M 3-12, L 3-12'],
])('years told beside the sizes: %s', async (words, ages) => {
  expect(await aged([wish, words])).toBe(ages)
})

const all = ['toddler 2T x2', 'toddler 3T', 'youth S x3', 'men L x4', 'women M x5']

test.each([
  [
    "ok cousin Rita's coming after all so 6 of the ladies M, and forget the 3T",
    ['toddler 2T x2', ...all.slice(2, 4), 'women M x6'],
  ],
  ['5 of the YS now and no 3T', ['toddler 2T x2', 'youth S x5', ...all.slice(3)]],
  ['drop the 3T, and make it 6 ladies M', ['toddler 2T x2', ...all.slice(2, 4), 'women M x6']],
  ["we don't need the 3T and the mens L should be 3", ['toddler 2T x2', 'youth S x3', 'men L x3', 'women M x5']],
  ['forget the 3T', ['toddler 2T x2', ...all.slice(2)]],
])('a size that is wanted no more, beside an amount: %s', async (words, rows) => {
  expect((await heard('en', [wish, counted, words])).rows).toEqual(rows)
})
