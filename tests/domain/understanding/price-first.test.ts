import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const played = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'one', now: '2026-11-03T10:00', language, says, facts: [] }, shop)

const toldOf = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed, replies } = played(language, ...says)
  const { garments, decorations } = composed.order
  const on = decorations.map(({ place, layers }) => `${place} ${layers?.[0]?.colour}`)
  return { cloth: garments.map(({ colour }) => colour), on, price: replies.some(({ code }) => code === 'price-with-proof') }
}

test.each([
  ['en', 'how much for 15 volleyball jerseys? black with gold numbers on the back', ['black'], ['back-number gold']],
  ['en', 'how much would 15 black jerseys cost? gold numbers on the back', ['black'], ['back-number gold']],
  ['en', 'What would it cost to do 12 navy hoodies with the word HAWKS on the front in white', ['navy'], ['full-front white']],
  ['en', 'hi! price for 8 red tees with a white number on the back please', ['red'], ['back-number white']],
  ['es', 'cuanto cuesta hacer 15 playeras para voleibol? negras con numero dorado atras', ['black'], ['back-number gold']],
  ['es', '¿cuánto me salen 12 sudaderas azul marino con la palabra HALCONES adelante en blanco?', ['navy'], ['full-front white']],
  ['es', '¿cuánto cobran por 8 playeras rojas con número blanco atrás?', ['red'], ['back-number white']],
] as const)('(%s) %j: who begins with the price has begun an order, and is told when it comes', (language, said, cloth, on) => {
  expect(toldOf(language, said)).toEqual({ cloth, on, price: true })
})

test.each([
  ['en', 'Black jerseys, gold numbers on the back', 'how much with white numbers?'],
  ['en', 'Black jerseys, gold numbers on the back', 'how much would it be in red?'],
  ['es', 'Jerseys negros con número dorado atrás', '¿cuánto costaría con números blancos?'],
] as const)('(%s) %j, then %j: of what is ordered another make is asked for, and nothing changes', (language, first, second) => {
  expect(toldOf(language, first, second)).toEqual({ cloth: ['black'], on: ['back-number gold'], price: true })
})

test.each([
  ['en', 'how much do you charge?'],
  ['es', '¿cuánto cobran?'],
] as const)('(%s) %j is answered, and the first question is put', (language, said) => {
  expect(played(language, said).replies.map(({ code }) => code)).toEqual(['price-with-proof', 'ask-garment'])
})
