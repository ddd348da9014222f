import { isWeekday, shift, type WhenFound, weekdayOf } from './day-parts.ts'
import type { Token } from './tokens.ts'

type DayFound = Extract<WhenFound, { kind: 'day' }>

/** "Friday", and nothing that says which. */
const isBareWeekday = (tokens: readonly Token[], { from, to, days }: DayFound): boolean =>
  to === from + 1 && days.length === 1 && isWeekday(tokens[from])

const lastBefore = (event: string, weekday: number): string => shift(event, -((weekdayOf(event) - weekday + 7) % 7))

/**
 * The days that a weekday alone may mean where a later event is known: beside the event, the last one before it ("the game is Saturday
 * the 19th, so Friday by 6"); said apart from it, that one or the next to come.
 */
export const daysBeforeEvent = (
  tokens: readonly Token[],
  day: DayFound,
  event: { readonly beside: string | undefined; readonly known: string | undefined },
): readonly string[] => {
  const [nearest] = day.days
  const at = event.beside ?? event.known
  if (nearest === undefined || at === undefined || !isBareWeekday(tokens, day)) return day.days
  const last = lastBefore(at, weekdayOf(nearest))
  if (last <= nearest) return day.days
  return event.beside === undefined ? [nearest, last] : [last]
}
