import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Ana Ruiz M\n12 Beto L']
const spanish = ['jerseys blancos con nombres y números en negro', "9 Nuñez S\n7 Anel O'Farrill M\n5 Soto XL\n10 Peña G"]

test.each([
  ['remove Beto and the name on 9 is Josias', ['9 Josias men S', '7 Ana Ruiz men M']],
  ['drop Beto, Ana Ruiz needs L', ['9 Josiah men S', '7 Ana Ruiz men L']],
  ['drop Beto and Josiah please', ['7 Ana Ruiz men M']],
  ['drop 9 and 12', ['7 Ana Ruiz men M']],
] as const)('"%s" takes off those who are named to leave, and nobody else', async (words, rows) => {
  expect((await heard('en', [...english, words])).rows).toEqual(rows)
})

test('what is told of somebody else behind a drop is theirs', async () => {
  const words = 'el 10 que sea mediana, quita a Soto, y el nombre de Nuñez va con acento: Núñez'
  const rows = ['9 Núñez men S', "7 Anel O'Farrill men M", '10 Peña men M']
  expect((await heard('es', [...spanish, words])).rows).toEqual(rows)
})

test.each([
  ['en', [...english, "Josiah hasn't told me, I'll send his size later"], '9 Josiah men later'],
  ['es', [...spanish, 'la talla de Soto te la paso luego'], '5 Soto men later'],
] as const)('%s: a size that is promised comes later', async (language, says, row) => {
  expect((await heard(language, says)).rows).toContain(row)
})
