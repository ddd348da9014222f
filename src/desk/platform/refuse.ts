import type { Incoming } from '../../ports/chat.ts'
import type { Outcome } from '../../ports/platform-desk.ts'
import type { Desk } from '../service/desk.ts'

export const done: Outcome = { outcome: 'done', said: null, shown: null }
export const known: Outcome = { outcome: 'known', said: null, shown: null }

/** What was wanted, by its id: never what somebody wrote. */
export const whatOf = (incoming: Incoming): string => {
  switch (incoming.kind) {
    case 'said':
      return 'said'
    case 'pressed':
      return incoming.action
    case 'chose':
      return incoming.choice
    case 'filled':
      return incoming.form
  }
}

/** It is written down who wanted what; the adapter finds the polite words. */
export const refuse = async (
  desk: Desk,
  by: { readonly id: string; readonly role: 'owner' | 'staff' | 'customer' | null },
  incoming: Incoming,
): Promise<Outcome> => {
  const facts = { what: whatOf(incoming).slice(0, 100), role: by.role }
  await desk.store
    .shop(desk.shopId)
    .events.add({ code: 'refused', orderId: null, ticketId: null, by: by.id, at: desk.clock.now(), facts })
  return { outcome: 'refused', said: null, shown: null }
}
