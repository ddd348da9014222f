import fc from 'fast-check'
import { expect, test } from 'vitest'
import { showFor } from '../../../src/domain/shop/show.ts'
import { cleanText, mostCharacters } from '../../../src/domain/understanding/clean-text.ts'
import { type Conversation, startConversation } from '../../../src/domain/understanding/conversation.ts'
import { documentOf } from '../../../src/domain/understanding/document.ts'
import { draftSchema } from '../../../src/domain/understanding/draft.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { say } from '../../../templates/replies/say.ts'
import { starterShop } from './starter-shop.ts'

const runs = process.env['LONG'] === undefined ? 1_000 : 100_000
const shop = await starterShop()
const now = '2026-12-01T09:00'

const start = (language: 'en' | 'es'): Conversation => startConversation({ id: 'c', person: { id: 'p', name: null }, language })

const words = [
  'navy',
  'white',
  'jerseys',
  'number',
  'numbers',
  'front',
  'back',
  'names',
  'drop',
  'add',
  '12',
  '7',
  '#9',
  'M',
  'YL',
  'XXL',
  '2T',
  'ss10',
  'stones',
  'two rows of',
  'outline',
  'no',
  'not',
  'only',
  'both',
  'home',
  'away',
  'blanco',
  'número',
  'atrás',
  'quita',
  'agrega',
  'talla',
  'G',
  'CH',
  'Ana',
  "O'Brien",
  'Núñez',
  'friday',
  'viernes',
  '12/5',
  '5 pm',
  'a las 5',
  'december 10',
  ',',
  '.',
  '\n',
  '\t',
  ';',
  '-',
  '?',
  '!',
  '=1+1',
  '@here',
  '<b>',
  '[x](http://y)',
  '\u202e',
  '\u200b',
  '\u0000',
  '👍',
  'I approve',
  'apruebo',
  'undo',
  'cancel the order',
  'everyone is',
  'except',
  '50/50 cotton poly',
  'all',
  'each',
  '"',
  "'",
  '(',
  ')',
  '8 1/2 inch',
  '20 cm',
  'captain',
  'a C',
]
const soup = fc.array(fc.constantFrom(...words), { maxLength: 60 }).map((parts) => parts.join(' '))
const message = fc.oneof(
  soup,
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.lorem({ maxCount: 30 }),
)

test('no message crashes, and what is kept is always a valid draft', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('en' as const, 'es' as const),
      fc.array(message, { minLength: 1, maxLength: 3 }),
      (language, texts) => {
        let conversation = start(language)
        for (const [index, text] of texts.entries()) {
          const heard = hear(conversation, { id: `m${index}`, kind: 'said', text }, { shop, now })
          conversation = heard.conversation
          for (const reply of heard.replies)
            expect(say(reply, conversation.language, showFor(shop, conversation.language)).text.length).toBeGreaterThan(0)
        }
        expect(draftSchema.safeParse(conversation.draft).success).toBe(true)
        const { complete } = documentOf(conversation, { shop })
        expect(complete === null || complete.version === 1).toBe(true)
      },
    ),
    { numRuns: runs, seed: 7 },
  )
}, 3_600_000)

test('a line of 20,000 characters is read for 4,000 of them', () => {
  const long = `${'navy jerseys 12 M, '.repeat(1_100)}`
  expect(cleanText(long).text.length).toBeLessThanOrEqual(mostCharacters)
  const heard = hear(start('en'), { id: 'm', kind: 'said', text: long.slice(0, 20_000) }, { shop, now })
  expect(heard.replies.map((reply) => reply.code)).toContain('text-cut')
})

test('controls and marks that turn the writing round are taken out; line breaks and tabs stay', () => {
  expect(cleanText('a\u0000b\u202ec\u200bd\ufeff\ne\tf\r\ng').text).toBe('abcd\ne\tf\ng')
  expect(cleanText('O\u2019Malley \u2013 7').text).toBe("O'Malley - 7")
})

test('a formula in a cell stays a text and is never a number', () => {
  const table = [
    ['Name', 'Number', 'Size'],
    ['=HYPERLINK("x")', '7', 'M'],
    ['+cmd', '8', 'L'],
  ]
  const heard = hear(
    start('en'),
    { id: 'm', kind: 'said', text: '', files: [{ name: 'r.csv', mediaType: 'text/csv', bytes: 10, table }] },
    { shop, now },
  )
  const names = Object.values(heard.conversation.draft.rows).map((row) => row.name)
  expect(names).toEqual(['HYPERLINK("x"', 'cmd'])
})
