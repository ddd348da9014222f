import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const played = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'asked', now: '2027-03-02T10:00', language, says, facts: [] }, shop)

test.each([
  ['en', 'how does it stand?'],
  ['en', 'where are we?'],
  ['es', '¿cómo va?'],
  ['es', '¿ya está listo?'],
] as const)('how an order stands: %s: %s', (language, words) => {
  expect(played(language, words).wants).toEqual([{ kind: 'status' }])
})

test('a list that is ready is no question', () => {
  expect(played('es', 'ya están listas las tallas: 4 M y 5 G, jerseys rojos').wants).toEqual([])
})

test.each([
  ['en', 'one jersey came with a crooked number, I want to complain'],
  ['es', 'una playera llegó con el número torcido, quiero quejarme'],
] as const)('something went wrong that has no name here, and nothing is ordered: %s: %s', (language, words) => {
  const { wants, conversation } = played(language, words)
  expect(wants).toMatchObject([{ kind: 'complaint', complaint: { kind: 'other' } }])
  expect(conversation.draft.garments).toEqual({})
})

test('a number that shall not be crooked is no complaint', () => {
  expect(played('en', 'the numbers should be straight, not crooked please. 10 red jerseys').wants).toEqual([])
})

test('jackets that the shop made before are no garment, and the trouble told next is a complaint of that team', () => {
  const first = 'Hi, Fergus from the curling rink. Our team is Loon Lake Lanterns, you did our jackets back in October.'
  const then = "Not happy I'm afraid. The numbers on 6 and 19 are peeling off at the corners. Washed two times, always hung up."
  const { wants, conversation } = played('en', first, then)
  expect(wants.at(-1)).toMatchObject({ complaint: { kind: 'lift', team: 'Loon Lake Lanterns', numbers: ['6', '19'], washes: 2 } })
  expect(conversation.draft.garments).toEqual({})
})
