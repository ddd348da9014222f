import { type Found, gateStates } from '../../../domain/press/gate-state.ts'
import { workSteps } from '../../../domain/ticket/work-steps.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Finding, StoredTicket } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import type { TicketLife } from '../records/ticket-life.ts'

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
  const record = await shop.tickets.record(ticketId)
  if (record === null || !hasBody(record.ticket)) return null
  const { facts } = ticketFrom(record.ticket.body)
  return {
    ...record,
    roster: facts.roster,
    steps: workSteps(facts),
    gates: gateStates(facts.gates, record.findings.map(foundFrom), desk.clock.now()),
    changedPieces: facts.throwAway.length > 0,
  }
}
