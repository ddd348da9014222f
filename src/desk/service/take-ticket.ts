import { deskWords } from '../../../templates/desk/words.ts'
import { writeLocal } from '../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import { showFor } from '../../domain/shop/show.ts'
import type { Minutes } from '../../domain/units/units.ts'
import type { Message } from '../../ports/chat.ts'
import type { Member } from '../../ports/counter-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import { type Desk, shopChannel } from './desk.ts'
import { ticketMessage } from './ticket-message.ts'

export type Taken = { readonly ticketId: string; readonly by: Member }

const withTaker = (message: Message, text: string): Message => ({
  ...message,
  blocks: [...message.blocks, { kind: 'text', text, tone: 'good' }],
  actions: [],
})

/** Taking is exclusive: the first who takes a ticket has it, written with the hour; the next one is told by whom it was taken. */
export const takeTicket = async (desk: Desk, shop: ShopStore, { ticketId, by }: Taken): Promise<Result<string, Problem>> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const words = deskWords[language]
  const show = showFor(desk.workshop.shop, language)
  const ticket = await shop.tickets.read(ticketId)
  if (ticket === null) return ok(words.noTicket)
  const holder = (await shop.tickets.findings(ticketId)).find((finding) => finding.code === 'taken')
  const hourOf = (at: Minutes) => show.hour(writeLocal(desk.zone, at).slice(11))
  if (holder !== undefined) return ok(words.takenBy(holder.by, hourOf(holder.at)))
  if (ticket.state !== 'open') return ok(words.notOpen)
  const at = desk.clock.now()
  const seen = { id: ticketId, version: ticket.version }
  const changed = await shop.tickets.change(seen, { body: ticket.body })
  if (!changed.ok) return changed
  await shop.tickets.find(ticketId, { code: 'taken', facts: {}, by: by.name, at })
  const body = withTaker(ticketMessage(desk, changed.value, 0), words.takenBy(by.name, hourOf(at)))
  await shop.messages.put({ channel: shopChannel('bench'), nonce: ticketId, by: 'bot', body })
  await shop.tell('channel', shopChannel('bench'))
  await shop.events.add({ code: 'taken', orderId: ticket.orderId, ticketId, by: by.id, at, facts: {} })
  return ok(words.takenBy(by.name, hourOf(at)))
}
