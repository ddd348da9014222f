import { beforeAll, expect, test, vi } from 'vitest'
import type { Shop } from '../../../src/domain/shop/shop.ts'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { documentOf } from '../../../src/domain/understanding/document.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { readIntent } from '../../../src/domain/understanding/read/intent/intents.ts'
import { understand } from '../../../src/domain/understanding/read/understand.ts'
import { starterShop } from './starter-shop.ts'

vi.mock(import('../../../src/domain/understanding/words/registered.ts'), async (original) => {
  const { registered } = await original()
  const { portugueseBeside } = await import('./portuguese.ts')
  return { registered: { ...registered, pt: portugueseBeside(registered.en) } }
})

let shop: Shop

beforeAll(async () => {
  shop = await starterShop()
})

const context = () => ({ shop, now: '2027-03-02T10:00' })

const talk = (...says: readonly string[]) => {
  const start = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
  return says.reduce(
    (before, text, index) => hear(before, { id: `m${index}`, kind: 'said', text }, context()).conversation,
    start,
  )
}
const heard = (...says: readonly string[]) => documentOf(talk(...says), context()).order
const draftOf = (text: string) => talk(text).draft

test('a language that is registered by its words alone is understood in garment, colour, number, place, size, count, day and roster', () => {
  const order = heard(
    'Somos o time Gaivotas, vôlei. Precisamos 12 camisas brancas com números vermelhos nas costas para 19 de março',
    '3 pequenas, 5 medias e 4 grandes',
  )
  expect(order.sport).toBe('volleyball')
  expect(order.garments[0]?.colour).toBe('white')
  expect(order.decorations.map(({ place }) => place)).toEqual(['back-number'])
  expect(order.decorations[0]?.layers?.[0]).toMatchObject({ colour: 'red' })
  expect(order.roster.map(({ size, quantity }) => [size, quantity])).toEqual([
    ['S', 3],
    ['M', 5],
    ['L', 4],
  ])
})

test('its calendar and its cuts count too', () => {
  const order = heard('Camisas brancas infantil para 19 de março às 18:00', 'Ana 4 infantil M\nRui 9 infantil G')
  expect(order.needBy).toBe('2027-03-19T18:00')
  expect(order.roster.map(({ number, name, fit }) => [number, name, fit])).toEqual([
    ['4', 'Ana', 'youth'],
    ['9', 'Rui', 'youth'],
  ])
})

const kindOf = (text: string): string => readIntent(text, null).kind

test('what a message wants besides the order is understood by its phrases', () => {
  expect(kindOf('Olá, bom dia!')).toBe('order')
  expect(kindOf('Olá!')).toBe('greeting')
  expect(kindOf('Muito obrigada!')).toBe('thanks')
  expect(kindOf('Desculpa, desfaz isso por favor.')).toBe('undo')
  expect(readIntent('Em português, por favor', null)).toEqual({ kind: 'order' })
  expect(readIntent('Em português por favor', null)).toEqual({ kind: 'language', language: 'pt' })
})

test.each(['Por favor cancela o pedido', 'Desfaz isso e cancela o pedido'])(
  'an order is given up by its phrases: %s',
  (words) => {
    const before = talk('Quero camisas pretas', 'Ana 4 M')
    expect(understand(words, before, context()).intent.kind).toBe('cancel')
  },
)

test('phrases of a third language do not take the others away', () => {
  expect(kindOf('sorry, undo that')).toBe('undo')
  expect(kindOf('perdón, deshazlo')).toBe('undo')
  expect(kindOf('desculpa, undo isso')).toBe('undo')
})

test('a complaint, with its number, its washes and its team', () => {
  expect(readIntent('O número 7 do time Gaivotas está descolando depois de três lavagens na secadora', null)).toMatchObject({
    kind: 'complaint',
    complaint: { kind: 'lift', numbers: ['7'], washes: 3, drying: 'dryer', team: 'Gaivotas' },
  })
})

test('who orders and who pays, as their names are written', () => {
  const { orders, pays, handOver } = draftOf('Me chamo Rita Moura. Quem paga é o senhor Duarte Leal, vou buscar.')
  expect({ orders, pays, handOver }).toEqual({ orders: 'Rita Moura', pays: 'Duarte Leal', handOver: 'collect' })
})

test('an hour in words, with a part of the day or a half', () => {
  expect(draftOf('Precisamos para 19 de março às nove da noite')).toMatchObject({ day: '2027-03-19', hour: '21:00' })
  expect(draftOf('Precisamos amanhã até as cinco e meia')).toMatchObject({ day: '2027-03-03', hour: '17:30' })
  expect(draftOf('Tamanhos depois, para o campeonato')).toMatchObject({ later: { sizes: true }, needFor: 'campeonato' })
})
