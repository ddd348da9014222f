import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { OrderState, StoredOrder } from '../../../ports/work-records.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { forgetNames } from '../records/forget-names.ts'
import { shopPlanFrom, ticketFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { textMessage } from '../say/say-message.ts'

const dayMinutes = 1_440
const unsold: ReadonlySet<OrderState> = new Set(['asked', 'quoted'])
const over: ReadonlySet<OrderState> = new Set(['collected', 'cancelled'])

/** Writes over a message that stands in a channel of the shop; its place and its number stay. */
const blank = async (
  desk: Desk,
  shop: ShopStore,
  at: { channel: 'bench' | 'owner'; nonce: string; name: string },
): Promise<void> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const channel = shopChannel(at.channel)
  const body = textMessage([at.name, deskWords[language].forgotten].filter((part) => part !== '').join(': '), language)
  await shop.messages.say({ channel, nonce: at.nonce, by: 'bot', body })
  await shop.tell('channel', channel)
}

const forgetTickets = async (desk: Desk, shop: ShopStore, orderId: string): Promise<void> => {
  for (const ticket of await shop.tickets.ofOrder(orderId)) {
    const { pdf, papers = [] } = ticketFrom(ticket.body)
    for (const file of [pdf, ...papers.map((paper) => paper.file)])
      if (file !== '') await shop.files.hide(shopChannel('bench'), file)
    await blank(desk, shop, { channel: 'bench', nonce: ticket.ticketId, name: ticketName(ticket.number) })
  }
}

const noteOf = (facts: unknown): readonly string[] =>
  typeof facts === 'object' && facts !== null && 'note' in facts && typeof facts.note === 'string' ? [facts.note] : []

/** What the owner was told in the customer's own words. */
const forgetNotes = async (desk: Desk, shop: ShopStore, orderId: string): Promise<void> => {
  const notes = (await shop.events.ofOrder(orderId)).flatMap(({ facts }) => noteOf(facts))
  for (const nonce of notes) await blank(desk, shop, { channel: 'owner', nonce, name: '' })
}

/** An order that was never sold ends here: its place is let go. */
const endUnsold = async (shop: ShopStore, order: StoredOrder): Promise<Result<null, Problem>> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const held = plan.held.filter((one) => one.id !== order.orderId)
  const written = await shop.plan.write(read.version, { ...plan, held })
  if (!written.ok) return written
  const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: 'cancelled' })
  return changed.ok ? ok(null) : changed
}

const forgetIn = async (desk: Desk, shop: ShopStore, orderId: string): Promise<Result<null, Problem>> => {
  const order = await shop.orders.read(orderId)
  if (order === null) {
    return { ok: false, problems: [{ code: 'order-unknown', at: '', severity: 'stop', facts: { order: orderId } }] }
  }
  if (!unsold.has(order.state) && !over.has(order.state)) {
    const facts = { order: orderId, state: order.state }
    return { ok: false, problems: [{ code: 'order-in-work', at: '', severity: 'stop', facts }] }
  }
  const revisions = await shop.orders.revisions(orderId)
  if (revisions.length > 0 && revisions.every(({ document }) => document === null)) return ok(null)
  const ended = unsold.has(order.state) ? await endUnsold(shop, order) : ok(null)
  if (!ended.ok) return ended
  await forgetTickets(desk, shop, orderId)
  await forgetNotes(desk, shop, orderId)
  await forgetNames(shop, orderId)
  await shop.forget(orderId)
  await shop.events.add({ code: 'forgotten', orderId, ticketId: null, by: 'desk', at: desk.clock.now(), facts: {} })
  return ok(null)
}

/**
 * Deletes the names, contacts, pictures and words of an order's people wherever they stand; the events keep ids and facts.
 * An order that is being made is refused; one that is forgotten already stays as it is.
 */
export const forgetOrder = (desk: Desk, orderId: string): Promise<Result<null, Problem>> =>
  desk.store.together(desk.shopId, (shop) => forgetIn(desk, shop, orderId))

/** Forgets the people of every order whose time is over by the shop's own rule; answers which. */
export const forgetDue = async (desk: Desk): Promise<readonly string[]> => {
  const before = minutes(desk.clock.now() - desk.workshop.shop.profile.keepPersonalDays * dayMinutes)
  const due = await desk.store.shop(desk.shopId).toForget(before)
  for (const orderId of due) {
    const forgotten = await forgetOrder(desk, orderId)
    if (!forgotten.ok)
      throw new Error(`${orderId} could not be forgotten: ${forgotten.problems.map((one) => one.code).join(', ')}`)
  }
  return due
}
