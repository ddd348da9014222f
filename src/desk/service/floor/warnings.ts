import type { PressCheck } from '../../../ports/floor-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { wordsFor } from '../say/say-floor.ts'
import { correctionLines } from './correction-lines.ts'
import { stoppedBy } from './stopped.ts'

/** What is to be heeded of a ticket that is worked on: what stops it, and what the presses showed this morning. */
export const benchWarnings = (desk: Desk, life: TicketLife, checks: readonly PressCheck[]): readonly string[] => {
  if (life.order.state !== 'on-bench') return []
  const stopped = stoppedBy(desk, life)
  const first = stopped === '' ? [] : [wordsFor(desk).stopped(stopped)]
  return [...first, ...correctionLines(desk, ticketFrom(life.ticket.body).facts, checks)]
}
