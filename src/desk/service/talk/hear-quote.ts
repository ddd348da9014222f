import type { Problem, Result } from '../../../domain/result/result.ts'
import type { Conversation, Quote } from '../../../domain/understanding/conversation.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { takeTurn } from './hear-customer.ts'

/** Shows a finished quote in its conversation; the step's name is the turn's id, so a repeated step shows it once. */
export const hearQuote = (
  desk: Desk,
  shop: ShopStore,
  shown: { readonly conversation: string; readonly step: OrderStep<'quote'>; readonly hash: string; readonly quote: Quote },
): Promise<Result<Conversation, Problem>> => {
  const { orderId, revision } = shown.step
  const said = { id: `quote-${orderId}-${revision}`, kind: 'quoted', revision, hash: shown.hash, quote: shown.quote } as const
  return takeTurn(desk, shop, { conversationId: shown.conversation, said, words: null })
}
