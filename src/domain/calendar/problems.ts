import type { ProblemOf } from '../result/result.ts'

export type CalendarProblems = {
  'zone-unknown': { zone: string }
  'time-malformed': { text: string }
  'no-such-time': { text: string }
  'year-out-of-range': { text: string; firstYear: number; lastYear: number }
  'hours-malformed': { text: string }
}
export type CalendarProblem = ProblemOf<CalendarProblems>
