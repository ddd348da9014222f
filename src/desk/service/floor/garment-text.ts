import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { garmentName } from '../../../domain/ticket/names.ts'

/** A garment as the ticket's paper names it, with its colour. */
export const garmentText = (facts: TicketFacts, id: string): string =>
  facts.garments.some((garment) => garment.id === id) ? garmentName({ facts, words: ticketWords[facts.language] }, id) : id

/** The same where an order has more than one kind; of a single kind nobody needs to be told which. */
export const whichGarment = (facts: TicketFacts, id: string | null): string =>
  id === null || facts.garments.length < 2 ? '' : garmentText(facts, id)
