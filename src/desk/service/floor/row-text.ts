import type { RosterFacts, TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Desk } from '../desk.ts'
import { wordsFor } from '../say/say-floor.ts'
import { whichGarment } from './garment-text.ts'

/** A player as the bench calls them: '#12 Alvarez M', and which garment where one player has several. */
export const rowText = (desk: Desk, facts: TicketFacts, row: RosterFacts): string => {
  const player = wordsFor(desk).line({
    number: row.number === null ? '' : `#${row.number}`,
    name: row.name ?? '',
    size: row.size === 'later' ? '' : row.size,
    quantity: row.quantity,
  })
  return [player, whichGarment(facts, row.garment)].filter((part) => part !== '').join(' · ')
}

/** One garment of a line. */
export const oneOf = (row: RosterFacts): RosterFacts => ({ ...row, quantity: 1 })
