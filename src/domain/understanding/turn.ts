import { canonical } from './content-hash.ts'
import type { Conversation, How, Open, Past } from './conversation.ts'
import { type Composed, type Context, documentOf } from './document.ts'
import type { Draft } from './draft.ts'
import { factsAfter } from './facts.ts'
import { applyPatches, type Patch } from './patch.ts'

const mostPast = 20
const mostSeen = 200

/** A conversation after a change, with the document it amounts to. */
export type Turn = { readonly conversation: Conversation; readonly composed: Composed; readonly changed: boolean }

type Change = { readonly patches: readonly Patch[]; readonly open: readonly Open[]; readonly how: How; readonly quote: string }

const samePath = (a: Patch, b: Patch): boolean =>
  a.path.length === b.path.length && a.path.every((step, index) => step === b.path[index])

/** A question is settled when anything that one of its answers would set has been set. */
const stillOpen = (open: Open, patches: readonly Patch[]): boolean =>
  !(open.about === 'sizes-again' && patches.some(({ path: [root, , field] }) => root === 'rows' && field === 'size')) &&
  !open.readings.some((reading) => reading.patches.some((mine) => patches.some((patch) => samePath(mine, patch))))

/** A question without what its answers would do to lines that are gone; null when nothing of it is left. */
const withoutGone = (open: Open, { rows }: Draft): Open | null => {
  const isGone = ({ path: [root, key = ''] }: Patch): boolean => root === 'rows' && rows[key] === undefined
  const isFresh = open.about === 'numbers-or-pieces'
  if (isFresh || !open.readings.some((reading) => reading.patches.some(isGone))) return open
  const readings = open.readings.flatMap((reading) => {
    const patches = reading.patches.filter((patch) => !isGone(patch))
    return patches.length === 0 && reading.patches.length > 0 ? [] : [{ ...reading, patches }]
  })
  return readings.length === 0 ? null : { ...open, readings }
}

const remember = ({ draft, facts, open }: Conversation): Past => ({ draft, facts, open })

/** What was said is put into the draft; facts, open questions and the way back follow. Nothing that was shown is touched. */
export const takeTurn = (conversation: Conversation, change: Change, context: Context): Turn => {
  const draft = applyPatches(conversation.draft, change.patches)
  const before = documentOf(conversation, context)
  const changed = canonical(draft) !== canonical(conversation.draft)
  const kept = conversation.open.flatMap((open) => (stillOpen(open, change.patches) ? (withoutGone(open, draft) ?? []) : []))
  const open = [...kept.filter((old) => !change.open.some((fresh) => fresh.about === old.about)), ...change.open]
  if (!changed) return { conversation: { ...conversation, open }, composed: before, changed: false }
  const composed = documentOf({ ...conversation, draft }, context)
  const documents = { before: before.order, after: composed.order, assumed: composed.assumed }
  const next = {
    ...conversation,
    draft,
    open,
    facts: factsAfter(conversation.facts, documents, change),
    past: [...conversation.past, remember(conversation)].slice(-mostPast),
  }
  return { conversation: next, composed, changed: true }
}

/** The conversation as it was before its last change, or null when there was none. */
export const takeBack = (conversation: Conversation): Conversation | null => {
  const past = conversation.past.at(-1)
  if (past === undefined) return null
  return { ...conversation, ...past, past: conversation.past.slice(0, -1), asked: null }
}

export const markSeen = (conversation: Conversation, id: string): Conversation => ({
  ...conversation,
  seen: [...conversation.seen, id].slice(-mostSeen),
})
