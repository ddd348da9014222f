import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const tees = ['orange cotton tees for our staff, MARSHAL on the front in white. all mens: 3 small, 8 medium, 6 large, 2 xl']
const hoodies = [
  'grey fan hoodies, JACKAL PARENT across the front in red. 3 ladies M, 2 ladies L, 5 mens XL, 1 mens XXL, 2 youth S',
]

test.each([
  'take 2 off the mediums',
  'sorry two people dropped out, take 2 off the mediums',
  'take two off the mediums please',
  'knock 2 off the mediums',
  'two fewer mediums',
  '2 less mediums pls',
  'drop the mediums by 2',
  'we need 2 less of the mediums',
  'lower the mediums by two',
  'lose two of the mediums',
  'lose 2 mediums',
  'scrap two of the mediums',
  'two of the mediums dropped out',
  'take two mediums away',
  'cut 2 mediums',
  'remove two mediums please',
  'subtract 2 from the mediums',
  'minus 2 mediums',
  'reduce the mediums by 2',
  'bring the mediums down by 2',
  'bring the mediums down to 6',
  'actually only 6 mediums',
])('%s: six mediums are left', async (words) => {
  expect((await heard('en', [...tees, words])).rows).toEqual(['men S x3', 'men M x6', 'men L x6', 'men XL x2'])
})

test.each([
  'cancel the two youth ones, the kids have theirs already',
  'cancel the youth ones',
  'scrap the two youth smalls',
  'no youth ones after all',
  "we don't need the youth ones anymore",
  'skip the youth ones',
  'lose the youth sizes',
  'drop both youth ones',
  'drop the two kids ones please',
  'forget the kids ones',
  'the youth ones are not needed',
  'leave off the two youth ones',
  'leave out the youth hoodies',
  'take the youth ones off',
  'take off the two youth smalls',
  'bin the two youth ones',
])('%s: the youth pieces leave', async (words) => {
  expect((await heard('en', [...hoodies, words])).rows).toEqual(['women M x3', 'women L x2', 'men XL x5', 'men 2XL'])
})

test.each([
  ['cancel the two youth ones, the kids have theirs already. and one more ladies M pls', 'women M x4'],
  ['skip the youth ones and add a ladies L', 'women L x3'],
  ['drop the 2 youth and make it 6 mens XL', 'men XL x6'],
])('%s: one kind leaves and another grows', async (words, more) => {
  const { rows } = await heard('en', [...hoodies, words])
  expect(rows.filter((row) => row.startsWith('youth'))).toEqual([])
  expect(rows).toContain(more)
  expect(rows).toHaveLength(4)
})

test.each(['cancel the ladies ones', 'no more ladies sizes, the mums changed their minds'])(
  '%s: all of a cut leave',
  async (words) => {
    expect((await heard('en', [...hoodies, words])).rows).toEqual(['men XL x5', 'men 2XL', 'youth S x2'])
  },
)

test.each(['the youth ones run small right?', 'are the ladies ones fitted?', 'youth ones in the same grey too'])(
  '%s: no piece leaves',
  async (words) => {
    expect((await heard('en', [...hoodies, words])).rows).toHaveLength(5)
  },
)
