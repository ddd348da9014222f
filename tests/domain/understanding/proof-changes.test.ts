import { expect, test } from 'vitest'
import { showFor } from '../../../src/domain/shop/show.ts'
import { type Conversation, startConversation } from '../../../src/domain/understanding/conversation.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { say } from '../../../templates/replies/say.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const context = { shop, now: '2026-11-25T09:00' }

/** The proof's text after these messages, each complete order worked out at once. */
const proofAfter = (language: 'en' | 'es', ...says: readonly string[]): string => {
  let conversation: Conversation = startConversation({ id: 'c', person: { id: 'p', name: null }, language })
  let text = ''
  for (const [index, said] of says.entries()) {
    const heard = hear(conversation, { id: `m${index}`, kind: 'said', text: said }, context)
    conversation = heard.conversation
    if (heard.wants?.kind !== 'quote') continue
    const { revision, hash } = heard.wants
    const quote = { price: null, promise: null, problems: [], picture: null }
    const shown = hear(conversation, { id: `q${index}`, kind: 'quoted', revision, hash, quote }, context)
    conversation = shown.conversation
    text = shown.replies.map((reply) => say(reply, language, showFor(shop, language)).text).join('\n')
  }
  return text
}

const en =
  'Harbor Owls soccer, home red and away white jerseys, white numbers 20 cm on the back of the home, black on the away, everyone is over 13, I am Dana Fox, we need them December 18 at 5 pm\n7 Ruiz M\n10 Pena L'
const es =
  'Halcones, futbol, 2 playeras rojas con numero blanco atras, todos mayores de 13, soy Lupita Reyes, para el 18 de diciembre a las 5 de la tarde\n7 Ruiz M\n10 Peña G'

test('a first proof says no changes; the next one says them before the whole list', () => {
  expect(proofAfter('es', es)).toMatch(/^Revisión 1: 2 líneas/)
  const next = proofAfter('es', es, 'el 10 que sea mediana')
  expect(next).toMatch(/^Revisión 2\. Cambió desde la revisión 1: #10 Peña: talla G → M\. La lista completa: 2 líneas/)
  expect(next).toMatch(/Ruiz.*\n.*Peña/)
})

test('garments and heights are said as people say them', () => {
  const text = proofAfter('en', en)
  expect(text).toContain('Garment: home jersey')
  expect(text).toContain('(home jersey)')
  expect(text).toContain('20 cm (7.87 in)')
  expect(text).not.toMatch(/\bhome\b(?! jersey)/)
})
