/**
 * The open time of a station, person or shop, compiled: sorted, disjoint, half-open intervals of epoch minutes;
 * `before[i]` counts the open minutes of all earlier intervals, `longest` those of the longest one. `jump` leads from a stretch of
 * 1,024 minutes, counted from `base`, to the first interval that ends after its beginning; an axis of few intervals has none.
 */
export type Axis = {
  readonly starts: Int32Array
  readonly ends: Int32Array
  readonly before: Int32Array
  readonly longest: number
  readonly base: number
  readonly jump: Int32Array
}

/** Half-open: from the minute `start` up to, not including, `end`, in epoch minutes. */
export type Interval = { readonly start: number; readonly end: number }

/** Later than any minute of a plan: there is no such time on the axis. */
export const never = 2 ** 30
/** Earlier than any minute of a plan. */
export const neverBefore = -1

/** An axis from intervals in any order; touching and overlapping ones are joined. */
export const axisFrom = (intervals: readonly Interval[]): Axis =>
  axisFromSorted(intervals.filter((one) => one.end > one.start).toSorted((a, b) => a.start - b.start))

/** An axis from intervals that are sorted by their start and not empty; touching and overlapping ones are joined. */
const axisFromSorted = (intervals: readonly Interval[]): Axis => {
  const starts = new Int32Array(intervals.length)
  const ends = new Int32Array(intervals.length)
  let count = 0
  for (const { start, end } of intervals) {
    if (count > 0 && start <= (ends[count - 1] ?? 0)) ends[count - 1] = Math.max(ends[count - 1] ?? 0, end)
    else {
      starts[count] = start
      ends[count] = end
      count += 1
    }
  }
  return compiled(starts.slice(0, count), ends.slice(0, count))
}

const compiled = (starts: Int32Array, ends: Int32Array): Axis => {
  const before = new Int32Array(starts.length)
  let open = 0
  let longest = 0
  for (let index = 0; index < starts.length; index += 1) {
    before[index] = open
    const length = (ends[index] ?? 0) - (starts[index] ?? 0)
    open += length
    if (length > longest) longest = length
  }
  return { starts, ends, before, longest, ...jumpsOf(starts, ends) }
}

const stretch = 10
const fewIntervals = 4

/** Whatever lies behind the beginning of the last interval leads to it, so that is as far as jumps go. */
const jumpsOf = (starts: Int32Array, ends: Int32Array): Pick<Axis, 'base' | 'jump'> => {
  const { length } = starts
  if (length <= fewIntervals) return { base: 0, jump: new Int32Array(0) }
  const base = (starts[0] ?? 0) >> stretch
  const jump = new Int32Array(((starts[length - 1] ?? 0) >> stretch) - base + 1)
  let index = 0
  for (let step = 0; step < jump.length; step += 1) {
    while (index < length - 1 && (ends[index] ?? 0) <= (base + step) << stretch) index += 1
    jump[step] = index
  }
  return { base, jump }
}

/** The open intervals of an axis, in the order of time. */
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

/** Open minutes from one epoch minute up to another; 0 when the second is not later. */
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
  const starts = new Int32Array(one.starts.length + two.starts.length)
  const ends = new Int32Array(starts.length)
  let count = 0
  for (let i = 0, j = 0; i < one.starts.length && j < two.starts.length; ) {
    const end = Math.min(one.ends[i] ?? 0, two.ends[j] ?? 0)
    const start = Math.max(one.starts[i] ?? 0, two.starts[j] ?? 0)
    if (start < end) {
      starts[count] = start
      ends[count] = end
      count += 1
    }
    if ((one.ends[i] ?? 0) === end) i += 1
    else j += 1
  }
  return compiled(starts.slice(0, count), ends.slice(0, count))
}

/** Open when the other is not, from minute 0 on. */
const opposite = ({ starts, ends }: Axis): Axis => {
  const from = Int32Array.from([0, ...ends])
  const to = Int32Array.from([...starts, never])
  const first = to[0] === 0 ? 1 : 0
  const last = from.at(-1) === never ? from.length - 1 : from.length
  return compiled(from.slice(first, last), to.slice(first, last))
}

/** Open when the first is and the second is not. */
export const without = (one: Axis, two: Axis): Axis => (two.starts.length === 0 ? one : intersect(one, opposite(two)))
