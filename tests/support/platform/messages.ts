import type { Action, Message } from '../../../src/ports/chat.ts'

export const message = (parts: Partial<Message> = {}): Message => ({
  language: 'en',
  blocks: [{ kind: 'text', text: 'Twelve jerseys, ready on Thursday.', tone: 'plain' }],
  picture: null,
  file: null,
  actions: [],
  choice: null,
  form: null,
  ...parts,
})

export const action = (id: string, label = id): Action => ({ id, label, weight: 'plain' })

export const ticketActions = (ticket: string, revision = 1): readonly Action[] =>
  ['open', 'take', 'hand-on', 'started', 'finished', 'water-drops', 'bleed-test', 'first-piece', 'short', 'spoiled', 'ask'].map(
    (name) => action(`t:${ticket}:${name}:${revision}`, name),
  )
