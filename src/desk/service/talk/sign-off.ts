import { deskWords } from '../../../../templates/desk/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Conversation } from '../../../domain/understanding/conversation.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { keptFrom, stillWanted } from '../floor/carry-over.ts'
import { keepsPlace } from '../plan/keeps-place.ts'
import { orderIdOf } from '../records/order-id.ts'
import { conversationFrom, type PlacedOrder, type QuoteBody, quoteFrom, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { textMessage } from '../say/say-message.ts'
import { showProgress } from '../say/show-progress.ts'
import { wantStock } from '../stock/keep-stock.ts'
import { usedAt } from '../stock/use-stock.ts'

/** Whether the place was still there to be sold. */
export type Signed = 'sold' | 'place-lost'

export type SignOff = { readonly conversation: Conversation; readonly revision: number; readonly hash: string }
type Signing = SignOff & { readonly order: StoredOrder; readonly placed: PlacedOrder; readonly body: QuoteBody }

/** With the plan that is held. */
type Selling = Signing & { readonly plan: ShopPlan; readonly version: number }

const say = async (shop: ShopStore, signing: SignOff, note: { readonly nonce: string; readonly text: string }): Promise<void> => {
  const channel = conversationChannel(signing.conversation.id)
  await shop.messages.say({ channel, nonce: note.nonce, by: 'bot', body: textMessage(note.text, signing.conversation.language) })
  await shop.tell('channel', channel)
}

/** What the conversation holds for signed is what was sold before, if anything. */
const unsign = async (shop: ShopStore, { order, conversation }: Signing): Promise<Result<null, Problem>> => {
  const stored = await shop.conversations.read(conversation.id)
  if (stored === null) return ok(null)
  const before = (await shop.orders.revisions(order.orderId)).filter(({ signed }) => signed !== null).at(-1)
  const signed = before === undefined ? null : { revision: before.revision, hash: before.hash }
  const state = { ...conversationFrom(stored.state), signed }
  const saved = await shop.conversations.save({ id: conversation.id, version: stored.version }, state)
  return saved.ok ? ok(null) : saved
}

/** Somebody was faster: an honest new date is worked out as a new revision of the same document, and asked again. */
const loseRace = async (shop: ShopStore, signing: Signing): Promise<Result<Signed, Problem>> => {
  const { order, hash, conversation } = signing
  const revision = await shop.orders.revision(order.orderId, order.revision)
  const revised = await shop.orders.revise({ id: order.orderId, version: order.version }, { document: revision?.document, hash })
  if (!revised.ok) return revised
  const unsigned = await unsign(shop, signing)
  if (!unsigned.ok) return unsigned
  await shop.steps.want({ step: 'quote', orderId: order.orderId, revision: revised.value.revision })
  const text = deskWords[conversation.language].placeLost
  await say(shop, signing, { nonce: `lost-${order.orderId}-${revised.value.revision}`, text })
  return ok('place-lost')
}

/** What the revision takes from the shelf, without what was made for an earlier one and stays. */
const usesLeft = async (desk: Desk, shop: ShopStore, { order, body }: Signing): Promise<QuoteBody['stock']> => {
  const earlier = (await shop.tickets.ofOrder(order.orderId)).at(-1)
  if (earlier === undefined || body.facts === null) return body.stock
  const kept = await keptFrom(shop, earlier, body.facts)
  return stillWanted(body.stock, kept, (item) => usedAt(desk, item))
}

/** What is signed needs no proof any more: that work is over, and not planned for anybody. */
const proved = (placed: PlacedOrder, at: Minutes): PlacedOrder => ({
  ...placed,
  operations: placed.operations.map((one) => (one.id === 'proof' && one.done === null ? { ...one, done: at } : one)),
})

/** Stock reserved, place sold, order signed, event written and the plan step wanted: all in the turn's one transaction. */
const sell = async (desk: Desk, shop: ShopStore, signing: Selling): Promise<Result<Signed, Problem>> => {
  const { order, placed, conversation, plan, version } = signing
  const at = desk.clock.now()
  const [written, uses] = await Promise.all([
    shop.plan.write(version, {
      ...plan,
      sold: [...plan.sold.filter((sold) => sold.id !== placed.id), proved(placed, at)],
      held: plan.held.filter((held) => held.id !== placed.id),
    }),
    usesLeft(desk, shop, signing),
  ])
  if (!written.ok) return written
  const { orderId } = order
  const due = placed.promised ?? placed.needBy
  await wantStock(shop, { orderId, due, uses }, { at, by: conversation.person.id, why: 'signed' })
  const signed = await shop.orders.sign({ id: order.orderId, version: order.version }, { by: conversation.person.id, at })
  if (!signed.ok) return signed
  const freed =
    order.hold === null ? signed : await shop.orders.change({ id: orderId, version: signed.value.version }, { hold: null })
  if (!freed.ok) return freed
  await shop.events.add({
    code: 'signed-off',
    orderId: order.orderId,
    ticketId: null,
    by: 'customer',
    at,
    facts: { revision: order.revision },
  })
  await shop.steps.want({ step: 'plan', orderId: order.orderId, revision: order.revision })
  const when = showFor(desk.workshop.shop, conversation.language).moment(
    writeLocal(desk.zone, minutes(placed.promised ?? placed.needBy)),
  )
  const text = deskWords[conversation.language].signedOff(order.revision, when)
  await say(shop, signing, { nonce: `signed-${order.orderId}-${order.revision}`, text })
  await showProgress(shop, conversation, { orderId: order.orderId, revision: order.revision, stage: 'planning' })
  return ok('sold')
}

const notShown = (order: string, revision: number): Result<never, Problem> => ({
  ok: false,
  problems: [{ code: 'sign-off-not-shown', at: '', severity: 'stop', facts: { order, revision } }],
})

/**
 * Sells what was shown: only the newest revision with the very hash the customer saw, under the shop's plan. Two customers who
 * sign for the last place at once are told apart here: one is sold it, the other gets an honest later date and is asked.
 */
export const signOff = async (desk: Desk, shop: ShopStore, asked: SignOff): Promise<Result<Signed, Problem>> => {
  const { revision, hash } = asked
  const orderId = orderIdOf(asked.conversation.id)
  const [{ version, body: kept }, newest, shown] = await Promise.all([
    shop.plan.hold(),
    shop.orders.newest(orderId),
    shop.quotes.read({ orderId, revision, hash }),
  ])
  if (newest === null || newest.revision.hash !== hash) return notShown(orderId, revision)
  const { order } = newest
  const stored = order.revision === revision ? shown : await shop.quotes.read({ orderId, revision: order.revision, hash })
  const body = stored === null || stored === undefined ? null : quoteFrom(stored)
  if (body?.placed === undefined || body.placed === null) return notShown(orderId, revision)
  const plan = { version, plan: shopPlanFrom(kept) }
  const signing = { ...asked, order, body, placed: body.placed }
  const keeps = keepsPlace(desk, plan.plan, body.placed)
  if (!keeps.ok) return keeps
  return keeps.value ? sell(desk, shop, { ...signing, ...plan }) : loseRace(shop, signing)
}
