import type { ProblemOf } from '../result/result.ts'

export type ShopProblems = {
  'shop-file-missing': { file: string; folder: string }
  'shop-file-not-json': { file: string; reason: string }
  'shop-reference': { id: string; wanted: string; file: string }
  /** The wanted hour cannot be promised; `alone`: not even in an empty shop. */
  'late-for-need-by': { needBy: string; earliest: string; alone: boolean }
  'shop-zone-differs': { profile: string; hours: string }
}
export type ShopProblem = ProblemOf<ShopProblems>
