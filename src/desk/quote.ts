import { writeLocal } from '../domain/calendar/local-time.ts'
import type { Problem } from '../domain/result/result.ts'
import type { Shop } from '../domain/shop/shop.ts'
import type { Quote } from '../domain/understanding/conversation.ts'
import { calledForCustomer } from './say-for-order.ts'
import type { WorkedOut } from './work-out.ts'

/** Plain notes that a customer sees or pays for; the rest is for the bench and stands on the ticket. */
const customerNotes: ReadonlySet<string> = new Set([
  'letters-condensed',
  'letters-smaller',
  'row-without-number',
  'row-without-name',
  'size-later',
  'no-rulebook',
  'short-of-material',
  'age-unknown',
  'childrens-wear',
  'closed-before-need-by',
])

/** Trouble in the shop's own hours and stations: a customer is told no more than that. */
const shopsOwn: ReadonlySet<string> = new Set(['station-never-open', 'never-together', 'work-longer-than-open', 'beyond-horizon'])

/** Problems that only the shop can mend. */
export const forShop = (problems: readonly Problem[]): readonly Problem[] => problems.filter(({ code }) => shopsOwn.has(code))

const forCustomer = (problems: readonly Problem[]): readonly Problem[] => {
  const why = forShop(problems)
  const rest = problems.filter(({ severity, code }) => !shopsOwn.has(code) && (severity !== 'note' || customerNotes.has(code)))
  return why.length === 0 ? rest : [{ code: 'cannot-plan-now', at: '', severity: 'stop', facts: { why } }, ...rest]
}

/** What a worked-out order says to its customer: price, promise, what they must know, and the picture's file. */
export const quoteOf = (worked: WorkedOut, shop: Shop, picture: string | null): Quote => {
  const { work, order } = worked
  const told = forCustomer(worked.problems)
  const problems = order === null ? told : told.map((problem) => calledForCustomer(problem, order, shop))
  if (work === null) return { price: null, promise: null, problems, picture: null }
  const { promised, price, time } = work
  return {
    price: { total: price.total, parts: price.parts },
    promise: {
      feasible: promised.feasible,
      promised: writeLocal(time.zone, promised.promised),
      hangsOn: promised.hangsOn.map(({ code, by }) => ({ code, by: writeLocal(time.zone, by) })),
      freezesAt: promised.freezesAt === null ? null : writeLocal(time.zone, promised.freezesAt),
    },
    problems,
    picture,
  }
}
