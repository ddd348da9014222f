import type { Operation, Slot } from '../../../domain/schedule/book/operation.ts'
import { isThrough, type Ticked, type WorkKind, type WorkStep } from '../../../domain/ticket/work-steps.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'
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
export const withDone = (plan: ShopPlan, orderId: string, done: { isOver: (id: string) => boolean; at: Minutes }): ShopPlan => {
  const order = plan.sold.find(({ id }) => id === orderId)
  if (order === undefined || !order.operations.some((one) => one.done === null && done.isOver(one.id))) return plan
  const operations = markDone(order.operations, done.isOver, done.at)
  return {
    ...plan,
    sold: plan.sold.map((one) => (one === order ? { ...one, operations } : one)),
    slots: plan.slots.filter((slot) => slot.order !== orderId || !done.isOver(slot.operation)),
  }
}

/** The planned work that a step's first tick begins; what goes before it on the paper has ticks of its own or none. */
const beginsAs: { readonly [kind in WorkKind]: RegExp } = {
  cut: /^cut-/,
  weed: /^weed-/,
  brush: /^brush-/,
  press: /^(first-piece|press-)/,
  inspect: /^inspect-/,
  bag: /^bag/,
}

const hasBegun = ({ started, done }: Operation): boolean => started !== null || done !== null

/** The first operation of each kind in hand that has begun by the tickets and not yet by the plan. */
const beginning = (operations: readonly Operation[], kinds: readonly WorkKind[]): ReadonlySet<string> => {
  const open = kinds.map((kind) => operations.filter(({ id }) => beginsAs[kind].test(id)))
  return new Set(open.flatMap((own) => (own.some(hasBegun) ? [] : own.slice(0, 1).map(({ id }) => id))))
}

/**
 * The plan with work that somebody began now, where it was planned: it stays there, and the others are planned around it. Only the
 * first work of a kind is marked, for a ticket does not say which of its batches is in hand.
 */
export const withBegun = (plan: ShopPlan, orderId: string, begun: { kinds: readonly WorkKind[]; at: Minutes }): ShopPlan => {
  const ids = beginning(plan.sold.find(({ id }) => id === orderId)?.operations ?? [], begun.kinds)
  if (ids.size === 0) return plan
  const slotOf = (id: string): Slot | undefined => plan.slots.find((slot) => slot.order === orderId && slot.operation === id)
  const begin = (one: Operation): Operation =>
    ids.has(one.id) ? { ...one, started: begun.at, on: slotOf(one.id)?.stations ?? null } : one
  return {
    ...plan,
    sold: plan.sold.map((order) => (order.id === orderId ? { ...order, operations: order.operations.map(begin) } : order)),
  }
}

/** The plan without the beginning of work that was given back before anything of it was done. */
const withoutBegun = (plan: ShopPlan, orderId: string, kinds: readonly WorkKind[]): ShopPlan => {
  const isBack = ({ id, started, done }: Operation): boolean =>
    started !== null && done === null && kinds.some((kind) => beginsAs[kind].test(id))
  const order = plan.sold.find(({ id }) => id === orderId)
  if (order === undefined || !order.operations.some(isBack)) return plan
  const operations = order.operations.map((one) => (isBack(one) ? { ...one, started: null, on: null } : one))
  return { ...plan, sold: plan.sold.map((one) => (one === order ? { ...one, operations } : one)) }
}

/** Reads the plan, changes it and writes it back when anything changed, under the shop's lock. */
export const changePlan = async (shop: ShopStore, change: (plan: ShopPlan) => ShopPlan): Promise<ShopPlan> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const present = shopPlanFrom(read.body)
  const next = change(present)
  if (next === present) return present
  const written = await shop.plan.write(read.version, next)
  if (!written.ok) throw new Error('the plan changed although this transaction holds it alone')
  return next
}

/** How far the steps of a kind are: every line through, something of it in hand or done, or nothing yet. */
const progressOf = (steps: readonly WorkStep[], ticks: readonly Ticked[], kind: WorkKind): 'through' | 'begun' | 'waiting' => {
  const own = steps.filter((step) => step.kind === kind)
  if (own.every(({ lines }) => lines.every((line) => isThrough(steps, ticks, { kind, line })))) return 'through'
  const numbers = new Set(own.map(({ no }) => no))
  const isBegun = ({ step, state }: Ticked): boolean => numbers.has(step) && (state === 'started' || state === 'done')
  return ticks.some(isBegun) ? 'begun' : 'waiting'
}

/**
 * Ticks go into the plan: a stage that somebody began has begun, and one that every line is through is over. Work of remakes is
 * marked by its own remake.
 */
export const markWork = async (
  { desk, shop, life }: Pick<Deed, 'desk' | 'shop' | 'life'>,
  steps: readonly WorkStep[],
  ticks: readonly Ticked[],
): Promise<void> => {
  const { orderId } = life.order
  const at = desk.clock.now()
  const stages = [...new Set(steps.map(({ kind }) => kind))].map((kind) => ({ kind, is: progressOf(steps, ticks, kind) }))
  const kindsThat = (are: 'through' | 'begun' | 'waiting'): readonly WorkKind[] =>
    stages.filter(({ is }) => is === are).map(({ kind }) => kind)
  const isOver = (id: string): boolean =>
    !id.startsWith('remake-') && kindsThat('through').some((kind) => operationsOf[kind].test(id))
  await changePlan(shop, (plan) => {
    const done = withDone(plan, orderId, { isOver, at })
    return withBegun(withoutBegun(done, orderId, kindsThat('waiting')), orderId, { kinds: kindsThat('begun'), at })
  })
}
