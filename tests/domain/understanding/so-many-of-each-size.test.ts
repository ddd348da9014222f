import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  en: '20 black hoodies with CHESS in white on the front',
  es: '20 sudaderas negras con AJEDREZ en blanco al frente',
}
const five = ['men S x5', 'men M x5', 'men L x5', 'men XL x5']

test.each([
  ['en', '5 each S M L XL', five],
  ['en', '5 each of S, M, L and XL', five],
  ['en', '5 of each size: S M L XL', five],
  ['en', 'S M L XL, five of each', five],
  ['en', 'small, medium, large and XL, 5 each', five],
  ['en', '3 each: youth S, youth M, adult S, adult M', ['youth S x3', 'youth M x3', 'men S x3', 'men M x3']],
  ['es', '5 de cada una: CH M G XG', five],
  ['es', '5 de cada talla, chica mediana grande y extra grande', five],
  ['es', 'CH, M, G y XG, 5 de cada una', five],
  ['es', 'cinco de cada: CH, M, G, XG', five],
  ['es', 'M y L, diez de cada una', ['men M x10', 'men L x10']],
] as const)('(%s) %j: so many of each of these sizes', async (language, said, rows) => {
  const { rows: list, played } = await heard(language, [orders[language], said])
  expect([list, played.composed.order.team]).toEqual([rows, undefined])
})

test.each([
  ['en', '20 black hoodies with CHESS in white on the front, 5 each S M L XL', five],
  ['es', '20 sudaderas negras con AJEDREZ en blanco al frente, 5 de cada talla CH M G XG', five],
] as const)('(%s) %j: in the first message too', async (language, said, rows) => {
  const { rows: list } = await heard(language, [said])
  expect(list).toEqual(rows)
})

test.each([
  ['en', '8 S, 6 M, 4 L and 2 XL', ['men S x8', 'men M x6', 'men L x4', 'men XL x2']],
  ['en', '20 XL, each with CHESS on the front', ['men XL x20']],
  ['es', '8 CH, 6 M, 4 G y 2 XG', ['men S x8', 'men M x6', 'men L x4', 'men XL x2']],
  ['es', 'todas G, cada una con AJEDREZ al frente', ['men L x20']],
] as const)('(%s) %j: amounts of their own stay', async (language, said, rows) => {
  const { rows: list } = await heard(language, [orders[language], said])
  expect(list).toEqual(rows)
})
