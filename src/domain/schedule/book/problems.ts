import type { ProblemOf } from '../../result/result.ts'

export type ScheduleProblems = {
  'book-malformed': { reason: string }
  'need-by-past': { order: string; needByMinutes: number; nowMinutes: number }
  'time-in-lost-hour': { text: string; readAs: string }
  'station-unknown': { order: string; operation: string; station: string }
  'station-twice': { station: string }
  'station-never-open': { station: string }
  'order-twice': { order: string }
  'operation-twice': { order: string; operation: string }
  'after-unknown': { order: string; operation: string; after: string }
  'after-circle': { order: string; operation: string }
  'work-longer-than-open': { order: string; operation: string; minutes: number; longestMinutes: number }
  'never-together': { order: string; operation: string }
  'setup-shortcut': { station: string; from: string; over: string; to: string; directMinutes: number; viaMinutes: number }
  'started-together': { station: string; first: string; second: string }
  'started-in-future': { operation: string; started: string }
  'beyond-horizon': { order: string }
}
export type ScheduleProblem = ProblemOf<ScheduleProblems>
