import { writeLocal } from '../domain/calendar/local-time.ts'
import type { Quote } from '../domain/understanding/conversation.ts'
import type { WorkedOut } from './work-out.ts'

/** What a worked-out order says to its customer: price, promise, problems and the picture's file. */
export const quoteOf = (worked: WorkedOut, picture: string | null): Quote => {
  const { work, problems } = worked
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
