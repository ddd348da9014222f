import type { Conversation } from './conversation.ts'
import { type Composed, type Context, documentOf } from './document.ts'
import type { Patch } from './patch.ts'
import { type Heard, proceed } from './proceed.ts'
import type { Reply } from './replies.ts'
import type { Understood } from './understood.ts'

const signed = (conversation: Conversation, composed: Composed): Heard | null => {
  const { shown } = conversation
  const { complete: order, hash } = composed
  if (shown === null || order === null || hash === null || hash !== shown.hash) return null
  return {
    conversation: { ...conversation, signed: shown, asked: null },
    replies: [{ code: 'signed', facts: { revision: shown.revision } }],
    wants: { kind: 'sign-off', order, ...shown },
  }
}

const isSigned = (conversation: Conversation, composed: Composed): Heard | null =>
  conversation.signed !== null && conversation.signed.hash === composed.hash
    ? { conversation, replies: [{ code: 'already-signed', facts: { revision: conversation.signed.revision } }], wants: null }
    : null

const outdated: Reply = { code: 'proof-outdated', facts: {} }

type Pressed = { readonly revision?: number; readonly hash?: string }

/** The button signs the revision it names, if that is the one shown last and the order is still the same. */
export const signPressed = (conversation: Conversation, pressed: Pressed, context: Context): Heard => {
  const composed = documentOf(conversation, context)
  const already = isSigned(conversation, composed)
  if (already !== null) return already
  const { shown } = conversation
  const named = pressed.revision === shown?.revision && (pressed.hash === undefined || pressed.hash === shown?.hash)
  const done = named ? signed(conversation, composed) : null
  return done ?? proceed(conversation, [shown === null ? { code: 'not-signed-nothing-shown', facts: {} } : outdated], context)
}

const sure = (conversation: Conversation): Heard => {
  const { shown } = conversation
  if (shown === null) return { conversation, replies: [], wants: null }
  const { revision, hash } = shown
  const actions = [{ action: 'sign-off', label: { code: 'button', action: 'sign-off', revision }, revision, hash }] as const
  return { conversation, replies: [{ code: 'not-signed-unclear', facts: { revision }, actions }], wants: null }
}

/** The name under an approval is a signature and changes nothing. */
const isSignature = (patch: Patch, { signing }: Understood): boolean => signing === 'clear' && patch.path[0] === 'orders'

/**
 * Words that sign: only clear ones, with no change, no question and no open reading in the same breath, for the revision shown
 * last. Null when the message goes on as a change.
 */
export const signSaid = (conversation: Conversation, understood: Understood, context: Context): Heard | null => {
  const changes = understood.patches.filter((patch) => !isSignature(patch, understood))
  if (changes.length > 0 || understood.open.length > 0) return null
  const composed = documentOf(conversation, context)
  const already = isSigned(conversation, composed)
  if (already !== null) return already
  const { shown } = conversation
  if (shown === null || composed.hash !== shown.hash) {
    return proceed(conversation, [shown === null ? { code: 'not-signed-nothing-shown', facts: {} } : outdated], context)
  }
  const names = understood.revision === null || understood.revision === shown.revision
  if (understood.signing !== 'clear' || understood.asks || !names) return sure(conversation)
  return signed(conversation, composed)
}
