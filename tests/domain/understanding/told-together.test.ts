import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = [
  'green jerseys, white names and numbers on the back',
  "4 Sorensen L\n9 Achebe M\n12 Ruiz M\n1 MacKay XL\n6 O'Rourke S",
]
const spanish = ['jerseys verdes, número y nombre blancos atrás', '4 Sosa G\n9 Luna M\n12 Ruiz M\n1 Macías XG\n6 Ortega CH']

const sizes = async (language: 'en' | 'es', words: string) => {
  const { rows } = await heard(language, [...(language === 'en' ? english : spanish), words])
  return Object.fromEntries(rows.map((row) => [row.split(' ')[0], row.split(' ').slice(-2).join(' ')]))
}

const large = { 9: 'men L', 12: 'men L' }
const all = { 4: 'men XL', 9: 'men XL', 12: 'men XL' }

test.each([
  ['9 and 12 are both a large btw, not medium', large],
  ['#9 and #12 go to large', large],
  ['both 9 and 12 should be L', large],
  ['numbers 9 and 12 in L please', large],
  ['Ruiz and Achebe both wear L', large],
  ['the two mediums should be larges', large],
  ['9 and 12, both L. thanks', large],
  ["9 and 12 are women's L", { 9: 'women L', 12: 'women L' }],
  ['Ruiz and Mackay need to go up a size', { 12: 'men L', 1: 'men 2XL' }],
  ['Ruiz and MacKay both need to size down', { 12: 'men S', 1: 'men L' }],
  ['Ruiz needs a size up and so does MacKay', { 12: 'men L', 1: 'men 2XL' }],
  ['put 4, 9 and 12 in XL', all],
  ['4, 9 and 12: XL', all],
  ['XL for 4, 9 and 12', all],
  ['12 and 6 are L and M', { 12: 'men L', 6: 'men M' }],
  ['12 and 6 should be L and M respectively', { 12: 'men L', 6: 'men M' }],
  ['9 is L, 12 is XL, 6 is M', { 9: 'men L', 12: 'men XL', 6: 'men M' }],
])('one thing told of several: %s', async (words, expected) => {
  expect(await sizes('en', words)).toMatchObject(expected)
})

test.each([
  ['el 9 y el 12 son G los dos, no M', large],
  ['tanto el 9 como el 12 son G', large],
  ['Luna y Ruiz usan G los dos', large],
  ['pongan al 9 y al 12 en G', large],
  ['ni el 9 ni el 12 son M, son G', large],
  ['las dos medianas que sean grandes', large],
  ['a Ruiz y a Macías súbanles una talla', { 12: 'men L', 1: 'men 2XL' }],
  ['Ruiz y Macías necesitan una talla más', { 12: 'men L', 1: 'men 2XL' }],
  ['Ruiz y Macías una talla más chica', { 12: 'men S', 1: 'men L' }],
  ['XG para 4, 9 y 12', all],
])('lo mismo dicho de varios: %s', async (words, expected) => {
  expect(await sizes('es', words)).toMatchObject(expected)
})

test('those who leave together leave all', async () => {
  expect((await heard('en', [...english, 'Ruiz and MacKay quit'])).rows).toHaveLength(3)
})

test.each([
  'is 9 and 12 both large?',
  '9 or 12 should be L',
  'if 9 and 12 go up a size does the price change?',
  "Ruiz's brother and MacKay's cousin are L",
])('nothing is told of them by: %s', async (words) => {
  const before = await heard('en', english)
  expect((await heard('en', [...english, words])).rows).toEqual(before.rows)
})
