/**
 * The open time of a station, person or shop, compiled: sorted, disjoint, half-open intervals of epoch minutes;
 * `before[i]` counts the open minutes of all earlier intervals. `jump` leads from a stretch of 1,024 minutes, counted from `base`, to
 * the first interval that ends after its beginning; an axis of few intervals has none.
 */
export type Axis = {
  readonly starts: Int32Array
  readonly ends: Int32Array
  readonly before: Int32Array
  readonly base: number
  readonly jump: Int32Array
}

export type Interval = { readonly start: number; readonly end: number }

/** Later than any minute of a plan: there is no such time on the axis. */
export const never = 2 ** 30
/** Earlier than any minute of a plan. */
export const neverBefore = -1

/** An axis from intervals in any order; touching and overlapping ones are joined. */
export const axisFrom = (intervals: readonly Interval[]): Axis => {
  const joined: { start: number; end: number }[] = []
  for (const { start, end } of intervals.filter((i) => i.end > i.start).toSorted((a, b) => a.start - b.start)) {
    const last = joined.at(-1)
    if (last !== undefined && start <= last.end) last.end = Math.max(last.end, end)
    else joined.push({ start, end })
  }
  const before = new Int32Array(joined.length)
  let total = 0
  joined.forEach((interval, index) => {
    before[index] = total
    total += interval.end - interval.start
  })
  const ends = Int32Array.from(joined, (i) => i.end)
  return { starts: Int32Array.from(joined, (i) => i.start), ends, before, ...jumpsOf(joined) }
}

const stretch = 10
const fewIntervals = 4

const jumpsOf = (intervals: readonly Interval[]): Pick<Axis, 'base' | 'jump'> => {
  const first = intervals[0]
  const last = intervals.at(-1)
  if (first === undefined || last === undefined || intervals.length <= fewIntervals) return { base: 0, jump: new Int32Array(0) }
  const base = first.start >> stretch
  const jump = new Int32Array((last.end >> stretch) - base + 1)
  let index = 0
  for (let step = 0; step < jump.length; step += 1) {
    while (index < intervals.length - 1 && (intervals[index]?.end ?? 0) <= (base + step) << stretch) index += 1
    jump[step] = index
  }
  return { base, jump }
}

export const intervalsOf = (axis: Axis): readonly Interval[] =>
  Array.from(axis.starts, (start, index) => ({ start, end: axis.ends[index] ?? start }))

/** Open at every minute. */
export const alwaysOpen: Axis = axisFrom([{ start: 0, end: never }])

/** The first interval that ends after `at`. */
const indexAfter = (axis: Axis, at: number): number => {
  const { ends, jump } = axis
  const step = (at >> stretch) - axis.base
  let index = step <= 0 ? 0 : (jump[step < jump.length ? step : jump.length - 1] ?? 0)
  while (index < ends.length && (ends[index] ?? 0) <= at) index += 1
  return index
}

/** The first open minute at or after `at`, or `never`. */
export const nextOpen = (axis: Axis, at: number): number => {
  const index = indexAfter(axis, at)
  const start = axis.starts[index]
  if (start === undefined) return never
  return Math.max(start, at)
}

/** The last minute at or before `at` up to which the axis is open, or `neverBefore`. */
export const lastOpen = (axis: Axis, at: number): number => {
  const index = indexAfter(axis, at)
  const start = axis.starts[index]
  if (start !== undefined && start < at) return at
  return axis.ends[index - 1] ?? neverBefore
}

/** Open minutes before `at`. */
const workBefore = (axis: Axis, at: number): number => {
  const index = indexAfter(axis, at)
  const start = axis.starts[index]
  if (start === undefined) {
    const last = axis.ends.length - 1
    return last < 0 ? 0 : (axis.before[last] ?? 0) + (axis.ends[last] ?? 0) - (axis.starts[last] ?? 0)
  }
  return (axis.before[index] ?? 0) + (at > start ? at - start : 0)
}

export const workBetween = (axis: Axis, from: number, to: number): number =>
  to <= from ? 0 : workBefore(axis, to) - workBefore(axis, from)

/** When `work` open minutes begun at `start` are done: work that fills an evening ends that evening. */
export const finish = (axis: Axis, start: number, work: number): number => {
  if (work <= 0) return start
  const { starts, ends } = axis
  let index = indexAfter(axis, start)
  if (index >= ends.length) return never
  const opens = starts[index] ?? 0
  let from = Math.max(start, opens)
  let rest = work
  while (from + rest > (ends[index] ?? 0)) {
    rest -= (ends[index] ?? 0) - from
    index += 1
    if (index >= ends.length) return never
    from = starts[index] ?? 0
  }
  return from + rest
}

/** The latest minute at which `work` open minutes may begin to be done by `end`: a whole day's work begins that morning. */
export const begin = (axis: Axis, end: number, work: number): number => {
  if (work <= 0) return end
  const { starts, ends } = axis
  let index = indexAfter(axis, end)
  if (index >= ends.length || (starts[index] ?? 0) >= end) index -= 1
  if (index < 0) return neverBefore
  const closes = ends[index] ?? 0
  let to = Math.min(end, closes)
  let rest = work
  while (to - rest < (starts[index] ?? 0)) {
    rest -= to - (starts[index] ?? 0)
    index -= 1
    if (index < 0) return neverBefore
    to = ends[index] ?? 0
  }
  return to - rest
}

/** The earliest start at or after `at` of work that may not be interrupted, or `never`. */
export const beginWhole = (axis: Axis, at: number, work: number): number => {
  for (let index = indexAfter(axis, at); index < axis.ends.length; index += 1) {
    const opens = axis.starts[index] ?? 0
    const from = Math.max(at, opens)
    if (from + work <= (axis.ends[index] ?? 0)) return from
  }
  return never
}

/** The latest start of work that may not be interrupted and is done by `end`, or `neverBefore`. */
export const beginWholeBy = (axis: Axis, end: number, work: number): number => {
  for (let index = Math.min(indexAfter(axis, end), axis.ends.length - 1); index >= 0; index -= 1) {
    const closes = axis.ends[index] ?? 0
    const to = Math.min(end, closes)
    if (to - work >= (axis.starts[index] ?? 0)) return to - work
  }
  return neverBefore
}

/** Open when both are. */
export const intersect = (one: Axis, two: Axis): Axis => {
  const shared: Interval[] = []
  let j = 0
  for (const { start, end } of intervalsOf(one)) {
    while (j < two.ends.length && (two.ends[j] ?? 0) <= start) j += 1
    for (let k = j; k < two.starts.length && (two.starts[k] ?? 0) < end; k += 1) {
      shared.push({ start: Math.max(start, two.starts[k] ?? 0), end: Math.min(end, two.ends[k] ?? 0) })
    }
  }
  return axisFrom(shared)
}

/** Open when the first is and the second is not. */
export const without = (one: Axis, two: Axis): Axis => {
  const closed = intervalsOf(two)
  const gaps = closed.map((interval, index) => ({ start: interval.end, end: closed[index + 1]?.start ?? never }))
  return intersect(one, axisFrom([{ start: 0, end: closed[0]?.start ?? never }, ...gaps]))
}

/** The longest stretch without a closed minute. */
export const longestStretch = (axis: Axis): number =>
  intervalsOf(axis).reduce((most, interval) => Math.max(most, interval.end - interval.start), 0)
