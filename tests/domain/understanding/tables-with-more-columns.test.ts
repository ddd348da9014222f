import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = 'pink jerseys, black numbers and names on the back'
const spanish = 'jersey negro con número y nombre blanco atrás'
const two = ['7 Ann youth M', '8 Bo youth L']

test.each([
  'Player | Shoe | Shirt | No | Allergy\nAnn | 4 | YM | 7 | nuts\nBo | 5 | YL | 8 | -',
  'Name,Age,Locker,Jersey #,Top,Shorts\nAnn,9,112,7,YM,YS\nBo,10,113,8,YL,YM',
  'Name\tCleat\tNumber\tTee size\nAnn\t4\t7\tYM\nBo\t5\t8\tYL',
  'Name / shoe / no. / size\nAnn / 4 / 7 / YM\nBo / 5 / 8 / YL',
  'Name - Shoe - Number - Size\nAnn - 4 - 7 - YM\nBo - 5 - 8 - YL',
  '| Name | Number | Size | Paid |\n|------|--------|------|------|\n| Ann | 7 | YM | yes |\n| Bo | 8 | YL | no |',
  'No Name Shoe Size\n7 Ann 4 YM\n8 Bo 5 YL',
  'Player   Shorts   Shirt   No\nAnn   YS   YM   7\nBo   YM   YL   8',
])('the number is what the heading calls so, in English: %j', async (list) => {
  expect((await heard('en', [english, list])).rows).toEqual(two)
})

test.each([
  'Jugadora | Zapato | Playera | Número | Alergia\nAna | 4 | CH | 14 | nuez\nBea | 5 | M | 2 | -',
  'Nombre, Casillero, No., Talla\nAna, 104, 14, CH\nBea, 105, 2, M',
  'Nombre;Edad;Calzado;Dorsal;Camiseta\nAna;15;34;14;S\nBea;16;35;2;M',
])('the number is what the heading calls so, in Spanish: %j', async (list) => {
  expect((await heard('es', [spanish, list])).rows).toEqual(['14 Ana men S', '2 Bea men M'])
})

test('a column of shoes is never the number where no number stands', async () => {
  expect((await heard('en', [english, 'Player | Shoe | Shirt\nAnn | 4 | YM\nBo | 5 | YL'])).rows).toEqual([
    'Ann youth M',
    'Bo youth L',
  ])
})

test('a column called after the jersey holds numbers or sizes, as its cells say', async () => {
  expect((await heard('en', [english, 'Name | Jersey | Size\nAnn | 7 | YM\nBo | 8 | YL'])).rows).toEqual(two)
  expect((await heard('en', [english, 'Name | Jersey | No | Bus\nAnn | YM | 7 | 1\nBo | YL | 8 | 2'])).rows).toEqual(two)
})

test('of two with one number it is asked', async () => {
  const { open } = await heard('en', [english, 'Player | Shoe | Shirt | No\nAnn | 4 | YM | 2\nBo | 5 | YL | 2\nCy | 5 | YL | 3'])
  expect(open).toContain('duplicate-number')
})

test('a sentence of headings is no table', async () => {
  const { rows } = await heard('en', [
    english,
    'we will send name, number, shirt, shoe and so on\nthanks a lot for 2 days of help, Ann, for now, so, bye',
  ])
  expect(rows).toEqual([])
})
