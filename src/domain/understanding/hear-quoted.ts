import { changesBetween } from './changes.ts'
import type { Conversation, Said } from './conversation.ts'
import { type Composed, type Context, documentOf } from './document.ts'
import { type Heard, proceed, tidyOf } from './proceed.ts'
import type { Since } from './replies.ts'

type Quoted = Extract<Said, { kind: 'quoted' }>

/** What is different from the proof that was shown before; null where none was, or nothing is. */
const changedSince = (conversation: Conversation, composed: Composed, context: Context): Since | null => {
  const { read } = conversation
  if (read === undefined || read === null) return null
  const before = documentOf({ ...conversation, draft: read.draft }, context)
  const changes = changesBetween(before.order, composed.order, before.assumed)
  return changes.length === 0 ? null : { revision: read.revision, changes }
}

/** Whether a newer revision is on its way or was shown already: then nothing needs to be said of an older one. */
const isOvertaken = ({ sent, shown }: Conversation, revision: number): boolean =>
  Math.max(sent?.revision ?? 0, shown?.revision ?? 0) > revision

/** What was sent is no longer the order: a question that stands goes first, else the new one is worked out. */
const outdated = (conversation: Conversation, context: Context): Heard => {
  const unsent = { ...conversation, sent: null }
  if (conversation.asked !== null) return { conversation: unsent, replies: [], wants: null }
  return proceed(unsent, [{ code: 'proof-outdated', facts: {} }], context)
}

/** The desk has worked a revision out: shown only when the order is still the one that was sent. */
export const hearQuote = (conversation: Conversation, { revision, hash, quote }: Quoted, context: Context): Heard => {
  if (isOvertaken(conversation, revision)) return { conversation, replies: [], wants: null }
  const composed = documentOf(conversation, context)
  if (composed.hash !== hash) return outdated(conversation, context)
  const { problems } = quote
  const others = [
    { action: 'undo', label: { code: 'button', action: 'undo', revision: null } },
    { action: 'person', label: { code: 'button', action: 'person', revision: null } },
  ] as const
  if (problems.some((problem) => problem.severity === 'stop')) {
    const replies = [{ code: 'cannot-be-made', facts: { revision }, problems, actions: others }] as const
    return { conversation: { ...conversation, shown: null, asked: null }, replies, wants: null }
  }
  const actions = [
    { action: 'sign-off', label: { code: 'button', action: 'sign-off', revision }, revision, hash },
    ...others,
  ] as const
  const facts = {
    ...tidyOf(conversation, composed),
    revision,
    price: quote.price,
    promise: quote.promise,
    late: quote.late ?? [],
    since: changedSince(conversation, composed, context),
  }
  const picture = quote.picture === null ? {} : { picture: quote.picture }
  const priced = quote.price?.total ?? null
  return {
    conversation: {
      ...conversation,
      shown: { revision, hash },
      read: { revision, draft: conversation.draft },
      priced,
      sent: null,
      asked: null,
    },
    replies: [{ code: 'proof', facts, problems, actions, ...picture }],
    wants: null,
  }
}
