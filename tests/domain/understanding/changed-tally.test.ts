import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = 'black tees, LYNX on the front in white'
const counted = '3 small, 4 medium, 6 large'
const spanish = 'playeras negras con LINCES al frente en blanco'
const contadas = '3 chicas, 4 medianas, 6 grandes'

test.each([
  ['sorry, 5 large instead of 6', 5],
  ['just recounted... 5 large, not 6', 5],
  ["it's not 6 large, it's 5", 5],
  ['larges are 5', 5],
  ['5, not 6, large', 5],
  ['can we make the large five instead of six', 5],
  ['bump larges from 6 to 8', 8],
  ['I meant 5 large', 5],
  ['one less large', 5],
  ['2 more larges', 8],
  ['large: 5', 5],
])('"%s" changes the larges that were counted', async (words, larges) => {
  const { rows, open } = await heard('en', [english, counted, words])
  expect(rows).toEqual(['men S x3', 'men M x4', `men L x${larges}`])
  expect(open).toEqual([])
})

test.each([
  ['las medianas van a ser 8', 8],
  ['perdón, 8 medianas en vez de 4', 8],
  ['no son 4 medianas, son 8', 8],
  ['me equivoqué, medianas 8', 8],
  ['súbele 2 a las medianas', 6],
  ['quítenle 2 a las medianas, o sea quedan 2', 2],
  ['que sean 8 las medianas', 8],
  ['2 medianas menos', 2],
  ['cambia las medianas de 4 a 8', 8],
])('"%s" changes the medium ones that were counted', async (words, mediums) => {
  const { rows, open } = await heard('es', [spanish, contadas, words])
  expect(rows).toEqual(['men S x3', `men M x${mediums}`, 'men L x6'])
  expect(open).toEqual([])
})

test('the amount that was picks one of two cuts; without it the cut is asked', async () => {
  const both = 'youth: 3 small, 4 medium. adult: 6 medium'
  const picked = await heard('en', [english, both, 'mediums should be 5, not 6'])
  expect(picked.rows).toEqual(['youth S x3', 'youth M x4', 'men M x5'])
  const asked = await heard('en', [english, both, 'mediums should be 5'])
  expect(asked.rows).toEqual(['youth S x3', 'youth M x4', 'men M x6'])
  expect(asked.open).toEqual(['fit'])
})

test('a size counted again without a word of why is asked: so many in all, or besides', async () => {
  const { rows, open } = await heard('en', [english, counted, '5 large'])
  expect(rows).toEqual(['men S x3', 'men M x4', 'men L x6'])
  expect(open).toEqual(['amount'])
  const answered = await heard('en', [english, counted, '5 large', '11'])
  expect(answered.rows).toEqual(['men S x3', 'men M x4', 'men L x11'])
})

test('a whole new count takes the place of the one before', async () => {
  const { rows } = await heard('en', [english, counted, '2 small, 5 medium, 6 large'])
  expect(rows).toEqual(['men S x2', 'men M x5', 'men L x6'])
})

test('who leaves may be followed by who comes, on the same line', async () => {
  const list = 'Gomez - L\nDell - M\nRossi - XL'
  const bianchi = await heard('en', [
    'white tees, names on the back in black',
    list,
    'Rossi is out. Bianchi takes his place, same size',
  ])
  expect(bianchi.rows).toEqual(['Gomez men L', 'Dell men M', 'Bianchi men XL'])
  const sized = await heard('es', [
    'playeras blancas con el nombre atrás',
    list,
    'Rossi ya no juega, en su lugar entra Bianchi talla S',
  ])
  expect(sized.rows).toEqual(['Gomez men L', 'Dell men M', 'Bianchi men S'])
})
