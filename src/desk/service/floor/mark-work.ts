import type { Operation } from '../../../domain/schedule/book/operation.ts'
import { isThrough, type Ticked, type WorkKind, type WorkStep } from '../../../domain/ticket/work-steps.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { type ShopPlan, shopPlanFrom } from '../records.ts'
import type { Deed } from './deed.ts'

/** Which planned work is over once every line is through a step of this kind. */
const operationsOf: { readonly [kind in WorkKind]: RegExp } = {
  cut: /^(proof|count-in|water-drops|test-press|bleed-test|cut-)/,
  weed: /^weed-/,
  brush: /^(plugs|coupon|brush-)/,
  press: /^(first-piece|press-)/,
  inspect: /^inspect-/,
  bag: /./,
}

const markDone = (operations: readonly Operation[], isOver: (id: string) => boolean, at: Minutes): readonly Operation[] =>
  operations.map((one) => (one.done === null && isOver(one.id) ? { ...one, done: at } : one))

/** The plan with work of an order that is over; its slots are free for others. */
export const withDone = (plan: ShopPlan, orderId: string, done: { isOver: (id: string) => boolean; at: Minutes }): ShopPlan => ({
  ...plan,
  sold: plan.sold.map((placed) =>
    placed.id === orderId ? { ...placed, operations: markDone(placed.operations, done.isOver, done.at) } : placed,
  ),
  slots: plan.slots.filter((slot) => slot.order !== orderId || !done.isOver(slot.operation)),
})

/** Reads the plan, changes it and writes it back, under the shop's lock. */
export const changePlan = async (shop: ShopStore, change: (plan: ShopPlan) => ShopPlan): Promise<ShopPlan> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const next = change(shopPlanFrom(read.body))
  const written = await shop.plan.write(read.version, next)
  if (!written.ok) throw new Error('the plan changed although this transaction holds it alone')
  return next
}

/** Ticks go into the plan: a stage that every line is through is over. Work of remakes is marked by its own remake. */
export const markWork = async (
  { desk, shop, life }: Pick<Deed, 'desk' | 'shop' | 'life'>,
  steps: readonly WorkStep[],
  ticks: readonly Ticked[],
): Promise<void> => {
  const kinds = [...new Set(steps.map(({ kind }) => kind))]
  const through = kinds.filter((kind) =>
    steps
      .filter((step) => step.kind === kind)
      .every(({ lines }) => lines.every((line) => isThrough(steps, ticks, { kind, line }))),
  )
  if (through.length === 0) return
  const isOver = (id: string): boolean => !id.startsWith('remake-') && through.some((kind) => operationsOf[kind].test(id))
  await changePlan(shop, (plan) => withDone(plan, life.order.orderId, { isOver, at: desk.clock.now() }))
}
