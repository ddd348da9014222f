import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = ['red jerseys, white names and numbers on the back', '2 Greta\n5 Paulina\n7 Odile']

test.each([
  "everybody is a womens medium except Greta, she's a large",
  'everybody is a womens medium except Greta, shes a large',
  'everyone womens M but Greta, she is a large',
  'all womens medium except Greta, she takes a large',
  'all womens M. Greta is a large though',
  'womens M for everyone except Greta who is a large',
  'same size for all please, womens M, except 2, she needs a large',
])('%s: who is named apart keeps their own size', async (words) => {
  expect((await heard('en', [...list, words])).rows.map((row) => row.replace('Greta L', 'Greta women L'))).toEqual([
    '2 Greta women L',
    '5 Paulina women M',
    '7 Odile women M',
  ])
})

test.each([
  'same size for all please, womens M',
  'same size for everyone, womens medium',
  'they all take the same size, womens M',
  'one size for all of them: womens M',
  'everyone the same, womens M',
  'womens M across the board',
  'womens M for the lot',
  'the whole team is womens M',
  'womens M for every one of them',
  'just do womens M for all',
  'make them all womens M',
  'they are all womens M',
])('%s: one size is of all', async (words) => {
  expect((await heard('en', [...list, words])).rows).toEqual(['2 Greta women M', '5 Paulina women M', '7 Odile women M'])
})

test.each([
  'red jerseys, white number on the back. Numbers 1 to 3 for now, same size for all please, womens M. No names.',
  'red jerseys, white number on the back, no names. numbers 1 to 3, womens M for the lot',
  'red jerseys, white number on the back, no names. numbers 1-3, all the same size, womens M',
])('%s: numbers and their size in one message', async (words) => {
  expect((await heard('en', [words])).rows).toEqual(['1 women M', '2 women M', '3 women M'])
})
