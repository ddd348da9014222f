import { expect, test } from 'vitest'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const context = { shop, now: '2026-11-25T09:00' }

const talk = (...says: readonly string[]) =>
  says.reduce(({ conversation }, text, index) => hear(conversation, { id: `m${index}`, kind: 'said', text }, context), {
    conversation: startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'es' }),
    replies: [],
    wants: null,
  } as ReturnType<typeof hear>)

const order =
  '6 playeras rojas con numero blanco atras, futbol, todos mayores de 13\n7 Ruiz M\n10 Peña G\n1 Núñez CH\n4 Lara M\n5 Soto XG\n9 Ávila M'

test('a size changed while another player is taken off is read back beside it', () => {
  const heard = talk(order, 'el 10 que sea mediana y quita a Soto')
  const changed = heard.replies.find((reply) => reply.code === 'changed')
  const told = changed?.code === 'changed' ? changed.facts.changes.map(({ path, was, now }) => [path, was, now]) : []
  expect(told).toEqual([
    ['/roster/row', '#5 Soto XL', null],
    ['/roster/row/size', 'L', 'M'],
  ])
})

test('a list that was as long as was said stays so when a player is taken off or put on', () => {
  const codes = (heard: ReturnType<typeof hear>) => heard.replies.map((reply) => reply.code)
  expect(codes(talk(order, 'quita a Soto'))).not.toContain('raise-count')
  expect(codes(talk(order, 'agrega a Damián con el 17, G'))).not.toContain('raise-count')
  expect(codes(talk(order.replace('6 playeras', '9 playeras')))).toContain('raise-count')
})

test('a name under an approval is a signature, and no change of who orders', () => {
  const complete = `${order}\nSoy Lupita Reyes, equipo Halcones, para el 18 de diciembre a las 5 de la tarde`
  const asked = talk(complete)
  if (asked.wants?.kind !== 'quote') throw new Error(`the order is not complete: ${asked.replies.map((reply) => reply.code)}`)
  const { revision, hash } = asked.wants
  const quote = { price: null, promise: null, problems: [], picture: null }
  const shown = hear(asked.conversation, { id: 'q', kind: 'quoted', revision, hash, quote }, context)
  const signed = hear(shown.conversation, { id: 's', kind: 'said', text: 'Ya revisé todo, lo apruebo así. Lupita' }, context)
  expect(signed.wants?.kind).toBe('sign-off')
  expect(signed.conversation.draft.orders).toBe('Lupita Reyes')
})
