import { expect, test } from 'vitest'
import { type Conversation, type Said, startConversation } from '../../../src/domain/understanding/conversation.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const quote = { price: null, promise: null, problems: [], picture: null }
const complete =
  'Mesa Bulls football, navy jerseys, white numbers on the back, December 12 at 5 pm, all adults\n7 Ingrid M\n9 Lena L'

type Heard = ReturnType<typeof hear>

const empty = startConversation({ id: 'c', person: { id: 'p', name: 'Dana' }, language: 'en' })
const told = (conversation: Conversation, said: Said, in_ = shop): Heard =>
  hear(conversation, said, { shop: in_, now: '2026-11-25T10:05' })
const say = (conversation: Conversation, text: string): Heard => told(conversation, { id: text, kind: 'said', text })
const codes = ({ replies }: Heard): readonly string[] => replies.map(({ code }) => code)

/** What was sent to be worked out, answered by the desk. */
const quoted = ({ wants }: Heard): Said => {
  if (wants?.kind !== 'quote') throw new Error('nothing was sent')
  return { id: `q${wants.revision}`, kind: 'quoted', revision: wants.revision, hash: wants.hash, quote }
}

test('a proof that a change has overtaken is let go without a word, and the new one comes once', () => {
  const first = say(empty, complete)
  const second = say(first.conversation, 'make the 9 a medium')
  const late = told(second.conversation, quoted(first))
  expect([late.replies, late.wants, late.conversation.sent?.revision]).toEqual([[], null, 2])
  const shown = told(late.conversation, quoted(second))
  expect(codes(shown)).toEqual(['proof'])
  expect(shown.conversation.shown?.revision).toBe(2)
})

test('of a change that is taken back at once the last proof is shown, and no other', () => {
  const first = say(empty, complete)
  const second = say(first.conversation, 'make the 9 a medium')
  const third = say(second.conversation, 'undo')
  const afterFirst = told(third.conversation, quoted(first))
  const afterSecond = told(afterFirst.conversation, quoted(second))
  expect([...afterFirst.replies, ...afterSecond.replies]).toEqual([])
  const shown = told(afterSecond.conversation, quoted(third))
  expect([codes(shown), shown.conversation.shown?.revision]).toEqual([['proof'], 3])
})

test('a proof that comes while a question stands does not put the question again', () => {
  const first = say(empty, complete)
  const asking = say(first.conversation, 'make the jerseys blue')
  expect(asking.conversation.asked).not.toBeNull()
  const late = told(asking.conversation, quoted(first))
  expect(late.replies.filter(({ code }) => code.startsWith('ask') || code === 'proof-outdated')).toEqual([])
})

test('an order whose records changed while it was worked out is worked out anew', () => {
  const first = say(empty, complete)
  const usual = { ...shop.profile.usual, numberFace: 'anton' }
  const late = told(first.conversation, quoted(first), { ...shop, profile: { ...shop.profile, usual } })
  expect(codes(late)).toContain('proof-outdated')
  expect(late.wants?.kind).toBe('quote')
})
