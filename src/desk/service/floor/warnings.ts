import type { PressCheck } from '../../../ports/floor-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { wordsFor } from '../say/say-floor.ts'
import { correctionLines } from './correction-lines.ts'
import { stoppedBy } from './stopped.ts'

type Around = { readonly checks: readonly PressCheck[]; readonly changing: number | null }

/** What is to be heeded of a ticket that is worked on: what stops it, a change that may come, what the presses showed this morning. */
export const benchWarnings = (desk: Desk, life: TicketLife, { checks, changing }: Around): readonly string[] => {
  if (life.order.state !== 'on-bench') return []
  const words = wordsFor(desk)
  const stopped = stoppedBy(desk, life)
  return [
    ...(stopped === '' ? [] : [words.stopped(stopped)]),
    ...(changing === null || changing <= life.ticket.revision ? [] : [words.changing(changing)]),
    ...correctionLines(desk, ticketFrom(life.ticket.body).facts, checks),
  ]
}
