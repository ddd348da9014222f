import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const spanish = [
  'se nos perdió un jersey de mi niña, es del equipo Codornices de Seguin y quiero que me hagan otro igualito',
  'es el 19, Yaretzi Montes-Olague, M de niña. El jersey es guinda con número blanco atrás',
]
const english = ['one navy jersey with a white number on the back', '19 Ida Vance YM']

test.each([
  'ay perdón es talla G, ya creció',
  'perdón, es G',
  'es talla G, perdón',
  'ay no, es G, ya creció',
  'mejor G que ya creció',
  'que sea G mejor',
  'disculpe, la talla es G',
  'me equivoqué, es talla grande',
  'perdón la talla es G de niña',
  'ya creció, mejor talla G',
  'la niña ya creció, es G',
  'fíjese que ya es G',
  'perdón, la quiero G',
  'mejor mándemela G',
  'le pedí M pero es G',
  'no es M es G',
])('"%s" is the size of the only one', async (words) => {
  expect((await heard('es', [...spanish, words])).rows).toEqual(['19 Yaretzi Montes-Olague youth L'])
})

test.each([
  'sorry, it should be a large',
  "oops it's a L",
  'size is L, she grew',
  'actually L',
  'wait, make that L',
  'no, should be L',
])('"%s" is the size of the only one', async (words) => {
  expect((await heard('en', [...english, words])).rows).toEqual(['19 Ida Vance youth L'])
})

test.each([
  '¿la talla es G?',
  'si ya creció sería G',
  '¿tienen G?',
  'Ana es G',
  'otra G para su hermana',
  'es L igual que su hermana',
])('"%s" gives the only one no other size', async (words) => {
  expect((await heard('es', [...spanish, words])).rows).toContain('19 Yaretzi Montes-Olague youth M')
})
