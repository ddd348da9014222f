import type { ShopStore } from '../../../ports/store.ts'
import { orderFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'

/** How a job is called in the shop: its ticket and team; the order's id while there is no ticket, or its people are forgotten. */
export const jobName = async (shop: ShopStore, orderId: string): Promise<string> => {
  const order = await shop.orders.read(orderId)
  const revision = order === null ? null : await shop.orders.revision(orderId, order.revision)
  const ticket = (await shop.tickets.ofOrder(orderId)).find(({ state }) => state === 'open')
  const document = revision?.document ?? null
  const team = document === null ? orderId : orderFrom(document).team
  return ticket === undefined ? team : `${ticketName(ticket.number)} ${team}`
}

/** The names of several jobs. */
export const jobNames = async (shop: ShopStore, orderIds: readonly string[]): Promise<ReadonlyMap<string, string>> =>
  new Map(await Promise.all(orderIds.map(async (id) => [id, await jobName(shop, id)] as const)))
