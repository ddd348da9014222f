import type { RosterFacts } from '../../../domain/ticket/facts.ts'
import type { Desk } from '../desk.ts'
import { wordsFor } from './say-floor.ts'

/** A player as the bench calls them: '#12 Alvarez M'. `quantity` garments of the line are meant. */
export const rowText = (desk: Desk, row: RosterFacts, quantity = 1): string =>
  wordsFor(desk).line({
    number: row.number === null ? '' : `#${row.number}`,
    name: row.name ?? '',
    size: row.size === 'later' ? '' : row.size,
    quantity,
  })
