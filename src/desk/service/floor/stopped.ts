import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { gateNames } from './gate-name.ts'
import { readLife } from './read-life.ts'

/** The gates that shut a ticket on the bench, by their names; empty where none does. */
export const stoppedBy = (desk: Desk, { order, ticket, gates }: TicketLife): string =>
  order.state === 'on-bench'
    ? gateNames(
        desk,
        ticketFrom(ticket.body).facts,
        gates.filter(({ is }) => is === 'shut').map(({ gate }) => gate),
      )
    : ''

/** Whether nobody goes on with an order: it is on hold, or what was found at a gate of its ticket shuts this revision. */
export const isStopped = async (desk: Desk, shop: ShopStore, order: StoredOrder): Promise<boolean> => {
  if (order.hold !== null) return true
  if (order.state !== 'on-bench') return false
  const open = (await shop.tickets.ofOrder(order.orderId)).find(({ state }) => state === 'open')
  const life = open === undefined ? null : await readLife(desk, shop, open.ticketId)
  return life?.gates.some(({ is }) => is === 'shut') ?? false
}
