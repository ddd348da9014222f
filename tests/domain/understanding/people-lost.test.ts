import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: ['green tees, SPARROWS across the chest in white', 'mens: 6 S, 14 M, 11 L, 5 XL'],
  es: ['camisetas verdes con GORRIONES adelante en blanco', 'de hombre: 6 S, 14 M, 11 L, 5 XL'],
}
const left = (s: number, m: number, l: number, xl: number) => [`men S x${s}`, `men M x${m}`, `men L x${l}`, `men XL x${xl}`]

test.each([
  ['en', 'we lost 3 people, two mediums and an XL', left(6, 12, 11, 4)],
  ['en', 'a guy backed out, he was an XL', left(6, 14, 11, 4)],
  ['en', 'two of the larges dropped out', left(6, 14, 9, 5)],
  ['en', "2 M and 3 S can't make it anymore", left(3, 12, 11, 5)],
  ['es', 'se bajaron tres: dos de M y uno de XL', left(6, 12, 11, 4)],
  ['es', 'un muchacho se echó para atrás, era G', left(6, 14, 10, 5)],
  ['es', 'no vienen 2 de los XL', left(6, 14, 11, 3)],
  ['es', 'se dieron de baja 2 M y 1 L', left(6, 12, 10, 5)],
] as const)('(%s) people who left, told by size: %s', async (language, words, rows) => {
  expect((await heard(language, [...order[language], words])).rows).toEqual(rows)
})

test.each([
  ['en', 'we lost 3 games but that is fine'],
  ['en', 'we lost two M in the wash last year lol'],
  ['en', 'we lost 4 people, two mediums and an XL'],
  ['es', 'perdimos 2 partidos'],
  ['en', 'one of the large guys quit, we are down to eleven L'],
  ['es', 'se bajó uno de L pero entró su hermano, quedan 11 L'],
  ['es', 'perdimos 2 M en la lavadora el año pasado'],
  ['es', 'se bajaron cuatro: dos de M y uno de XL'],
] as const)('(%s) takes nothing off: %s', async (language, words) => {
  expect((await heard(language, [...order[language], words])).rows).toEqual(left(6, 14, 11, 5))
})

const both = {
  en: ['green tees, SPARROWS across the chest in white', 'mens: 3 S, 4 M, 3 L. womens: 2 S, 5 M'],
  es: ['camisetas verdes con GORRIONES adelante en blanco', 'de hombre: 3 S, 4 M, 3 L. de mujer: 2 S, 5 M'],
}
const men = ['men S x3', 'men M x4', 'men L x3']

test.each([
  ['en', 'one of the womens mediums should be a large', [...men, 'women S x2', 'women M x4', 'women L']],
  ['en', 'one of the gals mediums should be a large', [...men, 'women S x2', 'women M x4', 'women L']],
  ['en', '2 of the mens larges become smalls', ['men S x5', 'men M x4', 'men L', 'women S x2', 'women M x5']],
  ['en', 'one of the mediums should be a large', [...men, 'women S x2', 'women M x5']],
  ['es', 'una de las M de mujer que sea S', [...men, 'women S x3', 'women M x4']],
  ['es', 'dos de las L pasan a M', ['men S x3', 'men M x6', 'men L', 'women S x2', 'women M x5']],
  ['es', 'una de las M que sea XL', [...men, 'women S x2', 'women M x5']],
] as const)(
  '(%s) of two cuts only the one that was said changes, and stands with its like: %s',
  async (language, words, rows) => {
    expect((await heard(language, [...both[language], words])).rows).toEqual(rows)
  },
)
