import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const draftAfter = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'heights', now: '2027-03-02T10:00', language, says, facts: [] }, shop).conversation.draft

test.each([
  ['en', 'white numbers front and back, 4in front 8in back', 101_600, 203_200],
  ['en', 'Numbers 8 front 12 back inches, white', 203_200, 304_800],
  ['en', 'white numbers 4 and 8 inches, front and back', 101_600, 203_200],
  ['es', 'números blancos 10 cm enfrente 20 cm atrás', 100_000, 200_000],
  ['es', 'número blanco de 20 cm atrás y de 10 adelante', 100_000, 200_000],
] as const)('each side has its own height: %s: %s', (language, words, front, back) => {
  const { marks, rows } = draftAfter(language, words)
  expect(marks['front-number']?.style?.micrometres).toBe(front)
  expect(marks['back-number']?.style?.micrometres).toBe(back)
  expect(rows).toEqual({})
})

/** The polos of one size, whether counted by the garment or by size. */
const polosIn = ({ garments, tally }: ReturnType<typeof draftAfter>) => {
  const { fit, size, count } = garments['polo'] ?? {}
  const counted = Object.values(tally).find(({ garment }) => garment === 'polo')
  return { fit: counted?.fit ?? fit, size: counted?.size ?? size, quantity: counted?.quantity ?? count }
}

test.each([
  ['en', '12 jerseys red and 2 black polos mens L', 'polos should be 4', 4],
  ['es', 'jerseys rojos y polos negras, dos de hombre talla G', 'las polos son 3, no 2', 3],
] as const)('so many of a garment, said anew: %s: %s', (language, first, then, count) => {
  expect(polosIn(draftAfter(language, first))).toEqual({ fit: 'men', size: 'L', quantity: 2 })
  expect(polosIn(draftAfter(language, first, then))).toEqual({ fit: 'men', size: 'L', quantity: count })
})

test('a team named alone while something else is asked', () => {
  expect(draftAfter('en', 'red jerseys', 'The Herons').team).toBe('Herons')
})
