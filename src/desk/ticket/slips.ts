import { priceWords } from '../../../templates/desk/price.ts'
import { ticketWords } from '../../../templates/ticket/words.ts'
import type { Shop } from '../../domain/shop/shop.ts'
import type { TicketFacts } from '../../domain/ticket/facts.ts'
import { composeCareCard, composePriceSlip } from '../../domain/ticket/slips.ts'
import type { Ticket } from '../../domain/ticket/ticket.ts'
import type { Work } from '../work-out.ts'

/** What the customer pays, on one page: every part of the price in words. */
export const priceSlip = (work: Work, facts: TicketFacts, shop: Shop): Ticket => {
  const { language } = facts
  const { money } = work.order
  const garment = (id: string) => shop.garments.find((one) => one.id === id)?.name[language] ?? id
  const lines = work.price.parts.map(({ code, what, quantity, unit, amount }) => ({
    text: priceWords[language][code](code === 'garment' ? garment(what ?? '') : (what ?? '')),
    quantity,
    unit,
    amount,
  }))
  return composePriceSlip(
    {
      ...facts,
      currency: work.price.currency,
      minorDigits: shop.prices.minorDigits,
      lines,
      total: work.price.total,
      money: money.state,
      paid: money.amount ?? null,
      reference: money.reference ?? null,
    },
    ticketWords[language],
  )
}

/** How to wear and wash what was made, on one page. */
export const careCard = (facts: TicketFacts): Ticket =>
  composeCareCard(
    { ...facts, colours: facts.garments.map(({ colour }) => colour), stones: facts.stones.length > 0 },
    ticketWords[facts.language],
  )
