import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import type { OrderStep } from '../../ports/queue.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { StoredOrder } from '../../ports/work-records.ts'
import type { Desk } from './desk.ts'
import { isDone } from './moot.ts'
import type { ShopPlan } from './records.ts'
import { replanShop } from './replan-shop.ts'
import { showProgressOf } from './show-progress.ts'

/** Every signed-off order that this plan has a place for goes on to its ticket; answers with those that have none yet. */
const passOn = async (desk: Desk, shop: ShopStore, plan: ShopPlan): Promise<Result<readonly StoredOrder[], Problem>> => {
  const planned = new Set(plan.slots.map((slot) => slot.order))
  const signed = await shop.orders.list(['signed-off'])
  for (const order of signed.filter(({ orderId }) => planned.has(orderId))) {
    const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: 'planned' })
    if (!changed.ok) return changed
    const { orderId, revision } = order
    await shop.events.add({ code: 'planned', orderId, ticketId: null, by: 'desk', at: desk.clock.now(), facts: { revision } })
    await shop.steps.want({ step: 'ticket', orderId, revision })
    await showProgressOf(shop, order.conversationId, { orderId, revision, stage: 'printing' })
    // Plans are made for all at once: the jobs of the others may have been left out for this one.
    await shop.steps.done({ step: 'plan', orderId, revision })
  }
  return ok(signed.filter(({ orderId }) => !planned.has(orderId)))
}

/** Answers whether the step's own order has its place now. */
const planAll = async (desk: Desk, shop: ShopStore, step: OrderStep<'plan'>): Promise<Result<boolean, Problem>> => {
  if (await isDone(shop, step)) return ok(true)
  const next = await replanShop(desk, shop)
  if (!next.ok) return next
  const passed = await passOn(desk, shop, next.value)
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
