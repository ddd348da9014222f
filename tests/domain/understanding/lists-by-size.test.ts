import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = 'maroon polos, names on the back in white'
const spanish = 'polos guinda con el nombre atrás en blanco'
const four = ['Ann men S', 'Bob men S', 'Tony men L', 'Hank men L']

test.each([
  'SMALL\nAnn\nBob\n\nLARGE\nTony\nHank',
  'Small: Ann, Bob\nLarge: Tony and Hank',
  'Small: Ann, Bob; Large: Tony, Hank',
  'Small - Ann, Bob\nLarge - Tony, Hank',
  'S = Ann, Bob\nL = Tony, Hank',
  'S\nAnn, Bob\nL\nTony, Hank',
])('names under or behind their size: %j', async (list) => {
  expect((await heard('en', [english, list])).rows).toEqual(four)
})

test('names keep their words, hyphens and small letters under their size', async () => {
  const list = 'Talla de niño CH: Renata, María José\nAdulto M: Jean-Luc, Tony O’Hara, Mike O.'
  expect((await heard('es', [spanish, list])).rows).toEqual([
    'Renata youth S',
    'María José youth S',
    'Jean-Luc men M',
    "Tony O'Hara men M",
    'Mike O. men M',
  ])
  expect((await heard('en', [english, 'mediums: ann, bob\nlarges: tony, hank'])).rows.at(-1)).toBe('hank men L')
})

test('a name before its size on the next line is no list by size', async () => {
  expect((await heard('en', [english, 'Ann\nM\nBob\nL'])).rows).toEqual([])
})

test.each([
  ['Youth:\n3 S\n4 M\nAdult:\n5 M\n6 L'],
  ['Youth\nS x 3\nM x 4\nAdult\nM x 5\nL x 6'],
  ['Youth sizes\nS - 3\nM - 4\n\nAdult sizes\nM - 5\nL - 6'],
  ['Youth:\nS (3)\nM (4)\nAdult:\nM (5)\nL (6)'],
])('a cut on a line of its own holds for the sizes below: %j', async (list) => {
  const { rows } = await heard('en', ['black tees, LYNX on the front in white', list])
  expect(rows).toEqual(['youth S x3', 'youth M x4', 'men M x5', 'men L x6'])
})

test('a cut on a line of its own holds for the players below', async () => {
  const { rows } = await heard('en', [english, 'Womens\nAnn M\nBea L\nMens\nTony L'])
  expect(rows).toEqual(['Ann women M', 'Bea women L', 'Tony men L'])
})

test('words of orders in capitals are names beside others of the same shape', async () => {
  const jerseys = 'navy jerseys, white names and numbers on the back'
  expect((await heard('en', [jerseys, '12 Price M\n7 Front L\n9 Smith S\n3 Jones M'])).rows).toEqual([
    '12 Price men M',
    '7 Front men L',
    '9 Smith men S',
    '3 Jones men M',
  ])
  const { rows, played } = await heard('es', [
    'playeras negras con el nombre atrás',
    'M Toño\nL Checo\nXL Polo\nS Gris\nL Blanca',
  ])
  expect(rows.slice(2)).toEqual(['Polo men XL', 'Gris men S', 'Blanca men L'])
  expect(played.composed.order.garments.map(({ id }) => id)).toEqual(['tee'])
})

test('a heading with a colon is nobody', async () => {
  expect((await heard('es', [spanish, 'Van:\nAna - L\nBeto - M'])).rows).toEqual(['Ana men L', 'Beto men M'])
})

test('"salió sin acento" takes nobody off', async () => {
  const { rows } = await heard('es', [spanish, 'Ana - L\nBeto - M', 'y Ana con acento eh, el año pasado salió sin'])
  expect(rows).toEqual(['Ana men L', 'Beto men M'])
})
