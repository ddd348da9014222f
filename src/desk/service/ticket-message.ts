import { deskWords } from '../../../templates/desk/words.ts'
import { showFor } from '../../domain/shop/show.ts'
import type { Action, Message } from '../../ports/chat.ts'
import type { StoredTicket } from '../../ports/work-records.ts'
import type { Desk } from './desk.ts'
import { ticketFrom } from './records.ts'
import { messageWith } from './say-message.ts'
import { ticketName } from './ticket-names.ts'

const action = (ticket: StoredTicket, name: string, label: string): Action => ({
  id: `t:${ticket.ticketId}:${name}:${ticket.revision}`,
  label,
  weight: 'plain',
})

/** What stands in the bench channel: whose, when, how many, the gates, and the paper itself. */
export const ticketMessage = (desk: Desk, ticket: StoredTicket, bytes: number): Message => {
  const { facts, pdf } = ticketFrom(ticket.body)
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const words = deskWords[language]
  const show = showFor(desk.workshop.shop, language)
  const name = ticketName(ticket.number)
  const pieces = facts.roster.reduce((sum, row) => sum + row.quantity, 0)
  return messageWith(language, {
    blocks: [
      { kind: 'text', text: words.ticketFor(`${name} r${ticket.revision}`, facts.team), tone: 'plain' },
      { kind: 'list', title: words.needed(show.moment(facts.needBy)), items: [words.pieces(pieces)] },
      { kind: 'list', title: words.gates, items: [...new Set(facts.gates.map((gate) => words.gateNames[gate.code]))] },
    ],
    file: { file: pdf, name: `${name}-${ticket.revision}.pdf`, mime: 'application/pdf', bytes },
    actions: ticket.state === 'open' ? [action(ticket, 'take', words.take)] : [],
  })
}
