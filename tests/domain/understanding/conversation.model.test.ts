import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Conversation, type Said, startConversation, type Want } from '../../../src/domain/understanding/conversation.ts'
import { documentOf } from '../../../src/domain/understanding/document.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { starterShop } from './starter-shop.ts'

const runs = process.env['LONG'] === undefined ? 60 : 5_000
const shop = await starterShop()
const context = { shop, now: '2026-12-01T09:00' }

type Model = { lastShown: string | null; signed: number }
type Real = {
  conversation: Conversation
  last: { said: Said; after: Conversation } | null
  serial: number
  pending: Extract<Want, { kind: 'quote' }> | null
}

const deliver = (real: Real, said: Said) => {
  const heard = hear(real.conversation, said, context)
  real.conversation = heard.conversation
  real.last = { said, after: heard.conversation }
  real.serial += 1
  if (heard.wants?.kind === 'quote') real.pending = heard.wants
  return heard
}

/** Nothing is signed that was not shown last, and what is signed is the order as it stands. */
const checkSigning = (model: Model, real: Real, want: Want | null) => {
  if (want?.kind !== 'sign-off') return
  expect(want.hash).toBe(model.lastShown)
  expect(want.hash).toBe(documentOf(real.conversation, context).hash)
  model.signed += 1
}

const says = [
  'Riverbend Otters volleyball, navy jerseys, white numbers front and back',
  'names on the back in white',
  '7 Ingrid YM\n9 Lena YL\n14 Marta YM',
  'add Ida 18 YM',
  'drop Lena',
  'make the 7 a large',
  'gold, not white',
  'need them December 15 at 5 pm',
  'all 13 or older',
  'my name is Dana Whitlow',
  'no stones',
  'two rows of SS10 crystal stones around the numbers',
  'looks great',
  '👍',
  'I approve this',
  'looks great, go ahead, but make 7 an XL',
  'I approve revision 1',
  'how much without names?',
  'what a game last night',
  'thanks',
  'no',
  'yes',
  'cancel the order',
  'kelly green jerseys',
  'drop 2 of the mediums',
  'team is the Salt Creek Otters',
]

class Say implements fc.Command<Model, Real> {
  readonly text: string
  constructor(text: string) {
    this.text = text
  }
  check = () => true
  run(model: Model, real: Real) {
    const before = real.conversation.draft
    const heard = deliver(real, { id: `m${real.serial}`, kind: 'said', text: this.text })
    checkSigning(model, real, heard.wants)
    if (heard.wants?.kind === 'sign-off') expect(real.conversation.draft).toEqual(before)
  }
  toString = () => `say ${JSON.stringify(this.text)}`
}

class Quote implements fc.Command<Model, Real> {
  check = () => true
  run(model: Model, real: Real) {
    if (real.pending === null) return
    const { revision, hash } = real.pending
    const heard = deliver(real, {
      id: `q${real.serial}`,
      kind: 'quoted',
      revision,
      hash,
      quote: { price: null, promise: null, problems: [], picture: null },
    })
    if (heard.replies.some((reply) => reply.code === 'proof')) {
      expect(hash).toBe(documentOf(real.conversation, context).hash)
      model.lastShown = hash
    }
  }
  toString = () => 'the desk brings the quote'
}

class Press implements fc.Command<Model, Real> {
  readonly action: 'sign-off' | 'undo' | 'start-over'
  readonly off: number
  constructor(action: 'sign-off' | 'undo' | 'start-over', off: number) {
    this.action = action
    this.off = off
  }
  check = () => true
  run(model: Model, real: Real) {
    const { past, shown } = real.conversation
    const revision = (shown?.revision ?? 0) + this.off
    const heard = deliver(real, { id: `p${real.serial}`, kind: 'pressed', action: this.action, revision })
    checkSigning(model, real, heard.wants)
    if (this.off !== 0) expect(heard.wants?.kind).not.toBe('sign-off')
    if (this.action === 'undo' && past.length > 0) expect(real.conversation.draft).toEqual(past.at(-1)?.draft)
  }
  toString = () => `press ${this.action} ${this.off}`
}

class Restart implements fc.Command<Model, Real> {
  check = () => true
  run(_model: Model, real: Real) {
    const stored: Conversation = JSON.parse(JSON.stringify(real.conversation))
    expect(stored).toEqual(real.conversation)
    real.conversation = stored
  }
  toString = () => 'restart'
}

class Twice implements fc.Command<Model, Real> {
  check = () => true
  run(_model: Model, real: Real) {
    if (real.last === null) return
    const heard = hear(real.conversation, real.last.said, context)
    expect(heard).toEqual({ conversation: real.conversation, replies: [], wants: null })
  }
  toString = () => 'the same delivery again'
}

const opening =
  'Riverbend Otters volleyball, navy jerseys, white numbers front and back, need them December 15 at 5 pm, all adults. My name is Dana Whitlow\n7 Ingrid YM\n9 Lena YL\n14 Marta YM'

let signatures = 0

const setup = (told: boolean) => {
  const empty = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
  const heard = hear(empty, { id: 'first', kind: 'said', text: opening }, context)
  const pending = told && heard.wants?.kind === 'quote' ? heard.wants : null
  const real: Real = { conversation: told ? heard.conversation : empty, last: null, serial: 0, pending }
  return { model: { lastShown: null, signed: 0 }, real }
}

test('whatever is said in whatever order, nothing is signed that was not shown last, and nothing is lost or heard twice', () => {
  const commands = [
    fc.constantFrom(...says).map((text) => new Say(text)),
    fc.constant(new Quote()),
    fc.constantFrom(0, 0, 0, 1, -1).map((off) => new Press('sign-off', off)),
    fc.constant(new Press('undo', 0)),
    fc.constant(new Restart()),
    fc.constant(new Twice()),
    fc.constant(new Press('start-over', 0)),
  ]
  fc.assert(
    fc.property(fc.boolean(), fc.commands(commands, { maxCommands: 40 }), (told, list) => {
      const start = setup(told)
      fc.modelRun(() => start, list)
      signatures += start.model.signed
    }),
    { numRuns: runs, seed: 11 },
  )
  expect(signatures).toBeGreaterThan(0)
})

const independent = [
  'navy jerseys',
  'white numbers front and back',
  'need them December 15 at 5 pm',
  'team is the Riverbend Otters',
  'volleyball',
  'my name is Dana Whitlow',
  'all adults',
  'names above in gold',
  '7 Ingrid YM\n9 Lena YL\n14 Marta YM',
]

test('the same words in another order give the same order', () => {
  const told = (texts: readonly string[]) => {
    let conversation = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
    for (const [index, text] of texts.entries())
      conversation = hear(conversation, { id: `m${index}`, kind: 'said', text }, context).conversation
    const { order } = documentOf(conversation, context)
    return { ...order, decorations: [...order.decorations].sort((a, b) => (a.id < b.id ? -1 : 1)) }
  }
  const first = told(independent)
  expect(first.roster).toHaveLength(3)
  fc.assert(
    fc.property(fc.shuffledSubarray(independent, { minLength: independent.length }), (texts) => {
      expect(told(texts)).toEqual(first)
    }),
    { numRuns: Math.min(runs, 300), seed: 3 },
  )
})
