import { beforeAll, expect, test, vi } from 'vitest'
import type { Shop } from '../../../src/domain/shop/shop.ts'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { documentOf } from '../../../src/domain/understanding/document.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import type { Words } from '../../../src/domain/understanding/words/word-list.ts'
import { starterShop } from './starter-shop.ts'

/** A few words of Portuguese, as a language's file would hold them. */
const portuguese = vi.hoisted(
  (): Words => ({
    notBorrowed: ['nos', 'com', 'a', 'um', 'no'],
    basics: {
      small: ['nas', 'nos', 'com', 'para', 'somos', 'precisamos', 'dia', 'e', 'as', 'os', 'camisas', 'nossa'],
      letters: /[ãõç]/,
      nounFirst: true,
      monthFirst: false,
      bends: true,
      months: [
        ['janeiro'],
        ['fevereiro'],
        ['marco'],
        ['abril'],
        ['maio'],
        ['junho'],
        ['julho'],
        ['agosto'],
        ['setembro'],
        ['outubro'],
        ['novembro'],
        ['dezembro'],
      ],
      weekdays: [['domingo'], ['segunda'], ['terca'], ['quarta'], ['quinta'], ['sexta'], ['sabado']],
      sizes: { pequenas: 'S', medias: 'M', grandes: 'L' },
      cuts: { infantil: 'youth' },
    },
    shades: { words: [], before: false, near: {} },
    artwork: { words: ['logotipo'], lettered: [], refused: ['sem'] },
    faces: {
      lettering: [],
      typeface: [],
      called: [],
      plain: [],
      numbers: ['numeros'],
      names: ['nomes'],
      links: [],
      joins: [],
    },
    list: [
      { means: { kind: 'garment', id: 'jersey' }, words: ['camisas', 'camisa'] },
      { means: { kind: 'content', id: 'number' }, words: ['números', 'número'] },
      { means: { kind: 'content', id: 'name' }, words: ['nomes', 'nome'] },
      { means: { kind: 'place', id: 'back' }, words: ['nas costas', 'costas'] },
      { means: { kind: 'colour', id: 'white' }, words: ['brancas', 'brancos', 'branco'] },
      { means: { kind: 'colour', id: 'red' }, words: ['vermelhos', 'vermelhas', 'vermelho'] },
      { means: { kind: 'with' }, words: ['com'] },
      { means: { kind: 'sport', id: 'volleyball' }, words: ['vôlei'] },
    ],
  }),
)

vi.mock(import('../../../src/domain/understanding/words/registered.ts'), async (original) => {
  const { registered } = await original()
  return { registered: { ...registered, pt: portuguese } }
})

let shop: Shop

beforeAll(async () => {
  shop = await starterShop()
})

const heard = (...says: readonly string[]) => {
  const context = { shop, now: '2027-03-02T10:00' }
  const start = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
  const conversation = says.reduce(
    (before, text, index) => hear(before, { id: `m${index}`, kind: 'said', text }, context).conversation,
    start,
  )
  return documentOf(conversation, context).order
}

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
