import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Book } from '../../../domain/schedule/book/operation.ts'
import { layKept } from '../../../domain/schedule/replan/old-plan.ts'
import type { Timelines } from '../../../domain/schedule/timeline/lanes.ts'
import { compile } from '../../../domain/schedule/verify/compile.ts'
import type { Desk } from '../desk.ts'
import type { ShopPlan } from '../records/records.ts'
import { bookOf } from './shop-plan.ts'

/** The shop's book as it is now, and its kept plan laid on the lanes of it. */
export type PresentPlan = { readonly book: Book; readonly lines: Timelines }

/** The kept plan as it stands now: its slots on the lanes of the present hour. */
export const presentPlan = (desk: Desk, plan: ShopPlan): Result<PresentPlan, Problem> => {
  const book = bookOf(desk, plan, desk.clock.now())
  const model = compile(book)
  return model.ok ? ok({ book: book, lines: layKept(model.value, plan.slots) }) : model
}
