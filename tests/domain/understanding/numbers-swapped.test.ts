import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: 'black jerseys, gold number on the back, names above',
  es: 'jersey negro, número dorado atrás y apellido arriba',
} as const
const list = '8 Ibarra M\n12 Hale XL\n10 Nkemelu L'
const numbers = ['12 Ibarra men M', '8 Hale men XL', '10 Nkemelu men L']
const sizes = ['8 Ibarra men XL', '12 Hale men M', '10 Nkemelu men L']
const nothing = ['8 Ibarra men M', '12 Hale men XL', '10 Nkemelu men L']

test.each([
  ['en', 'Hale and Ibarra want to swap numbers. just the numbers, they keep their own sizes, Hale would burst a medium'],
  ['en', '8 and 12 trade numbers, sizes stay put'],
  ['en', 'can Hale and Ibarra exchange numbers? everyone keeps the size they have'],
  ['en', 'Hale and Ibarra swap numbers but not sizes'],
  ['es', 'Hale e Ibarra cambian de número entre ellos, cada quien se queda con su talla'],
  ['es', 'Hale y Ibarra se intercambian los números pero no las tallas'],
  ['es', 'el 8 y el 12 se cambian el número, la talla de cada uno igual'],
  ['es', 'Ibarra y Hale se cambian los números, cada uno con su talle de siempre'],
] as const)('numbers change places and sizes stay, %s: %j', async (language, words) => {
  expect((await heard(language, [first[language], list, words])).rows).toEqual(numbers)
})

test.each([
  ['en', 'Hale and Ibarra swap sizes. their numbers stay'],
  ['es', 'que Hale e Ibarra cambien de talla, los números se quedan'],
] as const)('sizes change places and numbers stay, %s: %j', async (language, words) => {
  expect((await heard(language, [first[language], list, words])).rows).toEqual(sizes)
})

test.each([
  ['en', 'should Hale and Ibarra swap numbers?'],
  ['en', 'if Hale and Ibarra swap numbers I will tell you'],
  ['es', 'si Hale e Ibarra cambian de número te aviso'],
] as const)('what is asked or may come changes nothing, %s: %j', async (language, words) => {
  expect((await heard(language, [first[language], list, words])).rows).toEqual(nothing)
})

test.each([
  ['en', 'Hale and Ibarra swap numbers', 'no wait, those two stay the way they were'],
  ['es', 'Hale e Ibarra se cambian los números', 'no, lo de esos dos queda como estaba al principio'],
] as const)('an exchange is taken back, %s: %j', async (language, words, back) => {
  expect((await heard(language, [first[language], list, words, back])).rows).toEqual(nothing)
})
