import type { Conversation, Said } from './conversation.ts'
import { type Context, documentOf } from './document.ts'
import { applyPatches, type Patch } from './patch.ts'
import type { Heard } from './proceed.ts'
import type { Reply } from './replies.ts'

const reply = (conversation: Conversation, replies: readonly Reply[]): Heard => ({ conversation, replies, wants: null })

/** Asks the desk for the price of another make of what was shown; where nothing is shown yet, the price comes with the proof. */
export const askVariant = (
  conversation: Conversation,
  { patches, quote }: { readonly patches: readonly Patch[]; readonly quote: string },
  context: Context,
): Heard => {
  const { shown } = conversation
  const now = documentOf(conversation, context)
  if (shown === null || now.hash !== shown.hash) return reply(conversation, [{ code: 'price-with-proof', facts: {} }])
  const other = documentOf({ ...conversation, draft: applyPatches(conversation.draft, patches) }, context)
  const total = conversation.priced ?? null
  if (other.complete === null || other.hash === shown.hash) return reply(conversation, [{ code: 'price-now', facts: { total } }])
  const number = (conversation.variant?.number ?? 0) + 1
  return {
    conversation: { ...conversation, variant: { number, patches, quote, order: other.complete }, asked: null },
    replies: [{ code: 'variant-asked', facts: {} }],
    wants: { kind: 'variant', revision: shown.revision },
  }
}

type Priced = Extract<Said, { kind: 'priced' }>

/** The price of the other make beside the present one, with the choice; the draft is as it was until one is chosen. */
export const hearPriced = (conversation: Conversation, { number, total, promised, problems }: Priced): Heard => {
  const { variant } = conversation
  if (variant?.number !== number) return reply(conversation, [])
  if (total === null) return reply(conversation, [{ code: 'variant-refused', facts: { quote: variant.quote }, problems }])
  const readings = [
    { value: 'take-variant', kind: 'word', patches: variant.patches },
    { value: 'keep-order', kind: 'word', patches: [] },
  ] as const
  const choices = readings.map(({ value }) => ({ value, label: { code: 'answer', value } as const }))
  const facts = { quote: variant.quote, total, present: conversation.priced ?? null, promised }
  return reply({ ...conversation, asked: { code: 'variant', path: '', readings } }, [{ code: 'variant-price', facts, choices }])
}
