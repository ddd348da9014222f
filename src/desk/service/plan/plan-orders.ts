import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StepAbout, StoredOrder } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import type { ShopPlan } from '../records/records.ts'
import { showProgress } from '../say/show-progress.ts'
import { replanHeld } from './replan-shop.ts'

/** The step's own order is known; plans are made for all at once, so that others may be passed on with it. */
const languageOf = async (shop: ShopStore, { orderId, conversationId }: StoredOrder, about: StepAbout) => {
  if (conversationId === null) return null
  return orderId === about.order?.orderId ? about.language : shop.conversations.language(conversationId)
}

const showPrinting = async (shop: ShopStore, order: StoredOrder, about: StepAbout): Promise<void> => {
  const { orderId, revision, conversationId } = order
  const language = await languageOf(shop, order, about)
  if (conversationId === null || language === null) return
  await showProgress(shop, { id: conversationId, language }, { orderId, revision, stage: 'printing' })
}

type Planned = { readonly plan: ShopPlan; readonly signed: readonly StoredOrder[]; readonly about: StepAbout }

/** Every signed-off order that this plan has a place for goes on to its ticket; answers with those that have none yet. */
const passOn = async (
  desk: Desk,
  shop: ShopStore,
  { plan, signed, about }: Planned,
): Promise<Result<readonly StoredOrder[], Problem>> => {
  const planned = new Set(plan.slots.map((slot) => slot.order))
  for (const order of signed.filter(({ orderId }) => planned.has(orderId))) {
    const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: 'planned' })
    if (!changed.ok) return changed
    const { orderId, revision } = order
    await shop.events.add({ code: 'planned', orderId, ticketId: null, by: 'desk', at: desk.clock.now(), facts: { revision } })
    await shop.steps.want({ step: 'ticket', orderId, revision })
    await showPrinting(shop, order, about)
    // Plans are made for all at once: the jobs of the others may have been left out for this one.
    await shop.steps.done({ step: 'plan', orderId, revision })
  }
  return ok(signed.filter(({ orderId }) => !planned.has(orderId)))
}

/** Answers whether the step's own order has its place now. */
const planAll = async (desk: Desk, shop: ShopStore, step: OrderStep<'plan'>): Promise<Result<boolean, Problem>> => {
  const [held, about] = await Promise.all([shop.plan.hold(), shop.steps.about(step)])
  if (about.isDone) return ok(true)
  const [next, signed] = await Promise.all([replanHeld(desk, shop, held), shop.orders.list(['signed-off'])])
  if (!next.ok) return next
  const passed = await passOn(desk, shop, { plan: next.value, signed, about })
  if (!passed.ok) return passed
  const isPlaced = !passed.value.some(({ orderId, revision }) => orderId === step.orderId && revision === step.revision)
  if (isPlaced) await shop.steps.done(step)
  return ok(isPlaced)
}

/** The plan step: plans every sold order under the plan's lock, leaving what lies well where it is, and wants the tickets of those newly planned. */
export const planOrders = async (desk: Desk, step: OrderStep<'plan'>): Promise<void> => {
  const planned = await desk.store.together(desk.shopId, (shop) => planAll(desk, shop, step))
  if (!planned.ok) throw new Error(`the shop could not be planned: ${planned.problems.map((one) => one.code).join(', ')}`)
  if (!planned.value) throw new Error(`no place was found for ${step.orderId}, revision ${step.revision}`)
}
