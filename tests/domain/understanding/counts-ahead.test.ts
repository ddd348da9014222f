import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const wish = 'black tees, SPARROWS across the chest in silver'

test.each([
  ['sizes are womens xs 2, womens s 6, womens m 5, womens l 1', ['women XS x2', 'women S x6', 'women M x5', 'women L']],
  ['womens s 6, womens m 5', ['women S x6', 'women M x5']],
  ['youth m 4, youth l 3, adult s 2', ['youth M x4', 'youth L x3', 'men S x2']],
  ['mens l x4, mens xl x2, womens s x1', ['men L x4', 'men XL x2', 'women S']],
  ['2 womens s, 3 womens m, 1 mens l', ['women S x2', 'women M x3', 'men L']],
  ['womens: xs 2, s 6, m 5, l 1', ['women XS x2', 'women S x6', 'women M x5', 'women L']],
  ['sizes: youth s 3 / youth m 5 / adult m 2', ['youth S x3', 'youth M x5', 'men M x2']],
  ['we need womens s-6, womens m-5', ['women S x6', 'women M x5']],
  ['adult s: 4, adult m: 6', ['men S x4', 'men M x6']],
  ['ladies s (3), ladies m (2)', ['women S x3', 'women M x2']],
  ['youth l 7 and adult l 7', ['youth L x7', 'men L x7']],
  ["three 3T's for the kids and two mens L", ['toddler 3T x3', 'men L x2']],
])('sizes with their amounts behind them, in small letters: %s', async (words, rows) => {
  expect((await heard('en', [wish, words])).rows).toEqual(rows)
})

test('where players have numbers a figure behind a size is no amount', async () => {
  const numbered = await heard('en', ['black jerseys, white numbers on the back', 'YM 4, YL 7, YL 9'])
  expect(numbered.rows.some((row) => / x\d/.test(row))).toBe(false)
  const named = await heard('en', ['black jerseys, white numbers and names on the back', 'Ana S 4\nBea M 5'])
  expect(named.rows).toEqual(['4 Ana men S', '5 Bea men M'])
})

test.each([
  ['Pink tees, 100% cotton, TWO COOL on the front in gold foil', 'TWO COOL'],
  ['tees with ONE FUN on the back', 'ONE FUN'],
  ['12 hoodies, THREE RIVERS across the chest in white', 'THREE RIVERS'],
  ['tees, FOUR SQUARE on the front', 'FOUR SQUARE'],
  ['shirts with TWO WILD in gold on the front', 'TWO WILD'],
  ['we want ONE LOVE printed on the front of 10 grey tees', 'ONE LOVE'],
  ['white tees with SIX FLAGS across the back', 'SIX FLAGS'],
])('an amount in capitals is a part of what is to be written: %s', async (words, text) => {
  const { draft } = (await heard('en', [words])).played.conversation
  expect(Object.values(draft.marks).map((mark) => mark.text)).toEqual([text])
})

test.each([['I need TWO jerseys, numbers on the back'], ['TWO XL tees with numbers on the back']])(
  'an amount in capitals of pieces or sizes counts them: %s',
  async (words) => {
    const { draft } = (await heard('en', [words])).played.conversation
    expect(Object.values(draft.marks).filter(({ content }) => content === 'text')).toEqual([])
  },
)
