import { expect, test } from 'vitest'
import { readFaces } from '../../../src/domain/understanding/read/faces.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

test.each([
  ['numbers in anton', 'number', 'anton'],
  ['números en ANTON', 'number', 'anton'],
  ['letra graduate', 'number', 'graduate'],
  ['names in lobster script', 'name', 'lobster'],
  ['use the Bebas Neue font', 'number', 'bebas-neue'],
])('%s names a face', (text, content, face) => {
  expect(readFaces(text, shop).patches).toEqual([{ path: ['styles', content, 'face'], value: face }])
})

test.each(['7 Anton M', 'we are the Graduate Lobsters', 'numbers in lobster'])('%s sets no face', (text) => {
  expect(readFaces(text, shop)).toEqual({ patches: [], rest: text })
})
