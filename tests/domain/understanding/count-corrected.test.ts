import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = { en: '12 black tees, white number on the back', es: '12 playeras negras con número blanco atrás' }

const counts = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { conversation, replies } = play({ id: 'count', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const { count, garments, day } = conversation.draft
  return {
    counts: [count, garments['tee']?.count].filter((one) => one !== undefined),
    day,
    strange: replies.some(({ code }) => code === 'off-topic'),
  }
}

test.each([
  ['en', '11 not 12, forgot one was leaving', 11],
  ['en', 'actually 13, not 12', 13],
  ['en', 'sorry, not 12 but 14', 14],
  ['en', 'we need 14 instead', 14],
  ['en', "it's 13 in all", 13],
  ['es', 'son 13, no 12', 13],
  ['es', 'no 12 sino 14', 14],
  ['es', 'perdón, 11 y no 12', 11],
  ['es', 'en total son 15', 15],
] as const)('(%s) %j: so many, and not what was told before', (language, said, count) => {
  expect(counts(language, orders[language], said)).toEqual({ counts: [count], day: undefined, strange: false })
})

test.each([
  ['en', 'we need them the 14th'],
  ['en', 'the 13th, not the 12th'],
  ['en', '13 inches not 12'],
  ['es', 'los necesito el 14'],
  ['es', 'el 13, no el 12'],
  ['es', '20 cm y no 12'],
] as const)('(%s) %j counts no pieces', (language, said) => {
  expect(counts(language, orders[language], said).counts).toEqual([12])
})

test.each([
  ['en', '7 Ana M\n12 Bo L', '13 not 12'],
  ['es', '7 Ana M\n12 Bo G', '13, no 12'],
] as const)('(%s) of a list, %j, %j is of a number', (language, list, said) => {
  expect(counts(language, orders[language], list, said).counts).toEqual([12])
})
