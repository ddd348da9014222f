import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const spanish = [
  'Camisolas grises, nombre y número rojo en la espalda',
  "07 Arriaga G\n7 McKinney XG\n21 O'Farrill M\n34 Guzmán XG",
]
const others = ['07 Arriaga men L', '7 McKinney men XL']
const turned = [...others, "34 O'Farrill men M", '21 Guzmán men XL']

test.each([
  "el 21 y el 34 van volteados: el 21 es Guzmán y el 34 O'Farrill, las tallas de cada quien se quedan como venían con su nombre",
  "me equivoqué, el 21 es Guzmán y el 34 es O'Farrill, cada quien con su talla",
  'el 21 y el 34 están volteados',
  "el 21 y el 34 van al revés: Guzmán es el 21 y O'Farrill el 34",
  "O'Farrill es el 34 y Guzmán el 21",
  "intercambia los números de O'Farrill y Guzmán",
  'el 21 y el 34 van volteados, las tallas se quedan',
  'los números 21 y 34 van al revés, las tallas bien',
  "O'Farrill y Guzmán traen los números cruzados",
  "Guzmán lleva el 21 y O'Farrill el 34, las tallas igual",
  "el 21 es de Guzmán y el 34 de O'Farrill, la talla de cada uno es la misma",
])('"%s" exchanges the numbers and leaves everybody their size', async (words) => {
  const { rows, open } = await heard('es', [...spanish, words])
  expect(rows).toEqual(turned)
  expect(open).toEqual([])
})

test.each([
  "el 21 es Guzmán y el 34 O'Farrill",
  "el 21 es de Guzmán y el 34 de O'Farrill",
  "volteé a O'Farrill y Guzmán, el 21 es Guzmán y el 34 O'Farrill",
  'cambia los nombres del 21 y el 34',
])('"%s" is asked: do the sizes go with the person?', async (words) => {
  const { rows, open } = await heard('es', [...spanish, words])
  expect(rows).toEqual([...others, "21 O'Farrill men M", '34 Guzmán men XL'])
  expect(open).toEqual(['exchange'])
})

test('what is said as it is, and sizes that were mixed up', async () => {
  const same = await heard('es', [...spanish, "el 21 es O'Farrill y el 34 Guzmán"])
  expect(same.rows).toEqual([...others, "21 O'Farrill men M", '34 Guzmán men XL'])
  const sizes = await heard('es', [...spanish, "las tallas de O'Farrill y Guzmán van al revés"])
  expect(sizes.rows).toEqual([...others, "21 O'Farrill men XL", '34 Guzmán men M'])
})

test('the same in English', async () => {
  const english = ['grey jerseys, names and red numbers on the back', "07 Arriaga L\n21 O'Farrill M\n34 Guzman XL"]
  const asked = await heard('en', [...english, "21 is Guzman and 34 O'Farrill"])
  expect(asked.open).toEqual(['exchange'])
  const told = await heard('en', [...english, "21 is Guzman and 34 is O'Farrill, sizes stay with each kid"])
  expect(told.rows).toEqual(['07 Arriaga men L', "34 O'Farrill men M", '21 Guzman men XL'])
})
