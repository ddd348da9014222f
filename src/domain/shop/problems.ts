import type { Problem, ProblemOf } from '../result/result.ts'

export type ShopProblems = {
  'shop-file-missing': { file: string; folder: string }
  'shop-file-not-json': { file: string; reason: string }
  'shop-reference': { id: string; wanted: string; file: string }
  /** Nobody is there at the wanted hour, for this reason where one is known; `collectBy` is the last moment before it. */
  'closed-before-need-by': { needBy: string; collectBy: string; why: string | null }
  /** The work has no place in the shop's own hours and stations: nothing a customer could change. */
  'cannot-plan-now': { why: readonly Problem[] }
  /** The wanted hour cannot be promised; `alone`: not even in an empty shop. So many of the garments could be ready by then, 0 for none. */
  'late-for-need-by': { needBy: string; earliest: string; alone: boolean; ready: number; of: number }
  'shop-zone-differs': { profile: string; hours: string }
}
export type ShopProblem = ProblemOf<ShopProblems>
