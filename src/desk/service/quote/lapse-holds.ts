import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { OrderState } from '../../../ports/work-records.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { editTicketsOf } from '../floor/edit-tickets.ts'
import { liveHolds } from '../plan/shop-plan.ts'
import { conversationFrom, type HeldPlace, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { textMessage } from '../say/say-message.ts'

/** Nothing of a change can come about any more once all is made, and nothing was signed before the proof. */
const signedStates: readonly OrderState[] = ['signed-off', 'planned', 'ticketed', 'on-bench', 'checked', 'bagged']

/** That the place is no longer held; of a change of a signed order, that what was signed is made. */
const lapsedText = (plan: ShopPlan, held: HeldPlace, state: OrderState): ((language: Language) => string) | null => {
  if (state === 'quoted') return (language) => deskWords[language].holdLapsed(held.revision)
  const signed = plan.sold.find(({ id }) => id === held.id)
  if (signed === undefined || !signedStates.includes(state)) return null
  return (language) => deskWords[language].changeLapsed(held.revision, signed.revision)
}

/** The customer is told; the nonce makes a repeated step say it once. */
const tellCustomer = async (shop: ShopStore, plan: ShopPlan, held: HeldPlace): Promise<void> => {
  const order = await shop.orders.read(held.id)
  const conversationId = order?.conversationId ?? null
  const stored = conversationId === null ? null : await shop.conversations.read(conversationId)
  const text = order === null ? null : lapsedText(plan, held, order.state)
  if (conversationId === null || stored === null || text === null) return
  const { language } = conversationFrom(stored.state)
  const channel = conversationChannel(conversationId)
  const body = textMessage(text(language), language)
  await shop.messages.say({ channel, nonce: `lapsed-${held.id}-${held.revision}`, by: 'bot', body })
  await shop.tell('channel', channel)
}

const lapse = async (desk: Desk, shop: ShopStore): Promise<Result<null, Problem>> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const live = liveHolds(plan, desk.clock.now())
  const lapsed = plan.held.filter((held) => !live.includes(held))
  if (lapsed.length === 0) return ok(null)
  const written = await shop.plan.write(read.version, { ...plan, held: live })
  if (!written.ok) return written
  for (const held of lapsed) {
    await tellCustomer(shop, plan, held)
    await editTicketsOf(desk, shop, held.id)
  }
  return ok(null)
}

/** Lets go of the places of proofs that nobody signed in the shop's time, with a message. */
export const lapseHolds = async (desk: Desk): Promise<void> => {
  const lapsed = await desk.store.together(desk.shopId, (shop) => lapse(desk, shop))
  if (!lapsed.ok) throw new Error(`holds could not be let go: ${lapsed.problems.map((one) => one.code).join(', ')}`)
}
