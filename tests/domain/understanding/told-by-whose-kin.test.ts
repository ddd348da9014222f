import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: ['básquet, jerseys morados con número atrás en dorado, todas talla de niño', '07 Emiliano M\n00 Gael CH'],
  en: ['basketball, purple jerseys, gold numbers on the back, all youth sizes', '07 Emiliano M\n00 Gael S'],
}
const list = ['07 Emiliano youth M', '00 Gael youth S']

test.each([
  ['es', 'ah y una más para el hermanito de Gael, se llama Tadeo, talla 2T sin número, él tiene 2 años', ['Tadeo toddler 2T']],
  ['es', 'agrega al primo de Emiliano, se llama Rubén, talla G, el 9', ['9 Rubén youth L']],
  ['es', 'falta la hermana de Emiliano, Ximena, M con el 4', ['4 Ximena youth M']],
  ['es', 'otra para el hermano de Emiliano que se llama Saúl, CH, sin número', ['Saúl youth S']],
  ['es', 'nos faltó Valeria, la hermanita de Gael, número 5 talla CH', ['5 Valeria youth S']],
  ['es', 'una más, para la prima de Gael. se llama Inés, talla M, número 8', ['8 Inés youth M']],
  ['es', 'pónganle una también al hijo de la entrenadora, Bruno, talla CH, número 1', ['1 Bruno youth S']],
  ['es', 'se suma el primo de Gael. Se llama Abel y lleva el 15 en M', ['15 Abel youth M']],
  ['es', 'el hermanito de Gael se llama Tadeo', []],
  ['es', 'el primo de Emiliano juega en otro equipo, es el 9', []],
  ['en', "one more for Gael's little brother, his name is Tad, 2T, no number", ['Tad toddler 2T']],
  ['en', "add Emiliano's cousin Reuben, L, number 9", ['9 Reuben youth L']],
  ['en', "Gael's brother is called Tad", []],
] as const)('%s: who is told by whose kin he is: %s', async (language, words, more) => {
  expect((await heard(language, [...orders[language], words])).rows).toEqual([...list, ...more])
})

test.each([
  ['todos tienen entre 7 y 10 añitos. el hermanito de Gael tiene 2 años', ['3-12', '3-12']],
  ['todos tienen entre 7 y 10 añitos. y una más, Tadeo, 2T sin número, tiene 2 años', ['3-12', '3-12', 'under-3']],
  // Of "the others" beside somebody new nothing is taken: they are asked about.
  ['una más: Tadeo, 2T, sin número, tiene 2 años. los demás entre 7 y 10 años', ['unknown', 'unknown', 'under-3']],
  ['una más para el primo de Gael, Tadeo, 2T, sin número, de 2 años', ['unknown', 'unknown', 'under-3']],
  ['el primo de Gael tiene 2 años', ['unknown', 'unknown']],
])('years of one are not those of all: %s', async (words, ages) => {
  const { played } = await heard('es', [...orders.es, words])
  expect(played.composed.order.roster.map(({ age }) => age)).toEqual(ages)
})
