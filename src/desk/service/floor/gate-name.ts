import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { Gate } from '../../../domain/press/press-plan.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { gateSubject } from '../../../domain/ticket/gates.ts'
import type { Desk } from '../desk.ts'
import { deskWordsFor, shopLanguage } from '../say/say-floor.ts'
import { whichGarment } from './garment-text.ts'

/** A gate with what it is about: the lot of a certificate or coupon, the garment of the others. */
export const gateName = (desk: Desk, facts: TicketFacts, gate: Gate): string => {
  const { code, garment } = gate
  const isOfLot = code === 'certificate' || code === 'coupon'
  const about = isOfLot ? gateSubject(facts, ticketWords[shopLanguage(desk)], gate) : whichGarment(facts, garment)
  return `${deskWordsFor(desk).gateNames[code]}${about === '' ? '' : ` (${about})`}`
}

/** Several gates in one line, each once. */
export const gateNames = (desk: Desk, facts: TicketFacts, gates: readonly Gate[]): string =>
  [...new Set(gates.map((gate) => gateName(desk, facts, gate)))].join(', ')
