import { dayNumber } from '../../../calendar/local-time.ts'
import type { Token } from '../text/tokens.ts'
import { isWeekday, shift, type WhenFound, weekdayOf } from './day-parts.ts'

type DayFound = Extract<WhenFound, { kind: 'day' }>

/** "Friday", and nothing that says which. */
const isBareWeekday = (tokens: readonly Token[], { from, to, days }: DayFound): boolean =>
  to === from + 1 && days.length === 1 && isWeekday(tokens[from])

const lastBefore = (event: string, weekday: number): string => shift(event, -((weekdayOf(event) - weekday + 7) % 7))

/** The last day of that date before the event: in its month, or in the one before. */
const lastDate = (event: string, date: string): string => {
  const own = `${event.slice(0, 8)}${date}`
  if (own <= event && dayNumber(own) !== null) return own
  const before = shift(`${event.slice(0, 8)}01`, -1)
  return `${before.slice(0, 8)}${date}`
}

type Event = { readonly beside: string | undefined; readonly known: string | undefined; readonly bare: boolean }

/**
 * The days that a weekday or a date alone may mean where a later event is known: beside the event, the last one before it ("the game is
 * Saturday the 19th, so Friday by 6", "we play March 13, need them the 12th"); said apart from it, that one or the next to come.
 */
export const daysBeforeEvent = (tokens: readonly Token[], day: DayFound, event: Event): readonly string[] => {
  const [nearest] = day.days
  const at = event.beside ?? event.known
  const weekday = isBareWeekday(tokens, day)
  if (nearest === undefined || at === undefined || !(weekday || (event.bare && day.days.length === 1))) return day.days
  const last = weekday ? lastBefore(at, weekdayOf(nearest)) : lastDate(at, nearest.slice(8))
  if (last <= nearest || dayNumber(last) === null) return day.days
  return event.beside === undefined ? [nearest, last] : [last]
}
