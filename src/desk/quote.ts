import { writeLocal } from '../domain/calendar/local-time.ts'
import type { Problem } from '../domain/result/result.ts'
import type { Quote } from '../domain/understanding/conversation.ts'
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
])

const forCustomer = (problems: readonly Problem[]): readonly Problem[] =>
  problems.filter(({ severity, code }) => severity !== 'note' || customerNotes.has(code))

/** What a worked-out order says to its customer: price, promise, what they must know, and the picture's file. */
export const quoteOf = (worked: WorkedOut, picture: string | null): Quote => {
  const { work } = worked
  const problems = forCustomer(worked.problems)
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
