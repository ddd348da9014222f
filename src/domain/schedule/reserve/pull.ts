import { never, workBetween } from '../../calendar/axis.ts'
import { grown, type Lane, makeRoom, type Timelines } from '../timeline/lanes.ts'
import { free } from '../timeline/model.ts'

/** Which operations of these orders can be taken off, as a mark for each operation. */
const marksOf = (lines: Timelines, orders: readonly number[]): Uint8Array => {
  const { model } = lines
  const marks = new Uint8Array(model.work.length)
  for (const order of orders) {
    const range = model.orders[order]
    for (let operation = range?.first ?? 0; operation < (range?.end ?? 0); operation += 1) {
      if (model.state[operation] === free) marks[operation] = 1
    }
  }
  return marks
}

const roomFor = (lane: Lane, room: number): void => {
  if (lane.start.length >= room) return
  lane.start = grown(lane.start, room + 64)
  lane.end = grown(lane.end, room + 64)
  lane.operation = grown(lane.operation, room + 64)
  lane.gap = grown(lane.gap ?? new Int32Array(), room + 64)
}

/** Copies a lane without what is marked; gaps are counted anew only where something was between. */
const thin = (lines: Timelines, station: number, marks: Uint8Array, into: Lane): void => {
  const from = lines.lanes[station]
  const axis = lines.model.stations[station]?.axis
  into.count = 0
  if (from === undefined || axis === undefined) return
  roomFor(into, from.count + 1)
  const { start, end, operation } = into
  const gap = into.gap ?? new Int32Array()
  let count = 0
  let skipped = false
  for (let index = 0; index < from.count; index += 1) {
    const own = from.operation[index] ?? 0
    if (marks[own] === 1) {
      skipped = true
      continue
    }
    const begins = from.start[index] ?? 0
    if (skipped && count > 0) gap[count - 1] = workBetween(axis, end[count - 1] ?? 0, begins)
    start[count] = begins
    end[count] = from.end[index] ?? 0
    operation[count] = own
    gap[count] = from.gap?.[index] ?? never
    skipped = false
    count += 1
  }
  if (count > 0) gap[count - 1] = never
  into.count = count
}

/**
 * Copies timelines onto spare ones without these orders, but for what of them has begun. Nothing of the spare timelines is kept but
 * their memory.
 */
export const pullOff = (lines: Timelines, orders: readonly number[], spare: Timelines): void => {
  const marks = marksOf(lines, orders)
  makeRoom(spare)
  const count = marks.length
  for (const column of ['start', 'end', 'crewing'] as const) spare[column].fill(-1, count).set(lines[column].subarray(0, count))
  for (let operation = 0; operation < marks.length; operation += 1) {
    if (marks[operation] === 0) continue
    spare.start[operation] = -1
    spare.end[operation] = -1
    spare.crewing[operation] = -1
  }
  spare.lanes.forEach((lane, station) => {
    thin(lines, station, marks, lane)
  })
}
