import { type Found, gateStates } from '../../../domain/press/gate-state.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Finding, StoredTicket } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records.ts'
import type { TicketLife } from '../ticket-life.ts'

/** Maker: findings at gates were written by this program with these fields. */
const foundFrom = ({ code, facts, by, at }: Finding): Found => ({
  ...(typeof facts === 'object' && facts !== null ? facts : {}),
  code,
  by,
  at,
})

const hasBody = (ticket: StoredTicket): boolean => typeof ticket.body === 'object' && ticket.body !== null

/** A ticket with its order and what was done with it; null when there is no such ticket in this shop, or its people are forgotten. */
export const readLife = async (desk: Desk, shop: ShopStore, ticketId: string): Promise<TicketLife | null> => {
  const ticket = await shop.tickets.read(ticketId)
  const order = ticket === null ? null : await shop.orders.read(ticket.orderId)
  if (ticket === null || order === null || !hasBody(ticket)) return null
  const { facts } = ticketFrom(ticket.body)
  const findings = await shop.tickets.findings(ticketId)
  const remakes = await shop.floor.remakesOf(ticket.orderId)
  return {
    ticket,
    order,
    findings,
    ticks: await shop.tickets.ticks(ticketId),
    gates: gateStates(facts.gates, findings.map(foundFrom), desk.clock.now()),
    changedPieces: facts.throwAway.length > 0,
    openRemakes: remakes.filter(({ doneAt }) => doneAt === null).length,
  }
}
