import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { readLife } from './read-life.ts'

/** Whether nobody goes on with an order: it is on hold, or what was found at a gate of its ticket shuts this revision. */
export const isStopped = async (desk: Desk, shop: ShopStore, order: StoredOrder): Promise<boolean> => {
  if (order.hold !== null) return true
  if (order.state !== 'on-bench') return false
  const open = (await shop.tickets.ofOrder(order.orderId)).find(({ state }) => state === 'open')
  const life = open === undefined ? null : await readLife(desk, shop, open.ticketId)
  return life?.gates.some(({ is }) => is === 'shut') ?? false
}
