import type { Conversation } from './conversation.ts'
import type { Context } from './document.ts'
import { type Heard, proceed } from './proceed.ts'
import type { Intent } from './understood.ts'

/** Who gives the whole order up is asked once to be sure. */
export const askCancel = (conversation: Conversation): Heard => {
  const asked = { code: 'cancel', path: '', readings: [{ value: 'cancel', kind: 'word', patches: [] }] } as const
  const choices = [{ value: 'cancel', label: { code: 'answer', value: 'cancel' } }] as const
  const facts = { signed: conversation.signed !== null }
  return { conversation: { ...conversation, asked }, replies: [{ code: 'cancel-asked', facts, choices }], wants: null }
}

export const cancel = (conversation: Conversation): Heard => ({
  conversation: { ...conversation, cancelled: true, asked: null },
  replies: [{ code: 'cancelled', facts: {} }],
  wants: { kind: 'cancel' },
})

/** What is said where it was asked whether the order shall be cancelled; null when it is no answer to that. */
export const answerCancel = (conversation: Conversation, intent: Intent, context: Context): Heard | null => {
  if (conversation.asked?.code !== 'cancel') return null
  if (intent.kind === 'yes' || intent.kind === 'cancel') return cancel(conversation)
  return intent.kind === 'no' ? proceed({ ...conversation, asked: null }, [{ code: 'kept-as-is', facts: {} }], context) : null
}
