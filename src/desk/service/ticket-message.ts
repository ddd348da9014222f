import { deskWords } from '../../../templates/desk/words.ts'
import { writeLocal } from '../../domain/calendar/local-time.ts'
import { showFor } from '../../domain/shop/show.ts'
import type { Action, Block, Message } from '../../ports/chat.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { Finding } from '../../ports/work-records.ts'
import { type Desk, shopChannel } from './desk.ts'
import { ticketFrom } from './records.ts'
import { messageWith } from './say-message.ts'
import { isTicketAct, openActs, type TicketAct, type TicketLife } from './ticket-life.ts'
import { ticketName } from './ticket-names.ts'

const weights: { readonly [Act in TicketAct]: Action['weight'] } = {
  take: 'main',
  'hand-on': 'plain',
  start: 'main',
  checked: 'main',
  bagged: 'main',
  collected: 'main',
}

const doneLine = (desk: Desk, finding: Finding): readonly Block[] => {
  if (!isTicketAct(finding.code)) return []
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const hour = showFor(desk.workshop.shop, language).hour(writeLocal(desk.zone, finding.at).slice(11))
  return [{ kind: 'text', text: deskWords[language].done[finding.code](finding.by, hour), tone: 'good' }]
}

/** What stands in the bench channel: whose, when, how many, the gates, the paper, what was done with it and what can be. */
const ticketMessage = (desk: Desk, life: TicketLife, bytes: number): Message => {
  const { ticket, findings } = life
  const { facts, pdf, papers = [] } = ticketFrom(ticket.body)
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
      ...findings.flatMap((finding) => doneLine(desk, finding)),
    ],
    file: { file: pdf, name: `${name}-${ticket.revision}.pdf`, mime: 'application/pdf', bytes },
    papers,
    actions: openActs(life).map((act) => ({
      id: `t:${ticket.ticketId}:${act}:${ticket.revision}`,
      label: words.acts[act],
      weight: weights[act],
    })),
  })
}

/** Posts the ticket's message, or edits it in place to what is true now. */
export const putTicketMessage = async (
  desk: Desk,
  shop: ShopStore,
  life: TicketLife,
): Promise<'posted' | 'edited' | 'already-there'> => {
  const channel = shopChannel('bench')
  const file = await shop.files.read(channel, ticketFrom(life.ticket.body).pdf)
  const body = ticketMessage(desk, life, file?.bytes.length ?? 0)
  const { outcome } = await shop.messages.put({ channel, nonce: life.ticket.ticketId, by: 'bot', body })
  await shop.tell('channel', channel)
  return outcome
}
