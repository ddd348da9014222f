import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = 'jerseys amarillos con número atrás en negro y nombre'

test.each([
  ['Ana G., 4, YM\nAna P., 6, YL\nSol, 11, YM', ['4 Ana G. youth M', '6 Ana P. youth L', '11 Sol youth M']],
  ['Ana G, 4, M\nAna M, 6, L\nLuis S, 7, CH', ['4 Ana G men M', '6 Ana M men L', '7 Luis S men S']],
  ['Ana L., 4, S\nBeto S., 6, YL', ['4 Ana L. men S', '6 Beto S. youth L']],
  ['Ana G.\t4\tYM\nAna P.\t6\tYL', ['4 Ana G. youth M', '6 Ana P. youth L']],
  ['Ana G. - 4 - YM\nAna P. - 6 - YL', ['4 Ana G. youth M', '6 Ana P. youth L']],
  ['4, Ana G., YM\n6, Luis M., YL', ['4 Ana G. youth M', '6 Luis M. youth L']],
  ['4 Ana G. YM\n6 Ana P. YL', ['4 Ana G. youth M', '6 Ana P. youth L']],
  ['Ana S. M\nLuis M. L', ['Ana S. men M', 'Luis M. men L']],
])('an initial that looks like a size stays behind its name: %j', async (list, rows) => {
  expect((await heard('es', [order, list])).rows).toEqual(rows)
})

test.each([
  ['M Julio\nL Abril\nS Domingo', ['Julio men M', 'Abril men L', 'Domingo men S']],
  ['Julio M\nAbril L\nDomingo S', ['Julio men M', 'Abril men L', 'Domingo men S']],
  ['M, Julio\nL, Domingo', ['Julio men M', 'Domingo men L']],
  ['YM\tAda\nS\tDomingo\nM\tJulio', ['Ada youth M', 'Domingo men S', 'Julio men M']],
  ['Abril Soto M\nJulio César L\nDomingo Ruiz S', ['Abril Soto men M', 'Julio César men L', 'Domingo Ruiz men S']],
])('months and days are names in a list: %j', async (list, rows) => {
  const { rows: found, open } = await heard('es', ['playeras rojas, nombre atrás', list])
  expect(found).toEqual(rows)
  expect(open).not.toContain('needBy')
})

const counted = ['Playeras azul rey con LIEBRES al frente en blanco', '3 chicas, 7 medianas y 6 grandes']
const lines = ['men S x3', 'men M x7', 'men L x6']

test.each([
  ['ah y aparte 4 chicas de dama', 'women S x4'],
  ['y aparte 4 CH de dama', 'women S x4'],
  ['además 2 medianas de mujer', 'women M x2'],
  ['aparte van 3 grandes de niño', 'youth L x3'],
  ['agrégale 4 chicas de dama', 'women S x4'],
  ['súmale 2 M de dama', 'women M x2'],
  ['faltaron 4 chicas de dama', 'women S x4'],
  ['4 chicas de dama aparte', 'women S x4'],
  ['también 5 medianas de niño', 'youth M x5'],
  ['aparte 2 XXL', 'men 2XL x2'],
])('"%s" is a line of its own', async (words, line) => {
  const { rows, open } = await heard('es', [...counted, words])
  expect(rows).toEqual([...lines, line])
  expect(open).toEqual([])
})

test.each(['y 4 chicas de dama', 'otras 4 chicas de dama', 'ponle 4 chicas de dama más'])(
  '"%s" is no player, and asked',
  async (words) => {
    const { rows, open, played } = await heard('es', [...counted, words])
    expect(rows).toEqual(lines)
    expect(open).toEqual(['amount'])
    const readings = played.conversation.open[0]?.readings ?? []
    expect(readings.map(({ value }) => value)).toEqual(['4', '7'])
    expect(JSON.stringify(readings[1]?.patches)).toContain('women')
  },
)

test('pieces of the same cut are put to those that are there', async () => {
  expect((await heard('es', [...counted, 'súmale 1 a las grandes'])).rows).toEqual(['men S x3', 'men M x7', 'men L x7'])
  expect((await heard('es', [...counted, 'aparte 4 chicas'])).rows).toEqual(['men S x7', 'men M x7', 'men L x6'])
})
