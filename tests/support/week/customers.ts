import { orderIdOf } from '../../../src/desk/service/records/order-id.ts'
import { conversationFrom, type ShopPlan } from '../../../src/desk/service/records/records.ts'
import type { Conversation } from '../../../src/domain/understanding/conversation.ts'
import type { StoredOrder } from '../../../src/ports/work-records.ts'
import type { Hands } from './hands.ts'
import type { Wish } from './wishes.ts'

/** One customer of the week, as far as they are. */
export type Customer = {
  readonly wish: Wish
  id: string | null
  /** When the proof that stands now was first seen, by its revision. */
  readonly seen: Map<number, number>
  changed: boolean
  cancelled: boolean
  signedAt: number | null
}

export const newCustomer = (wish: Wish): Customer => ({
  wish,
  id: null,
  seen: new Map(),
  changed: false,
  cancelled: false,
  signedAt: null,
})

type Look = { readonly hands: Hands; readonly now: number; readonly plan: ShopPlan }

/** Whoever changes their mind wants their first player in another size. */
const change = 'make the 4 a large'

/** What a customer says to a question of the desk. */
const answers: { readonly [question: string]: string } = { 'ask-ages': 'all are 13 or older', cancel: 'yes' }

const answer = async ({ hands }: Look, id: string, talk: Conversation): Promise<boolean> => {
  const words = answers[talk.asked?.code ?? '']
  if (words === undefined) return false
  await hands.say(id, words)
  return true
}

/** The proof on the table, if there is one to be signed. */
const toSign = (talk: Conversation, order: StoredOrder) =>
  talk.shown !== null && talk.shown.revision === order.revision && talk.signed?.revision !== order.revision ? talk.shown : null

const sign = async ({ hands, now }: Look, customer: Customer, shown: { revision: number; hash: string }): Promise<void> => {
  const { wish, id, seen } = customer
  if (id === null || wish.temper === 'never') return
  if (!seen.has(shown.revision)) seen.set(shown.revision, now)
  const isFirst = customer.signedAt === null
  const thinks = isFirst && seen.size === 1 ? wish.thinks : 20
  if (now < (seen.get(shown.revision) ?? now) + thinks) return
  if (wish.temper === 'changes' && !customer.changed) {
    customer.changed = true
    await hands.say(id, change)
    return
  }
  await hands.press(id, `c:sign-off:${shown.revision}:${shown.hash}`)
  customer.signedAt = now
}

const laterMind = async ({ hands, now }: Look, customer: Customer): Promise<boolean> => {
  const { wish, id, signedAt } = customer
  if (id === null || signedAt === null || now < signedAt + 60) return false
  if (wish.temper === 'cancels' && !customer.cancelled) {
    customer.cancelled = true
    await hands.say(id, 'please cancel the order')
    return true
  }
  if (wish.temper !== 'changes-signed' || customer.changed) return false
  customer.changed = true
  await hands.say(id, change)
  return true
}

/** Whose cloth nothing in the shop holds on gives up after half a day. */
const patience = 12 * 60

const givesUp = async ({ hands, now }: Look, customer: Customer, order: StoredOrder): Promise<boolean> => {
  const { id } = customer
  if (id === null || order.hold === null || customer.cancelled || now < order.hold.since + patience) return false
  customer.cancelled = true
  await hands.say(id, 'please cancel the order')
  return true
}

/** What one customer does at this moment: comes, answers, signs, thinks again, agrees to another hour. */
export const customerActs = async (look: Look, customer: Customer): Promise<void> => {
  const { hands, now, plan } = look
  const { wish } = customer
  if (customer.id === null) {
    if (now >= wish.arrives) customer.id = await hands.arrive(wish.number, wish.words)
    return
  }
  const { id } = customer
  const shop = hands.desk.store.shop(hands.desk.shopId)
  const [stored, order] = await Promise.all([shop.conversations.read(id), shop.orders.read(orderIdOf(id))])
  if (stored === null) return
  const talk = conversationFrom(stored.state)
  if (await answer(look, id, talk)) return
  if (order === null || order.state === 'collected' || order.state === 'cancelled') return
  const question = plan.proposals.find(({ orderId }) => orderId === order.orderId)
  if (question !== undefined) await hands.press(id, `p:${question.orderId}:${question.kind}:yes`)
  const shown = toSign(talk, order)
  if (shown === null && (await givesUp(look, customer, order))) return
  if (shown !== null) await sign(look, customer, shown)
  else await laterMind(look, customer)
}
