import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = 'Playeras negras que digan al frente MAMÁS DELFINES en diamantina rosa'
const list = 'Nidia CH\nChela M'

test.each([
  'todas son de dama',
  'todas de mujer',
  'todas en corte de dama',
  'todas son de dama por favor',
  'son de dama todas',
  '(todas de dama)',
  'Todas las tallas son de dama',
  'todas las playeras son de dama',
  'puras de dama',
  'todas van en dama, gracias',
])('"%s" is the cut of the whole list, in its message and after it', async (words) => {
  const rows = ['Nidia women S', 'Chela women M']
  expect((await heard('es', [order, `${list}\n${words}`])).rows).toEqual(rows)
  expect((await heard('es', [order, list, words])).rows).toEqual(rows)
})

test('the cut holds for those who come later', async () => {
  const said = [order, 'CH: Nidia, Chela\nM: Rocío\ntodas son de dama', 'nomás la de Nidia que sea M', 'agrega a Vero G']
  expect((await heard('es', said)).rows).toEqual(['Nidia women M', 'Chela women S', 'Rocío women M', 'Vero women L'])
})

test.each([
  ['todos son de niño', ['Nidia youth S', 'Chela youth M']],
  ['todas son juveniles', ['Nidia youth S', 'Chela youth M']],
  ['todas son de dama menos la de Chela', ['Nidia women S', 'Chela men M']],
  ['todas de dama excepto Nidia', ['Nidia men S', 'Chela women M']],
  ['son de dama', ['Nidia women S', 'Chela women M']],
])('"%s" is the cut of those it is told of', async (words, rows) => {
  expect((await heard('es', [order, list, words])).rows).toEqual(rows)
})

test('of counted sizes as well, and as a heading', async () => {
  expect((await heard('es', [order, '3 CH, 4 M. todas son de dama'])).rows).toEqual(['women S x3', 'women M x4'])
  expect((await heard('es', [order, `todas de dama:\n${list}`])).rows).toEqual(['Nidia women S', 'Chela women M'])
})

test.each(['la de Chela es de dama', '¿todas son de dama?', 'Chela es de dama'])('"%s" is not of all', async (words) => {
  expect((await heard('es', [order, list, words])).rows[0]).toBe('Nidia men S')
})
