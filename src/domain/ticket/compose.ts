import type { TicketFacts } from './facts.ts'
import { headSheet } from './head-sheet.ts'
import { lastSheet } from './last-sheet.ts'
import { type Scene, shortWhen } from './names.ts'
import { pickSheets } from './pick-sheet.ts'
import { rosterSheets } from './roster-sheets.ts'
import { sequenceSheets } from './sequence-sheet.ts'
import { stripSheets } from './strips.ts'
import type { Ticket } from './ticket.ts'
import type { TicketWords } from './words.ts'

/**
 * The ticket as data: its sheets in the order in which the shop works, every text finished. Lines, layers and garments that
 * the facts name but do not list are a bug and thrown.
 */
export const composeTicket = (facts: TicketFacts, words: TicketWords): Ticket => {
  const scene: Scene = { facts, words }
  const { promised } = facts.plan
  const running = [
    facts.ticket,
    words.head.revision(facts.revision),
    promised === null
      ? `${words.head.needed} ${shortWhen(scene, facts.needBy)}`
      : `${words.head.promised} ${shortWhen(scene, promised)}`,
    facts.team,
  ]
  return {
    title: words.head.title(facts.ticket, facts.team),
    language: words.language,
    paper: facts.show.paper,
    made: facts.now,
    running: running.join(' · '),
    foot: words.head.page,
    lacking: words.head.lacking,
    sheets: [
      headSheet(scene),
      ...pickSheets(scene),
      ...sequenceSheets(scene),
      ...rosterSheets(scene),
      lastSheet(scene),
      ...stripSheets(scene),
    ],
  }
}
