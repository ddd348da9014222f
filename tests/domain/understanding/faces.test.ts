import { expect, test } from 'vitest'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { readFaces } from '../../../src/domain/understanding/read/things/faces.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

test.each([
  ['numbers in anton', ['number'], 'anton'],
  ['números en ANTON', ['number'], 'anton'],
  ['letra graduate', ['number'], 'graduate'],
  ['names in lobster script', ['name'], 'lobster'],
  ['use the Bebas Neue font', ['number'], 'bebas-neue'],
  ['gold numbers on the back in graduate', ['number'], 'graduate'],
  ['numbers and names in anton', ['name', 'number'], 'anton'],
  ['nombres y números en Russo One', ['number', 'name'], 'russo-one'],
])('%s names a face', (text, contents, face) => {
  const { patches, open } = readFaces(text, shop)
  expect(patches).toEqual(contents.map((content) => ({ path: ['styles', content, 'face'], value: face })))
  expect(open).toEqual([])
})

test.each(['7 Anton M', 'we are the Graduate Lobsters', 'Anton in goal', 'the font should be bold', 'same font as last year'])(
  '%s sets no face and asks nothing',
  (text) => {
    expect(readFaces(text, shop)).toEqual({ patches: [], open: [], rest: text })
  },
)

test.each([
  ['numbers in lobster', 'lobster', false],
  ['names in the Invented Grotesk font', 'Invented Grotesk', true],
  ['la tipografía Inventada para los nombres', 'Inventada', false],
])('%s is asked about, and the words are taken out', (text, quote, scripts) => {
  const { patches, open, rest } = readFaces(text, shop)
  expect(patches).toEqual([])
  expect(open[0]).toMatchObject({ about: 'face', quote })
  expect(open[0]?.readings.some(({ value }) => value === 'lobster')).toBe(scripts)
  expect(rest).not.toContain(quote)
})

test('a script for numbers is asked about once, and the answer by name settles it', () => {
  const context = { shop, now: '2027-03-02T10:00' }
  const start = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
  const asked = hear(start, { id: '1', kind: 'said', text: 'White jerseys, red numbers on the back in lobster' }, context)
  expect(asked.replies.at(-1)).toMatchObject({ code: 'ask-face', facts: { quote: 'lobster', known: true } })
  const told = hear(asked.conversation, { id: '2', kind: 'said', text: 'Graduate please' }, context)
  expect(told.conversation.draft.styles['number']).toMatchObject({ face: 'graduate' })
  expect(told.conversation.open).toEqual([])
  expect(told.conversation.draft.team).toBeUndefined()
})
