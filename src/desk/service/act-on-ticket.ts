import { deskWords } from '../../../templates/desk/words.ts'
import { writeLocal } from '../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import { showFor } from '../../domain/shop/show.ts'
import type { Member } from '../../ports/counter-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { StoredOrder, StoredTicket } from '../../ports/work-records.ts'
import { conversationChannel, type Desk } from './desk.ts'
import { learnPace } from './plan/learn-pace.ts'
import { conversationFrom, ticketFrom } from './records.ts'
import { textMessage } from './say-message.ts'
import { holderOf, openActs, rowsAfter, stateAfter, type TicketAct, type TicketLife } from './ticket-life.ts'
import { putTicketMessage } from './ticket-message.ts'

export type Acting = { readonly ticketId: string; readonly act: TicketAct; readonly by: Member }

/** A ticket with its order and what was done with it; null when there is no such ticket in this shop. */
export const lifeOf = async (shop: ShopStore, ticketId: string): Promise<TicketLife | null> => {
  const ticket = await shop.tickets.read(ticketId)
  const order = ticket === null ? null : await shop.orders.read(ticket.orderId)
  if (ticket === null || order === null) return null
  return { ticket, order, findings: await shop.tickets.findings(ticketId) }
}

const refusal = (desk: Desk, life: TicketLife | null): string => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const words = deskWords[language]
  const holder = life === null ? null : holderOf(life.findings)
  if (life === null) return words.noTicket
  if (holder === null) return words.notOpen
  const hour = showFor(desk.workshop.shop, language).hour(writeLocal(desk.zone, holder.at).slice(11))
  return words.done.take(holder.by, hour)
}

/** Reserved stock becomes used stock when the work is checked. */
const useStock = async (desk: Desk, shop: ShopStore, orderId: string): Promise<void> => {
  const at = desk.clock.now()
  const reserved = new Map<string, number>()
  for (const { item, amount } of await shop.stock.ofOrder(orderId)) reserved.set(item, (reserved.get(item) ?? 0) + amount)
  const moves = [...reserved].filter(([, amount]) => amount !== 0)
  await shop.stock.move(
    moves.flatMap(([item, amount]) => [
      { item, amount: -amount, kind: 'release' as const, orderId, at },
      { item, amount, kind: 'use' as const, orderId, at },
    ]),
  )
}

const tellReady = async (shop: ShopStore, order: StoredOrder, ticket: StoredTicket): Promise<void> => {
  const id = order.conversationId
  const stored = id === null ? null : await shop.conversations.read(id)
  if (id === null || stored === null) return
  const { language } = conversationFrom(stored.state)
  const channel = conversationChannel(id)
  const body = textMessage(deskWords[language].ready, language)
  await shop.messages.put({ channel, nonce: `ready-${ticket.ticketId}`, by: 'bot', body })
  await shop.tell('channel', channel)
}

/** What an act changes besides its own row: the order, its roster rows, its stock, and what the customer is told. */
const consequences = async (
  desk: Desk,
  shop: ShopStore,
  { life, act }: { readonly life: TicketLife; readonly act: TicketAct },
): Promise<Result<null, Problem>> => {
  const { order, ticket } = life
  const rows = rowsAfter[act]
  const { facts } = ticketFrom(ticket.body)
  if (rows !== null)
    await shop.orders.setRows(
      order.orderId,
      facts.roster.map(({ line }) => ({ line, state: rows })),
    )
  const state = stateAfter[act]
  if (state !== null) {
    const handedOver = act === 'collected' ? { handedOverAt: desk.clock.now() } : {}
    const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state, ...handedOver })
    if (!changed.ok) return changed
  }
  if (act === 'checked') await useStock(desk, shop, order.orderId)
  if (act === 'checked') await learnPace(desk, shop, life.ticket)
  if (act === 'bagged') await tellReady(shop, order, ticket)
  return ok(null)
}

/**
 * One act of one person on one ticket. The ticket's version makes it exclusive: of two who take it at once one has it and the
 * other is told by whom and when. Answers with a word for whoever acted, null when the act was done.
 */
export const actOnTicket = async (
  desk: Desk,
  shop: ShopStore,
  { ticketId, act, by }: Acting,
): Promise<Result<string | null, Problem>> => {
  const life = await lifeOf(shop, ticketId)
  if (life === null || !openActs(life).includes(act)) return ok(refusal(desk, life))
  const at = desk.clock.now()
  const change = act === 'collected' ? { state: 'done' as const } : { body: life.ticket.body }
  const changed = await shop.tickets.change({ id: ticketId, version: life.ticket.version }, change)
  if (!changed.ok) return changed
  await shop.tickets.find(ticketId, { code: act, facts: {}, by: by.name, at })
  const followed = await consequences(desk, shop, { life, act })
  if (!followed.ok) return followed
  await shop.events.add({
    code: act,
    orderId: life.order.orderId,
    ticketId,
    by: by.id,
    at,
    facts: { revision: life.ticket.revision },
  })
  const after = await lifeOf(shop, ticketId)
  if (after !== null) await putTicketMessage(desk, shop, after)
  return ok(null)
}
