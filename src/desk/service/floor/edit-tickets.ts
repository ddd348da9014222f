import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { readLife } from './read-life.ts'
import { putTicketMessage } from './ticket-message.ts'

/** The message of an order's ticket says what changed around it: its promise was moved. */
export const editTicketsOf = async (desk: Desk, shop: ShopStore, orderId: string): Promise<void> => {
  for (const { ticketId, state } of await shop.tickets.ofOrder(orderId)) {
    const life = state === 'open' ? await readLife(desk, shop, ticketId) : null
    if (life !== null && life.order.state === 'on-bench') await putTicketMessage(desk, shop, life)
  }
}
