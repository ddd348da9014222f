import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white tees, OTTERS across the front in navy', '4 womens M, 3 womens L, 5 mens XL, 2 youth L']
const spanish = ['playeras blancas que digan NUTRIAS al frente en negro', '4 medianas, 3 grandes y 5 XG, todas de dama']

test.each([
  ['make it 6 of the womens mediums', ['women M x6', 'women L x3', 'men XL x5', 'youth L x2']],
  ['bump the XL up to 7 and knock the womens mediums down to 1', ['women M', 'women L x3', 'men XL x7', 'youth L x2']],
  ['lets get rid of the youth larges altogether', ['women M x4', 'women L x3', 'men XL x5']],
  ['drop the youth larges', ['women M x4', 'women L x3', 'men XL x5']],
  ['one of the mens XL should be a 3XL', ['women M x4', 'women L x3', 'men XL x4', 'youth L x2', 'men 3XL']],
  [
    'make it 6 of the womens mediums. and one of the mens XL should be a 3XL',
    ['women M x6', 'women L x3', 'men XL x4', 'youth L x2', 'men 3XL'],
  ],
  ['drop the youth larges to 1', ['women M x4', 'women L x3', 'men XL x5', 'youth L']],
])('"%s" changes what was counted', async (words, rows) => {
  expect((await heard('en', [...english, words])).rows).toEqual(rows)
})

test.each([
  ['quita las grandes', ['women M x4', 'women XL x5']],
  ['una de las XG que sea 2XL', ['women M x4', 'women L x3', 'women XL x4', 'women 2XL']],
  ['las medianas suben a 6 y las grandes bajan a 1', ['women M x6', 'women L', 'women XL x5']],
])('"%s" changes what was counted', async (words, rows) => {
  expect((await heard('es', [...spanish, words])).rows).toEqual(rows)
})

test('of several players with the size it is asked whose becomes another', async () => {
  const list = ['white jerseys, navy numbers on the back', '9 M\n7 M\n12 L']
  const { rows, open } = await heard('en', [...list, 'one of the mediums should be a large'])
  expect(rows).toEqual(['9 men M', '7 men M', '12 men L'])
  expect(open).toContain('drop')
})
