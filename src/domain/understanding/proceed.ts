import { nextQuestion } from './ask.ts'
import { changesBetween } from './changes.ts'
import type { Conversation, Want } from './conversation.ts'
import { type Composed, type Context, documentOf } from './document.ts'
import type { Reply, Tidy } from './replies.ts'
import { type Turn, takeTurn } from './turn.ts'
import type { Understood } from './understood.ts'

export type Heard = { readonly conversation: Conversation; readonly replies: readonly Reply[]; readonly wants: Want | null }

export const tidyOf = (conversation: Conversation, composed: Composed): Tidy => ({
  order: composed.order,
  day: conversation.draft.day ?? null,
  assumed: [...composed.assumed],
  taken: conversation.facts.filter((fact) => fact.how === 'earlier').map((fact) => fact.path),
  later: Object.keys(conversation.draft.later),
})

const nextRevision = (conversation: Conversation): number =>
  Math.max(conversation.signed?.revision ?? 0, conversation.shown?.revision ?? 0, conversation.sent?.revision ?? 0) + 1

const askPerson = [{ action: 'person', label: { code: 'button', action: 'person', revision: null } }] as const

/** Puts the next question, or sends the complete order to be worked out; what was shown already is not sent again. */
export const proceed = (conversation: Conversation, replies: readonly Reply[], context: Context): Heard => {
  const composed = documentOf(conversation, context)
  const question = nextQuestion(conversation, composed, context)
  if (question !== null) {
    const { code, path, readings } = question
    const put = (conversation.put[code] ?? 0) + 1
    const reply: Reply = put > 2 ? { ...question.reply, actions: askPerson } : question.reply
    return {
      conversation: { ...conversation, asked: { code, path, readings }, put: { ...conversation.put, [code]: put } },
      replies: [...replies, reply],
      wants: null,
    }
  }
  const { complete: order, hash } = composed
  if (order === null || hash === null) return { conversation, replies, wants: { kind: 'person', about: 'document' } }
  if (conversation.shown?.hash === hash || conversation.sent?.hash === hash)
    return { conversation: { ...conversation, asked: null }, replies, wants: null }
  const revision = nextRevision(conversation)
  return {
    conversation: { ...conversation, asked: null, sent: { revision, hash } },
    replies: [...replies, { code: 'working-it-out', facts: { revision } }],
    wants: { kind: 'quote', order, revision, hash },
  }
}

const rosterReply = ({ composed }: Turn, pasted: number): readonly Reply[] => {
  if (pasted === 0) return []
  const garment = composed.order.roster[0]?.garment
  const rows = composed.order.roster.filter((row) => row.garment === garment)
  return [
    {
      code: 'roster-read',
      facts: {
        rows: pasted,
        withoutName: rows.filter((row) => row.name === undefined).length,
        withoutNumber: rows.filter((row) => row.number === undefined).length,
        withoutSize: rows.filter((row) => row.size === undefined).length,
      },
    },
  ]
}

/** Several new facts are read back as a list; a change of what was known is named; one small fact is only noted. */
const readBack = (before: Composed, turn: Turn, understood: Understood): readonly Reply[] => {
  if (!turn.changed) return []
  const changes = changesBetween(before.order, turn.composed.order, before.assumed)
  const corrected = changes.length > 0 ? [{ code: 'changed', facts: { changes } } as const] : []
  const many = understood.patches.length > 2 || understood.pasted > 0
  if (many && turn.composed.missing.length > 0) {
    return [
      ...corrected,
      ...rosterReply(turn, understood.pasted),
      { code: 'understood', facts: tidyOf(turn.conversation, turn.composed) },
    ]
  }
  return corrected.length > 0 ? corrected : [...rosterReply(turn, understood.pasted)]
}

const heads = ['team', 'sport', 'use', 'needBy', 'gameDay', 'handOver'] as const

/** Whether something of the whole order was said that nobody had said so far: a wrong day is seen best while it is being spoken of. */
const hasNewHead = (before: Tidy, now: Tidy): boolean => {
  const isSaid = ({ order, assumed }: Tidy, head: (typeof heads)[number]): boolean =>
    order[head] !== undefined && !assumed.includes(`/${head}`)
  return (before.day === null && now.day !== null) || heads.some((head) => isSaid(now, head) && !isSaid(before, head))
}

/** Who said something else than was asked hears that it was taken before the same question is put again, and a new day or team is said back. */
const noting = (
  { asked }: Conversation,
  before: Tidy,
  { now, heard }: { readonly now: Tidy; readonly heard: Heard },
): readonly Reply[] => {
  const { conversation, replies } = heard
  const again = asked !== null && conversation.asked?.code === asked.code && replies.length === 1
  const isReadBack = replies.some(({ code }) => code === 'understood')
  return again || (!isReadBack && hasNewHead(before, now)) ? [{ code: 'noted', facts: { before, now } }, ...replies] : replies
}

type Closing = { readonly understood: Understood; readonly quote: string; readonly first: readonly Reply[] }

const wantOf = ({ intent }: Understood): Want | null => (intent.kind === 'earlier-order' ? intent : null)

/** Takes what was understood into the order, reads it back, and goes on. */
export const closeTurn = (conversation: Conversation, { understood, quote, first }: Closing, context: Context): Heard => {
  const before = documentOf(conversation, context)
  const { patches, open } = understood
  const asks = understood.intent.kind === 'earlier-order' ? { earlier: understood.intent.asks } : {}
  const turn = takeTurn({ ...conversation, ...asks }, { patches, open, how: 'said', quote }, context)
  const silent =
    !turn.changed && open.length === 0 && first.length === 0 && understood.intent.kind === 'order' && understood.signing === null
  const unheard: readonly Reply[] = silent ? [{ code: 'not-understood', facts: {} }] : []
  const notSigned: readonly Reply[] =
    understood.signing !== null && turn.changed && conversation.shown !== null ? [{ code: 'not-signed-change', facts: {} }] : []
  const replies = [...first, ...unheard, ...readBack(before, turn, understood), ...notSigned]
  const asksForEarlier = understood.intent.kind === 'earlier-order' && patches.length < 2 && open.length === 0
  const heard = asksForEarlier
    ? { conversation: turn.conversation, replies, wants: null }
    : proceed(turn.conversation, replies, context)
  if (!turn.changed) return { ...heard, wants: wantOf(understood) ?? heard.wants }
  const now = tidyOf(turn.conversation, turn.composed)
  const noted = noting(conversation, tidyOf(conversation, before), { now, heard })
  return { ...heard, replies: noted, wants: wantOf(understood) ?? heard.wants }
}
