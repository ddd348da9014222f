import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Finding } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { wordsFor } from '../say/say-floor.ts'
import { whichGarment } from './garment-text.ts'
import { oneOf, rowText } from './row-text.ts'

const fieldOf = (facts: unknown, name: string): unknown =>
  typeof facts === 'object' && facts !== null && Object.hasOwn(facts, name) ? Reflect.get(facts, name) : undefined

const textOf = (facts: unknown, name: string): string => {
  const value = fieldOf(facts, name)
  return typeof value === 'string' || typeof value === 'number' ? String(value) : ''
}

const countedText = (desk: Desk, missing: string): string => (missing === '0' ? wordsFor(desk).allHere : `−${missing}`)

/** What was found, in the words of whoever reads the ticket; players by their number and name as the ticket has them. */
export const foundText = (desk: Desk, ticket: TicketFacts, { facts }: Finding): string => {
  const words = wordsFor(desk)
  const row = ticket.roster.find(({ line }) => String(line) === textOf(facts, 'line'))
  const seconds = fieldOf(facts, 'seconds')
  const reasons: { readonly [reason: string]: string } = words.reasons
  const complaints: { readonly [kind: string]: string } = words.complaints
  const missing = textOf(facts, 'missing')
  const parts = [
    row === undefined ? '' : rowText(desk, ticket, oneOf(row)),
    whichGarment(ticket, textOf(facts, 'garment')),
    textOf(facts, 'subject'),
    Array.isArray(seconds) ? `${seconds.join(', ')} s` : '',
    missing === '' ? '' : countedText(desk, missing),
    words.results[textOf(facts, 'result')] ?? '',
    reasons[textOf(facts, 'reason')] ?? '',
    complaints[textOf(facts, 'kind')] ?? '',
    textOf(facts, 'certificate'),
    textOf(facts, 'bin'),
    textOf(facts, 'label'),
    textOf(facts, 'faults'),
    textOf(facts, 'note'),
  ]
  return parts.filter((part) => part !== '').join(' · ')
}
