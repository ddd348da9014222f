import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = { en: 'black tees, LYNX on the front in white', es: 'playeras negras con LINCES al frente en blanco' } as const

test.each([
  'mens cut: 5 s 10 m / ladies cut: 6 s 7 m',
  'mens: 5 S, 10 M / womens: 6 S, 7 M',
  '5 s, 10 m in mens cut and 6 s, 7 m in womens cut',
  'mens cut 5 s 10 m, ladies cut 6 s 7 m',
  'Men - 5 S 10 M | Women - 6 S 7 M',
  'the mens are 5 S and 10 M, the womens are 6 S and 7 M',
])('two cuts on one line in English: %j', async (words) => {
  expect((await heard('en', [first.en, words])).rows).toEqual(['men S x5', 'men M x10', 'women S x6', 'women M x7'])
})

test.each([
  'corte caballero: 5 ch 10 m / corte dama: 6 ch 7 m',
  'Hombre: 5 CH, 10 M. Mujer: 6 CH, 7 M',
  'De hombre: 5 CH, 10 M. De mujer: 6 CH, 7 M',
  '5 ch y 10 m en corte caballero, 6 ch y 7 m en corte dama',
])('two cuts on one line in Spanish: %j', async (words) => {
  expect((await heard('es', [first.es, words])).rows).toEqual(['men S x5', 'men M x10', 'women S x6', 'women M x7'])
})

test.each([
  ['en', 'two more joined: a woman in L and a man in M'],
  ['en', 'one more lady signed up, size L, and one guy, M'],
  ['es', 'ay, que se apuntan dos más: una mujer con la L y un hombre con la M'],
  ['es', 'se suman una mujer talla L y un señor en M'],
] as const)('pieces are added by who wears them, %s: %j', async (language, words) => {
  const counted = language === 'en' ? 'womens: 3 S, 4 M. mens: 5 M, 6 L' : 'Mujer: 3 S, 4 M. Hombre: 5 M, 6 L'
  const { rows } = await heard(language, [first[language], counted, words])
  expect([...rows].sort()).toEqual(['men L x6', 'men M x6', 'women L', 'women M x4', 'women S x3'])
})

test('one more of a cut and size that is there is put to it', async () => {
  const { rows } = await heard('es', [first.es, 'De mujer: 2 S, 1 L. De hombre: 3 L', 'hay una mujer más de la L'])
  expect(rows).toEqual(['women S x2', 'women L x2', 'men L x3'])
})

test.each([
  [
    'en',
    'navy jerseys, white names and numbers on the back',
    '12 M. Smith L\n9 L. De la Cruz M',
    ['12 M. Smith men L', '9 L. De la Cruz men M'],
  ],
] as const)('an initial stays in its name, %s %s %j', async (language, words, list, rows) => {
  expect((await heard(language, [words, list])).rows).toEqual(rows)
})
