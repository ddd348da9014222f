import type { Conversation, Earlier } from './conversation.ts'
import type { Context } from './document.ts'
import { type Heard, proceed, tidyOf } from './proceed.ts'
import { askedAgain, takenOver } from './take-over.ts'
import { takeTurn } from './turn.ts'
import type { Understood } from './understood.ts'

/** An earlier order that is asked for in two messages is asked for once: "same as last year", then whose page it was. */
export const askedOnce = (understood: Understood, { earlier }: Conversation): Understood => {
  if (understood.intent.kind !== 'earlier-order' || earlier === null || earlier === undefined) return understood
  const { asks } = understood.intent
  const without = asks.without.length > 0 ? asks.without : earlier.without
  const text = `${earlier.text}\n${asks.text}`.slice(0, 600)
  const once = { team: asks.team ?? earlier.team, single: asks.single || earlier.single, without, text }
  return { ...understood, intent: { kind: 'earlier-order', asks: once } }
}

/** The list and the wishes of an earlier order come into this one, all of them marked; what may have changed since is asked. */
export const hearEarlier = (conversation: Conversation, earlier: Earlier, context: Context): Heard => {
  if (conversation.signed !== null || conversation.draft.from !== undefined) return { conversation, replies: [], wants: null }
  const patches = takenOver(conversation, earlier)
  const turn = takeTurn(conversation, { patches, open: askedAgain(earlier), how: 'earlier', quote: earlier.text }, context)
  const { order } = turn.composed
  const facts = { team: order.team ?? '', lines: order.roster.length, single: earlier.single }
  return proceed(
    { ...turn.conversation, earlier: null },
    [
      { code: 'earlier-order-taken', facts },
      { code: 'understood', facts: tidyOf(turn.conversation, turn.composed) },
    ],
    context,
  )
}
