import { Temporal } from '@js-temporal/polyfill'
import type { Shift } from '../../../src/domain/calendar/hours.ts'

/** Open minutes as a plain set, each shift's ends asked of Temporal day by day. */
export const openMinutes = (
  zone: string,
  shifts: readonly Shift[],
  days: { readonly first: string; readonly count: number },
): Set<number> => {
  const open = new Set<number>()
  for (let index = 0; index < days.count; index += 1) {
    const day = Temporal.PlainDate.from(days.first).add({ days: index })
    const name = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'][day.dayOfWeek - 1]
    for (const shift of shifts.filter((one) => one.day === name)) {
      const at = (clock: string, later: number): number =>
        day.add({ days: later + (clock === '24:00' ? 1 : 0) }).toZonedDateTime({
          timeZone: zone,
          plainTime: Temporal.PlainTime.from(clock === '24:00' ? '00:00' : clock),
        }).epochMilliseconds / 60_000
      const to = at(shift.to, shift.to <= shift.from ? 1 : 0)
      for (let minute = at(shift.from, 0); minute < to; minute += 1) open.add(minute)
    }
  }
  return open
}

/** The minute after the last of `work` open minutes, walked one by one. */
export const walkForward = (open: ReadonlySet<number>, start: number, work: number, horizon: number): number | null => {
  let left = work
  for (let minute = start; minute < horizon; minute += 1) {
    if (open.has(minute)) left -= 1
    if (left === 0) return minute + 1
  }
  return null
}

/** The first of the last `work` open minutes before `end`. */
export const walkBack = (open: ReadonlySet<number>, end: number, work: number, floor: number): number | null => {
  let left = work
  for (let minute = end - 1; minute >= floor; minute -= 1) {
    if (open.has(minute)) left -= 1
    if (left === 0) return minute
  }
  return null
}

/** The first start from which `work` minutes are open without a break. */
export const walkWhole = (open: ReadonlySet<number>, start: number, work: number, horizon: number): number | null => {
  for (let minute = start; minute < horizon; minute += 1) {
    let run = 0
    while (run < work && open.has(minute + run)) run += 1
    if (run === work) return minute
    minute += run
  }
  return null
}
