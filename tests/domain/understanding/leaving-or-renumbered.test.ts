import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const girls = ['jersey rosa con nombre y número negro atrás', '12 - Renée - YM\n5 - Itzel - YS\n9 - Aitana - YM\n3 - Naomi - YL']
const rows = ['12 Renée youth M', '5 Itzel youth S', '9 Aitana youth M', '3 Naomi youth L']
const withLine = (index: number, row: string): readonly string[] => rows.map((one, at) => (at === index ? row : one))

test.each([
  ['Aitana ya no es el 9, ahora va a ser el 19, misma talla', 2, '19 Aitana youth M'],
  ['Aitana ya no es el 9, ahora es el 19', 2, '19 Aitana youth M'],
  ['Aitana ya no es la 9, va a ser la 19', 2, '19 Aitana youth M'],
  ['Aitana deja el 9 y ahora lleva el 19', 2, '19 Aitana youth M'],
  ['el 9 ya no, ahora Aitana va con el 19', 2, '19 Aitana youth M'],
  ['Aitana ya no trae el 9 sino el 19', 2, '19 Aitana youth M'],
  ['Itzel ya no va con el 5, va con el 15', 1, '15 Itzel youth S'],
  ['Naomi cambia del 3 al 30', 3, '30 Naomi youth L'],
  ['la 9 ahora va a ser la 19, misma talla', 2, '19 Aitana youth M'],
  ['Renée ya no quiere el 12, va a usar el 21', 0, '21 Renée youth M'],
  ['Renée ya no es 12, ahora será 21', 0, '21 Renée youth M'],
  ['Aitana ya no va a ser el 9, va a ser el 99', 2, '99 Aitana youth M'],
  ['el número de Aitana ya no es el 9, es el 19', 2, '19 Aitana youth M'],
  ['Aitana ahora va a llevar el 19 en vez del 9', 2, '19 Aitana youth M'],
  ['Renée ya no va con M, va con L', 0, '12 Renée youth L'],
  ['Itzel ya no quiere la S, quiere la M', 1, '5 Itzel youth M'],
  ['Itzel ya no va en CH, va en M', 1, '5 Itzel youth M'],
])('"%s" gives another number or size and takes nobody off', async (words, index, row) => {
  const { rows: found, open } = await heard('es', [...girls, words])
  expect(found).toEqual(withLine(index, row))
  expect(open).toEqual([])
})

test.each([
  'Itzel ya no va',
  'Itzel ya no va a jugar',
  'Itzel ya no viene, el 5 queda libre',
  'el 5 ya no va',
  'Itzel ya no quiere jugar',
])('"%s" still takes her off', async (words) => {
  expect((await heard('es', [...girls, words])).rows).toEqual(rows.filter((row) => !row.includes('Itzel')))
})

test('a number that is given up and none in its place changes nothing', async () => {
  for (const words of ['Aitana ya no es el 9', 'Renée ya no va con el 12'])
    expect((await heard('es', [...girls, words])).rows).toEqual(rows)
})

const men = [
  'jersey gris con números rojos atrás y el apellido arriba',
  'L;Ibarra;07\nM;Zaldívar;7\n2XL;Mondragón;44\nXL;De la Cruz;0\nM;Ávila;11\n2XL;Bustillos;50',
]
const list = [
  '07 Ibarra men L',
  '7 Zaldívar men M',
  '44 Mondragón men 2XL',
  '0 De la Cruz men XL',
  '11 Ávila men M',
  '50 Bustillos men 2XL',
]

test.each([
  ['quita a uno de los 2XL, se nos bajó del equipo', ['3', '6']],
  ['quita una 2XL', ['3', '6']],
  ['quítame una de las 2XL', ['3', '6']],
  ['uno de los 2XL ya no va', ['3', '6']],
  ['quita a uno de los de 2XL', ['3', '6']],
  ['bórrame un 2XL', ['3', '6']],
  ['saca a uno de los XXL porfa', ['3', '6']],
  ['uno de los dos 2XL se salió del equipo', ['3', '6']],
  ['quita al de la M', ['2', '5']],
  ['quita al de talla M', ['2', '5']],
])('"%s" fits two lines and is asked', async (words, readings) => {
  const { rows: found, played } = await heard('es', [...men, words])
  expect(found).toEqual(list)
  const drop = played.conversation.open.find(({ about }) => about === 'drop')
  expect(drop?.readings.map(({ value }) => value)).toEqual(readings)
})

test.each([
  ['quita al XL', ['De la Cruz']],
  ['quita al de la XL', ['De la Cruz']],
  ['quita al 2XL 44', ['Mondragón']],
  ['quita a los dos 2XL', ['Mondragón', 'Bustillos']],
])('"%s" is of these alone', async (words, gone) => {
  const left = list.filter((row) => !gone.some((name) => row.includes(name)))
  expect((await heard('es', [...men, words])).rows).toEqual(left)
})
