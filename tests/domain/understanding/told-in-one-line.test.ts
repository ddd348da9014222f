import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['en', 'I need one jersey. Red, number 8, size youth L, name PATEL on back, all white', '8 PATEL youth L', 'red'],
  ['en', 'need one jersey. Navy, number 12, adult M, name OKAFOR, white', '12 OKAFOR men M', 'navy'],
  ['es', 'quiero una camiseta. Roja, número 8, talla L juvenil, nombre PATEL atrás, todo en blanco', '8 PATEL youth L', 'red'],
  [
    'en',
    'one red shirt for his brother, size 2T, number 1, name Benji. and the big kids: Hattie 11 YL and Wes 5 YM',
    '1 Benji toddler 2T',
    'red',
  ],
  // Without a name told by its word the word in front may be who wears it.
  ['en', 'one red jersey with white name and number\nBrown, number 8, L\nGreen, number 9, M', '8 Brown men L', 'red'],
] as const)(
  "a piece told by its words is one row, and the colour before them the garment's, %s: %j",
  async (language, says, row, colour) => {
    const { rows, played } = await heard(language, [says])
    expect(rows[0]).toBe(row)
    expect(played.composed.order.garments[0]?.colour).toBe(colour)
    expect(played.composed.order.decorations.filter(({ content }) => content?.kind === 'text')).toEqual([])
  },
)

const sized = { en: '14 black tees, white number on the back', es: '14 playeras negras con número blanco atrás' } as const

test.each([
  ['en', [sized.en, '2S 5M 4L 3XL'], ['men S x2', 'men M x5', 'men L x4', 'men XL x3']],
  ['en', ['14 black tees with white text CREW on the front. 2S 5M 4L 3XL'], ['men S x2', 'men M x5', 'men L x4', 'men XL x3']],
  ['es', [sized.es, '2CH 5M 4G 3XG'], ['men S x2', 'men M x5', 'men L x4', 'men XL x3']],
  ['en', [sized.en, '3S, 6M, 2L and 3XL'], ['men S x3', 'men M x6', 'men L x2', 'men XL x3']],
  // Nobody told the whole.
  ['en', ['black tees with white text CREW on the front', '2S 5M 4L 3XL'], ['men S x2', 'men M x5', 'men L x4', 'men XL x3']],
  ['es', ['playeras negras con CREW adelante en blanco', '2CH 5M 4G 3XG'], ['men S x2', 'men M x5', 'men L x4', 'men XL x3']],
  // Amounts of their own before the size, and sums that do not make the whole.
  ['en', [sized.en, '5S 8M 1 3XL'], ['men S x5', 'men M x8', 'men 3XL']],
] as const)('amounts glued to their sizes make the whole, %s: %j', async (language, says, rows) => {
  expect((await heard(language, says)).rows).toEqual(rows)
})

test.each([
  ['en', ['15 black tees, white number on the back', '2S 5M 4L 3XL']],
  ['es', ['12 playeras negras con número blanco atrás', '2CH 5M 4G 3XG']],
] as const)('where they do not, no three are made of a size and it is asked, %s: %j', async (language, says) => {
  const { rows, played } = await heard(language, says)
  expect(rows).not.toContain('men XL x3')
  expect(played.composed.order.roster.reduce((sum, { quantity = 1 }) => sum + quantity, 0)).toBe(11)
})

const first = {
  en: 'red jerseys, white names and numbers on the back',
  es: 'camisetas rojas, nombre y número blanco atrás',
} as const
const both = ['4 Ann men M', '7 Bo men L']

test.each([
  ['en', ['red jerseys, white names and numbers on the back. Sizes: Ann M, Bo L. Numbers: Ann 4, Bo 7'], both],
  ['en', [first.en, 'Sizes: Ann M, Bo L. Numbers: Ann 4, Bo 7'], both],
  ['en', [first.en, 'Numbers: Ann 4 and Bo 7\nSizes: Ann M, Bo L'], both],
  ['en', [first.en, 'Ann M\nBo L', 'Numbers: Ann 4, Bo 7'], both],
  ['es', [first.es, 'Tallas: Ann M, Bo L. Números: Ann 4 y Bo 7'], both],
  ['es', [first.es, 'Ann M\nBo L', 'Números: Ann 4, Bo 7'], both],
  ['en', [first.en, 'Ann M\nBo L', 'Numbers: Ann 4, Zed 7'], ['Ann men M', 'Bo men L']],
  ['en', [first.en, 'Ann M\nBo L', 'white numbers: 4 inches'], ['Ann men M', 'Bo men L']],
] as const)('numbers told by the names reach their players, %s: %j', async (language, says, rows) => {
  expect((await heard(language, says)).rows).toEqual(rows)
})
