import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const shirts = 'green tees, COLE CLAN on the front in white and first names on the back in white'
const listOf = async (...says: readonly string[]) => {
  const { played } = await heard('en', [shirts, ...says])
  return played.composed.order.roster.map(({ number, name, fit, size, age }) =>
    [number, name, fit, size, age === 'unknown' ? undefined : age].filter((part) => part !== undefined).join(' '),
  )
}

test.each([
  'Beatrix womens 2XL; Rufus mens 3XL; Zoë womens S; Theo youth M',
  'Beatrix womens 2XL, Rufus mens 3XL, Zoë womens S, Theo youth M',
  'Beatrix womens 2XL / Rufus mens 3XL / Zoë womens S / Theo youth M',
  'Beatrix, womens 2XL; Rufus, mens 3XL; Zoë, womens S; Theo, youth M',
  'we have Beatrix womens 2XL, Rufus mens 3XL, Zoë womens S and Theo youth M',
  'Beatrix is a womens 2XL, Rufus a mens 3XL, Zoë womens S and Theo youth M',
  'Beatrix - womens 2XL; Rufus - mens 3XL; Zoë - womens S; Theo - youth M',
  'Beatrix womens 2XL. Rufus mens 3XL. Zoë womens S. Theo youth M.',
])('%s: four who are named with their sizes in a sentence', async (words) => {
  expect(await listOf(words)).toEqual(['Beatrix women 2XL', 'Rufus men 3XL', 'Zoë women S', 'Theo youth M'])
})

test.each([
  "Beatrix womens 2XL; Rufus mens 3XL; Theo youth M, he's 8; Posy 2T, she isnt two yet, 20 months",
  'Beatrix womens 2XL; Rufus mens 3XL; Theo youth M (he is 8); Posy 2T (20 months)',
  'Beatrix womens 2XL; Rufus mens 3XL; Theo youth M, age 8; Posy 2T, age 1',
  'Beatrix womens 2XL\nRufus mens 3XL\nTheo youth M, he is 8\nPosy 2T, 20 months old',
  'Beatrix womens 2XL\nRufus mens 3XL\nTheo youth M (8 years old)\nPosy 2T (not 2 yet)',
  'Beatrix womens 2XL\nRufus mens 3XL\nTheo youth M, 8 yrs\nPosy 2T - 1 year old',
])('%s: ages beside sizes are no numbers', async (words) => {
  expect(await listOf(words)).toEqual(['Beatrix women 2XL', 'Rufus men 3XL', 'Theo youth M 3-12', 'Posy toddler 2T under-3'])
})

test.each([
  ['i forgot my own dad. Clement, mens L', 'Clement men L'],
  ['oh no i forgot my own dad. Clement, mens L.', 'Clement men L'],
  ['and Clement, mens L', 'Clement men L'],
  ['also Clement mens L please', 'Clement men L'],
  ['forgot one: Clement mens L', 'Clement men L'],
  ['one more, Clement, mens L', 'Clement men L'],
  ['my brother Clement is coming too, he takes a mens L', 'Clement men L'],
  ['add my uncle Clement in mens L', 'Clement men L'],
  ['we need one for Clement as well, mens L', 'Clement men L'],
  ['I left off Clement (mens L)', 'Clement men L'],
])('%s: one more is on the list', async (words, fresh) => {
  const rows = await listOf('Beatrix womens 2XL\nRufus mens 3XL', words)
  expect(rows).toEqual(['Beatrix women 2XL', 'Rufus men 3XL', fresh])
})

test.each([
  ["theo's mum says he is a youth L these days", 'Theo youth L'],
  ["oh no i forgot my own dad. Clement, mens L. and theo's mum says he is a youth L these days", 'Theo youth L'],
])('%s: who is spoken of has another size', async (words, row) => {
  expect(await listOf('Beatrix womens 2XL\nTheo youth M', words)).toContain(row)
})
