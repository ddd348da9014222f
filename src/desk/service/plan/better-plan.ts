import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Book, Slot } from '../../../domain/schedule/book/operation.ts'
import { layKept } from '../../../domain/schedule/replan/old-plan.ts'
import { completionOf } from '../../../domain/schedule/timeline/fit.ts'
import { orderCost, shopObjective } from '../../../domain/schedule/timeline/objective.ts'
import { compile } from '../../../domain/schedule/verify/compile.ts'
import { brokenPromises, verify } from '../../../domain/schedule/verify/verify.ts'
import type { SearchPlan } from '../../../ports/search.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { shopPlanFrom, withChange } from '../records/records.ts'
import { bookOf } from './shop-plan.ts'

const searchSeconds = 2
const seed = 1
const objective = { ...shopObjective, completion: 0, setup: 0 }

/** What late orders cost in a plan of the book. */
const latenessOf = (book: Book, slots: readonly Slot[]): number => {
  const model = compile(book)
  if (!model.ok) return Number.POSITIVE_INFINITY
  const lines = layKept(model.value, slots)
  return model.value.orders.reduce(
    (sum, _, order) => sum + orderCost(objective, model.value, order, completionOf(lines, order)),
    0,
  )
}

/** Better: nothing is wrong with it, nobody is late who was not, and the late ones are late by less. */
const isBetter = (book: Book, before: readonly Slot[], after: readonly Slot[]): boolean => {
  if (verify(book, after).length > 0) return false
  const lateBefore = new Set(brokenPromises(book, before))
  if (brokenPromises(book, after).some((id) => !lateBefore.has(id))) return false
  return latenessOf(book, after) < latenessOf(book, before)
}

/** How a longer search ended; `overtaken`: the plan was changed while it ran. */
export type Searched = 'nobody-late' | 'none-better' | 'overtaken' | 'replaced'

const replace = async (
  desk: Desk,
  shop: ShopStore,
  found: { readonly version: number; readonly slots: readonly Slot[] },
): Promise<Result<Searched, Problem>> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  if (read.version !== found.version) return ok('overtaken')
  const at = desk.clock.now()
  const next = withChange({ ...shopPlanFrom(read.body), slots: found.slots }, { reason: 'search', at, orderId: null })
  const written = await shop.plan.write(read.version, next)
  if (!written.ok) return written
  await shop.events.add({
    code: 'plan-searched',
    orderId: null,
    ticketId: null,
    by: 'desk',
    at,
    facts: { version: written.value },
  })
  return ok('replaced')
}

const lookOnce = async (desk: Desk, search: SearchPlan): Promise<Searched> => {
  const read = await desk.store.shop(desk.shopId).plan.read()
  const plan = shopPlanFrom(read.body)
  const book = bookOf(desk, plan, desk.clock.now())
  if (latenessOf(book, plan.slots) === 0) return 'nobody-late'
  const slots = await search({ book: book, slots: plan.slots, seed, seconds: searchSeconds })
  if (slots === null || !isBetter(book, plan.slots, slots)) return 'none-better'
  const kept = await desk.store.together(desk.shopId, (shop) => replace(desk, shop, { version: read.version, slots }))
  if (!kept.ok) throw new Error(`the better plan could not be kept: ${kept.problems.map(({ code }) => code).join(', ')}`)
  return kept.value
}

/**
 * Searches longer for a plan where somebody is late, beside all other work. What is found takes the kept plan's place only when it is
 * checked to be sound, better for the late and worse for nobody, and when the plan was not changed meanwhile: then a later search
 * looks at it. A plan that was looked at in vain is not looked at again until it changes.
 */
export const searchBetterPlans = (search: SearchPlan): ((desk: Desk) => Promise<Searched>) => {
  const lookedAt = new Map<string, number>()
  return async (desk) => {
    const { version } = await desk.store.shop(desk.shopId).plan.read()
    if (lookedAt.get(desk.shopId) === version) return 'none-better'
    const searched = await lookOnce(desk, search)
    if (searched !== 'overtaken') lookedAt.set(desk.shopId, version)
    return searched
  }
}
