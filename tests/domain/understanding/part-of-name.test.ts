import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = [
  'jerseys grises con número rojo y nombre arriba',
  '12;Ruiz-Tagle;XL\n4;Ana Ruiz;M\n9;María José Peña;M\n33;Leal Jr.;L',
]
const rows = ['12 Ruiz-Tagle men XL', '4 Ana Ruiz men M', '9 María José Peña men M', '33 Leal Jr. men L']
const withLine = (index: number, row: string): readonly string[] => rows.map((one, at) => (at === index ? row : one))

test.each([
  ['oye dice el 12 que en la espalda solo quiere Tagle, sin el Ruiz', 0, '12 Tagle men XL'],
  ['el 12 nomás Tagle', 0, '12 Tagle men XL'],
  ['al 12 ponle solo Tagle', 0, '12 Tagle men XL'],
  ['Ruiz-Tagle que diga solo Tagle', 0, '12 Tagle men XL'],
  ['el 12 sin Ruiz', 0, '12 Tagle men XL'],
  ['el 12 quiere nada más Ruiz', 0, '12 Ruiz men XL'],
  ['la 4 solo Ruiz', 1, '4 Ruiz men M'],
  ['Ana Ruiz sin el Ruiz', 1, '4 Ana men M'],
  ['Ana Ruiz va nomás como Ana', 1, '4 Ana men M'],
  ['a la 9 quítale el José', 2, '9 María Peña men M'],
  ['la 9 solo Peña', 2, '9 Peña men M'],
  ['la 9 que diga nada más María Peña', 2, '9 María Peña men M'],
  ['el 33 sin Jr.', 3, '33 Leal men L'],
  ['quítale el Jr al 33', 3, '33 Leal men L'],
])('"%s" tells which part of the name stands there', async (words, index, row) => {
  expect((await heard('es', [...order, words])).rows).toEqual(withLine(index, row))
})

test.each(['12 just wants Tagle', '12 only Tagle, no Ruiz', '12 without the Ruiz'])('"%s" in English', async (words) => {
  const english = ['grey jerseys, red numbers, names above', ...order.slice(1)]
  expect((await heard('en', [...english, words])).rows).toEqual(withLine(0, '12 Tagle men XL'))
})

test.each([
  ['solo Ana quiere M', rows],
  ['nada más Ana falta', rows],
  ['sin Ruiz', rows],
  ['solo el 12 es L', withLine(0, '12 Ruiz-Tagle men L')],
  ['solo la 4 y la 9 van en L', ['12 Ruiz-Tagle men XL', '4 Ana Ruiz men L', '9 María José Peña men L', '33 Leal Jr. men L']],
  ['Ana Ruiz no va', rows.filter((row) => !row.includes('Ana'))],
])('"%s" leaves every name whole', async (words, found) => {
  expect((await heard('es', [...order, words])).rows).toEqual(found)
})

const band = [
  'playeras negras de algodon, 6 chicas 9 medianas, y tambien unas sudaderas con gorro gris jaspe, esas las contamos luego. letras blancas que digan MARCHA en el pecho',
]

test.each([
  'fijese que no alcanzo el presupuesto, cancele las sudaderas, nada mas las playeras',
  'cancele las sudaderas',
  'quite las sudaderas',
  'siempre no las sudaderas',
  'las sudaderas ya no',
  'las sudaderas siempre no',
  'olvide las sudaderas',
  'mejor sin sudaderas',
])('"%s" calls one of two garments off and keeps the rest', async (words) => {
  const { rows: found, played } = await heard('es', [...band, words])
  expect(played.composed.order.garments.map(({ id, colour }) => `${id} ${colour}`)).toEqual(['tee black'])
  expect(found).toEqual(['men S x6', 'men M x9'])
})

test('"drop the hoodies" in English, and nothing where there is but one garment', async () => {
  const english = await heard('en', [
    'black tees, 6 small 9 medium, and grey hoodies we count later. MARCH on the chest in white',
    'drop the hoodies',
  ])
  expect(english.played.composed.order.garments.map(({ id }) => id)).toEqual(['tee'])
  const one = await heard('es', ['playeras negras, 6 chicas, MARCHA en el pecho en blanco', 'quite las playeras'])
  expect(one.played.composed.order.garments.map(({ id }) => id)).toEqual(['tee'])
})
