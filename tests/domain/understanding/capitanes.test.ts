import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = ['hockey, camisetas rojas con número y apellido detrás en blanco', '4 Zamora M\n8 Peña L\n11 Soto S\n13 Ortega M']

/** Who wears which letter: "4 C". */
const letters = async (...says: readonly string[]) =>
  (await heard('es', [...list, ...says])).played.composed.order.roster.flatMap(({ number, extras = [] }) =>
    extras.map(({ content }) => `${number} ${content?.kind === 'text' ? content.text : ''}`),
  )

test.each([
  ['el capitán es el 4, la C en el pecho izquierdo, y una A para el 8 en el mismo sitio', ['4 C', '8 A']],
  ['el capitán es el 4, la C en el pecho izquierdo. una A para el 8', ['4 C', '8 A']],
  ['el 4 con la C, el 8 y el 13 con A', ['4 C', '8 A', '13 A']],
  ['capitán Zamora (C), asistentes Soto y Peña (A)', ['4 C', '8 A', '11 A']],
  ['poned la C a Zamora en el pecho y la A a Soto', ['4 C', '11 A']],
  ['letra C al 4, letra A al 11, en el pecho izquierdo', ['4 C', '11 A']],
  ['el capi es el 13, va con C', ['13 C']],
  ['hay dos asistentes, el 11 y el 13, que lleven A', ['11 A', '13 A']],
  ['la C va en la de Zamora; en las de Soto y Ortega, una A', ['4 C', '11 A', '13 A']],
  ['el 4 es el capitán y lleva C en el pecho; segundos capitanes el 8 y el 11, con A', ['4 C', '8 A', '11 A']],
])('letters of several are each their own: %s', async (words, worn) => {
  expect(await letters(words)).toEqual(worn)
})

test.each([
  ['me he colado, este año el capi es el 8, la C para él. el 4 no lleva letra', ['8 C']],
  ['el 4 ya no lleva letra', []],
  ['el 4 no lleva letra, la C es para el 8', ['8 C']],
  ['Zamora va sin letra', []],
  ['al final el capitán es Soto', ['11 C']],
  ['perdón, el capitán es Soto, no Zamora', ['11 C']],
  ['Zamora no quiere la C, que la lleve Peña', ['8 C']],
  ['me he equivocado, la capitana es la 13', ['13 C']],
  ['pasad la C a Soto', ['11 C']],
  ['al 8 le falta una letra en el apellido', ['4 C']],
])('a letter is moved: %s', async (words, worn) => {
  expect(await letters('la C para el 4 en el pecho', words)).toEqual(worn)
})
