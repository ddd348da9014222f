import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = "Teal tees, name on the back in white.\nAlf, men's XXL\nNerys, women's L\nCaspian, 3T\nTeddy, youth S"

test.each([
  ['you asked ages: Caspian is 2, Teddy is 8, the others are grown ups'],
  ['ages: Caspian 2, Teddy 8, rest adults'],
  ['as for their ages, Caspian is 2 and Teddy is 8, everyone else is an adult'],
  ['about the ages: Teddy is 8 and Caspian is 2, the rest are adults'],
])('years that are told as such give nobody a number: %s', async (words) => {
  const { played } = await heard('en', [list, words])
  expect(played.composed.order.roster.map(({ number, name, age }) => [number, name, age])).toEqual([
    [undefined, 'Alf', '13-up'],
    [undefined, 'Nerys', '13-up'],
    [undefined, 'Caspian', 'under-3'],
    [undefined, 'Teddy', '3-12'],
  ])
})

test.each([
  ['en', 'Teddy is 6 years old and Caspian is a year old'],
  ['es', 'Teddy tiene 6 años y Caspian año y medio'],
  ['es', 'Caspian tiene un año y medio, Teddy 6 años'],
  ['es', 'Teddy 6 años, Caspian añito y medio'],
] as const)('a year and a half is told without a figure: %s: %s', async (language, words) => {
  const { played } = await heard(language, [list, words])
  expect(played.composed.order.roster.map(({ name, age }) => [name, age])).toEqual([
    ['Alf', 'unknown'],
    ['Nerys', 'unknown'],
    ['Caspian', 'under-3'],
    ['Teddy', '3-12'],
  ])
})

test.each([
  ['Forgot, Mrs Abernathy-Cole our treasurer signs off, not me', { signsOff: 'Abernathy-Cole' }],
  ['Joan Bly, our team manager, will pick them up', { collects: 'Joan Bly' }],
  ['Omar Diaz, my boss, pays for it', { pays: 'Omar Diaz' }],
  ['i will collect it myself, Brigid Sayle', { collects: 'Brigid Sayle' }],
  ["I'm paying for it myself, Ann Roe.", { pays: 'Ann Roe' }],
])('who does what, with what they are behind the name or named at the end: %s', async (words, people) => {
  const { draft } = (await heard('en', ['white tees with GO on the front', words])).played.conversation
  expect(draft).toMatchObject(people)
})

test.each([
  ["3 ladies' S, 2 boys' M and 4 mens' XL", ['women S x3', 'youth M x2', 'men XL x4']],
  ["2 youth L, 3 ladies' S, 1 ladies' M", ['youth L x2', 'women S x3', 'women M']],
  ["girls' M x4, girls' L x2", ['youth M x4', 'youth L x2']],
])('a plural of whom a size is for, with its sign: %s', async (words, rows) => {
  expect((await heard('en', ['white tees with GO on the front in red', words])).rows).toEqual(rows)
})
