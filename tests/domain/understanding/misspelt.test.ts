import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const after = (language: 'en' | 'es', says: readonly string[]) =>
  play({ id: 'spelt', now: '2026-11-20T10:00', language, says, facts: [] }, shop).composed.order

const inBrief = (language: 'en' | 'es', says: readonly string[]): string => {
  const { garments, decorations } = after(language, says)
  const print = decorations.map(({ place, layers }) => {
    const [first] = layers ?? []
    return `${place} ${first !== undefined && 'colour' in first ? first.colour : ''}`
  })
  return [...garments.map(({ id, colour }) => `${id} ${colour}`), ...print].join(', ')
}

test.each([
  ['en', 'jerseys for bball, color pruple, numbers yelow on the back only', 'jersey purple, back-number yellow'],
  ['en', 'oragne hooddies with LYNX on the front in wihte', 'hoodie orange, full-front white'],
  ['en', 'purplle jerseys, sliver nubmers on the back', 'jersey purple, back-number silver'],
  ['es', 'sudadreas amarilas con LINCES al frente en balnco', 'hoodie yellow, full-front white'],
  ['es', 'jerseys naraanja, numeros doardos atrás', 'jersey orange, back-number gold'],
] as const)('a slip of the fingers is read as what was meant: %s: %s', (language, words, expected) => {
  expect(inBrief(language, [words])).toBe(expected)
})

test.each([
  [
    'en',
    'navy jerseys with white numbers on the back. While you are at it, write us when they are ready',
    'jersey navy, back-number white',
  ],
  ['en', 'navy jerseys with white numbers on the back\n3 Pruple M\n9 Yelow L', 'jersey navy, back-number white'],
  ['es', 'jerseys azul marino con números blancos atrás. Bronca con el doble, no se apuren', 'jersey navy, back-number white'],
] as const)('other words and names stay what they are: %s: %s', (language, words, expected) => {
  expect(inBrief(language, [words])).toBe(expected)
})

test.each([
  ['en', 'work polos for the field crew: grey, LYNX on the left chest in black', 'staff'],
  ['en', 'navy polos for our employees, LYNX on the left chest in white', 'staff'],
  ['es', 'polos grises para los trabajadores, LINCES en el pecho izquierdo en negro', 'staff'],
  ['es', 'uniformes de trabajo: polos grises, LINCES en el pecho izquierdo en negro', 'staff'],
  ['en', 'grey tees, LYNX on the front in black, that would work for us', 'fan'],
] as const)('what they are for: %s: %s', (language, words, use) => {
  expect(after(language, [words]).use).toBe(use)
})

test('who is spoken of later changes nothing of what they are for', () => {
  const base = 'black bodysuits for our cheer squad, LYNX on the front in white'
  const { use } = after('en', [base])
  expect(after('en', [base, 'ok the teachers had a chat, make the letters gold']).use).toBe(use)
  expect(after('en', [base, 'oh and they are for the teachers']).use).toBe('staff')
})
