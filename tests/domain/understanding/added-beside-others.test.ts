import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: '5 black mesh jerseys with white numbers on the back and names above, soccer\n14 Peña XL\n5 Cid L\n16 Dov S\n20 García M\n38 Vargas L',
  es: '5 jerseys de malla negros con números blancos atrás y nombres arriba, futbol\n14 Peña XG\n5 Cid G\n16 Dov CH\n20 García M\n38 Vargas G',
} as const
const rows = ['14 Peña men XL', '5 Cid men L', '16 Dov men S', '20 García men M', '38 Vargas men L']

test.each([
  ['en', 'please add number 3, Ñúñez de la Peña y Guzmán, size L', ['3 Ñúñez de la Peña y Guzmán men L']],
  ['en', 'add 3 Ñúñez de la Peña y Guzmán L', ['3 Ñúñez de la Peña y Guzmán men L']],
  ['en', 'add 7 De la Cruz y Soto M', ['7 De la Cruz y Soto men M']],
  ['en', 'add 7 García Vargas M', ['7 García Vargas men M']],
  ['en', 'add #8 Cid Dov, XL', ['8 Cid Dov men XL']],
  ['en', 'can you add 9 Van der Peña L', ['9 Van der Peña men L']],
  ['en', 'add 9 Noa M, 10 Kit L and 11 Lu S', ['9 Noa men M', '10 Kit men L', '11 Lu men S']],
  ['es', 'agrega al 7, Van der Vargas, talla G', ['7 Van der Vargas men L']],
  ['es', 'agrega el número 3, Ñúñez de la Peña y Guzmán, talla G', ['3 Ñúñez de la Peña y Guzmán men L']],
  ['es', 'agreguen al 8 De la Cruz y Soto M', ['8 De la Cruz y Soto men M']],
  ['es', 'agrega 9 García Peña CH', ['9 García Peña men S']],
  ['es', 'añade al 21 Del Río y Vargas XG', ['21 Del Río y Vargas men XL']],
] as const)('%s: "%s" puts somebody on the list and rewrites nobody', async (language, words, added) => {
  expect((await heard(language, [first[language], words])).rows).toEqual([...rows, ...added])
})

test.each([
  ['en', 'add 9 Noa M and make Cid XL', ['14 Peña men XL', '5 Cid men XL', ...rows.slice(2), '9 Noa men M']],
  ['es', 'agrega a 9 Noa M y quita a Cid', ['14 Peña men XL', ...rows.slice(2), '9 Noa men M']],
] as const)('%s: "%s" does both', async (language, words, found) => {
  expect((await heard(language, [first[language], words])).rows).toEqual(found)
})

test.each([
  ['en', '11 12 13 14 15 20 21 all M', { 14: 'M', 20: 'M' }],
  ['en', '5, 16 and 20 all M', { 5: 'M', 16: 'M' }],
  ['en', '#5 #16 all XL', { 5: 'XL', 16: 'XL' }],
  ['es', '5, 16 y 20 todos M', { 5: 'M', 16: 'M' }],
  ['es', '11 12 13 14 todos M', { 14: 'M' }],
] as const)('%s: "%s" is of the numbers in front of it and of nobody else', async (language, words, sizes) => {
  const changed = rows.map((row) => {
    const [number = '', name, fit] = row.split(' ')
    const size: unknown = Reflect.get(sizes, number)
    return typeof size === 'string' ? `${number} ${name} ${fit} ${size}` : row
  })
  const found = (await heard(language, [first[language], words])).rows
  expect(found.filter((row) => rows.some((old) => old.split(' ')[0] === row.split(' ')[0]))).toEqual(changed)
})

test('everybody is everybody where no numbers stand in front', async () => {
  expect((await heard('en', [first.en, 'they are all M'])).rows.every((row) => row.endsWith(' M'))).toBe(true)
})
