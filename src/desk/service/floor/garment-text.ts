import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { Order } from '../../../domain/order/order.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { garmentName } from '../../../domain/ticket/names.ts'
import type { Language } from '../../../domain/units/language.ts'
import { garmentCalled } from '../../say-for-order.ts'
import type { Deed } from './deed.ts'

/** A garment as the ticket's paper names it, with its colour. */
export const garmentText = (facts: TicketFacts, id: string): string =>
  facts.garments.some((garment) => garment.id === id) ? garmentName({ facts, words: ticketWords[facts.language] }, id) : id

/** The same as its customer calls it, in their language; one that they bring is theirs. */
export const customersGarment = (
  { desk, facts }: Pick<Deed, 'desk' | 'facts'>,
  order: Order | null,
  { id, language }: { readonly id: string; readonly language: Language },
): string => {
  const called = order === null ? null : garmentCalled({ ...order, language }, desk.workshop.shop, id)
  return called ?? (language === facts.language ? garmentText(facts, id) : floorWords[language].theirGarments)
}

/** The same where an order has more than one kind; of a single kind nobody needs to be told which. */
export const whichGarment = (facts: TicketFacts, id: string | null): string =>
  id === null || facts.garments.length < 2 ? '' : garmentText(facts, id)
