import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const wish = 'green tees, SPARROWS across the chest in white'
const deseo = 'camisetas verdes con GORRIONES adelante en blanco'

test.each([
  ['en', 'S 6 M 14 L 11 XL 5 2X 2, unisex', ['men S x6', 'men M x14', 'men L x11', 'men XL x5', 'men 2XL x2']],
  ['en', 'S6 M14 L11', ['men S x6', 'men M x14', 'men L x11']],
  ['en', 'Sizes S 8 M 12 L 9 thanks!', ['men S x8', 'men M x12', 'men L x9']],
  ['en', 'sizes S 2 M 3 L 4, all womens', ['women S x2', 'women M x3', 'women L x4']],
  ['en', 'mens S 2 M 3 L 4 and womens S 1 M 5', ['men S x2', 'men M x3', 'men L x4', 'women S', 'women M x5']],
  ['es', 'S 8, M 12, L 9, XL 3, de hombre', ['men S x8', 'men M x12', 'men L x9', 'men XL x3']],
  ['es', 'CH 8 M 12 G 9 y una XG', ['men S x8', 'men M x12', 'men L x9', 'men XL']],
  ['es', 'tallas de dama: CH 8 M 12 G 9', ['women S x8', 'women M x12', 'women L x9']],
  ['es', 'serían S 4 M 7 L 2 porfa', ['men S x4', 'men M x7', 'men L x2']],
  ['en', '6 S 14 M 11 L 5 XL', ['men S x6', 'men M x14', 'men L x11', 'men XL x5']],
  ['es', '8 S 12 M 9 L', ['men S x8', 'men M x12', 'men L x9']],
] as const)(
  '(%s) sizes and figures in turn, %s: a figure is of the size before it where a size begins',
  async (language, words, rows) => {
    expect((await heard(language, [language === 'en' ? wish : deseo, words])).rows).toEqual(rows)
  },
)

test.each([
  ['en', 'navy jerseys, white number on the back', 'S 6 M 14 L 11'],
  ['es', 'camisetas azul marino, número blanco atrás', 'S 6 M 14 L 11'],
] as const)('(%s) where players have numbers, it is asked what such figures are', async (language, order, words) => {
  const { rows, open } = await heard(language, [order, words])
  expect([rows, open]).toEqual([[], ['numbers-or-pieces']])
})

test.each([
  ['en', 'guys: S2 M3 L3 and 1 XXL. gals: S1 M4', ['men S x2', 'men M x3', 'men L x3', 'men 2XL', 'women S', 'women M x4']],
  ['en', 'for the guys 2 M, 1 L and for the gals 3 S', ['men M x2', 'men L', 'women S x3']],
  ['en', 'the fellas are 4: 2 M, 2 L. the gals are 3: 1 S, 2 M', ['men M x2', 'men L x2', 'women S', 'women M x2']],
  ['es', 'para ellos 2 M y 3 L, para ellas 4 S, 1 M y 1 XL', ['men M x2', 'men L x3', 'women S x4', 'women M', 'women XL']],
  ['es', 'ellas: S 4 M 2. ellos: L 3', ['women S x4', 'women M x2', 'men L x3']],
  [
    'es',
    'los chambelanes son 5: 2 CH y 3 M. las damas también 7: 4 CH y 3 M',
    ['men S x2', 'men M x3', 'women S x4', 'women M x3'],
  ],
  ['en', 'do you guys have 3XL? 2 M and 4 L please', ['men M x2', 'men L x4']],
  ['en', 'hi guys, 2 M and 4 L please', ['men M x2', 'men L x4']],
  ['es', 'a ellas les toca avisarme. 3 M y 2 L', ['men M x3', 'men L x2']],
] as const)('(%s) amounts by whom they are for: %s', async (language, words, rows) => {
  expect((await heard(language, [language === 'en' ? wish : deseo, words])).rows).toEqual(rows)
})
