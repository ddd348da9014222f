import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { conversationFrom } from '../records/records.ts'
import { deskWordsFor, wordsFor } from '../say/say-floor.ts'
import { earlierOf } from './earlier-orders.ts'
import { takeTurn } from './hear-customer.ts'

export type Release = {
  readonly orderId: string
  readonly revision: string
  readonly conversationId: string
  readonly by: Member
}

/**
 * The owner, who knows who asks, hands an earlier order's list and wishes to the conversation that asked for it. Answers with a
 * word for whoever pressed, null when it was done.
 */
export const releaseEarlier = async (
  desk: Desk,
  shop: ShopStore,
  { orderId, revision, conversationId, by }: Release,
): Promise<Result<string | null, Problem>> => {
  if (by.role !== 'owner') return ok(wordsFor(desk).ownerOnly)
  const stored = await shop.conversations.read(conversationId)
  const asks = stored === null ? null : (conversationFrom(stored.state).earlier ?? null)
  const found = asks === null ? null : await earlierOf(shop, { orderId, revision: Number(revision) }, asks)
  if (found === null) return ok(deskWordsFor(desk).notOpen)
  const said = { id: `earlier-${orderId}-${revision}`, kind: 'earlier', ...found } as const
  const taken = await takeTurn(desk, shop, { conversationId, said, words: null })
  if (!taken.ok) return taken
  const at = desk.clock.now()
  await shop.events.add({
    orderId,
    ticketId: null,
    by: by.id,
    at,
    code: 'earlier-order-released',
    facts: { revision: found.from.revision },
  })
  return ok(null)
}
