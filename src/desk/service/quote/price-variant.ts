import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { ok } from '../../../domain/result/result.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import { quoteOf } from '../../quote.ts'
import { workOut } from '../../work-out.ts'
import type { WorkerDesk } from '../desk.ts'
import { floorFor } from '../plan/shop-plan.ts'
import { isDone } from '../records/moot.ts'
import { conversationFrom, shopPlanFrom } from '../records/records.ts'
import { readShelf, withStock } from '../stock/shelf.ts'
import { takeTurn } from '../talk/hear-customer.ts'

/**
 * The price step: works out what the order would cost in the make that its customer asked about last, and says it in the
 * conversation. The order, its proof and its place stay as they are. A question that was overtaken is moot.
 */
export const priceVariant = async (desk: WorkerDesk, step: OrderStep<'price'>): Promise<void> => {
  const shop = desk.store.shop(desk.shopId)
  const order = await shop.orders.read(step.orderId)
  const stored = order?.conversationId == null ? null : await shop.conversations.read(order.conversationId)
  const variant = stored === null ? null : (conversationFrom(stored.state).variant ?? null)
  if (order?.conversationId == null || variant === null || (await isDone(shop, step))) {
    await shop.steps.done(step)
    return
  }
  const conversationId = order.conversationId
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const worked = workOut(
    {
      document: variant.order,
      now: writeLocal(desk.zone, desk.clock.now()),
      job: step.orderId,
      floor: (_, __, needBy) => floorFor(desk, plan, { orderId: step.orderId, needBy }),
    },
    withStock(desk.workshop, await readShelf(shop, step.orderId)),
  )
  const { price, promise, problems } = quoteOf(worked, desk.workshop.shop, null)
  const stops = problems.filter(({ severity }) => severity === 'stop')
  const said = {
    id: `price-${step.orderId}-${variant.number}`,
    kind: 'priced' as const,
    number: variant.number,
    total: price?.total ?? null,
    promised: promise?.promised ?? null,
    problems: stops,
  }
  const told = await desk.store.together(desk.shopId, async (inside) => {
    const turn = await takeTurn(desk, inside, { conversationId, said, words: null })
    if (!turn.ok) return turn
    await inside.steps.done(step)
    return ok(null)
  })
  if (!told.ok)
    throw new Error(`the price asked for ${step.orderId} was not told: ${told.problems.map((one) => one.code).join(', ')}`)
}
