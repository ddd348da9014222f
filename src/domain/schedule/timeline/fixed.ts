import { finish, never } from '../../calendar/axis.ts'
import { emptyTimelines, put, spanAfter, type Timelines } from './lanes.ts'
import { free, type Model, over } from './model.ts'

/** Lays down what cannot move any more: work that has begun, and the ends of work that is over. */
const placeFixed = (lines: Timelines): void => {
  const { model } = lines
  for (let operation = 0; operation < model.work.length; operation += 1) {
    const state = model.state[operation]
    if (state === free) continue
    const start = model.fixedStart[operation] ?? 0
    if (state === over) {
      lines.start[operation] = start
      lines.end[operation] = start
      continue
    }
    const crewing = model.ways[model.waysOf[operation] ?? 0]?.find((one) => isFree(lines, one, start)) ?? -1
    put(lines, operation, { start, end: endOfBegun(model, operation, crewing), crewing })
  }
}

const endOfBegun = (model: Model, operation: number, crewing: number): number => {
  const axis = model.crewings[crewing]?.axis
  const start = model.fixedStart[operation] ?? 0
  const work = model.work[operation] ?? 0
  const end = axis === undefined ? start + work : finish(axis, start, work)
  return Math.max(end === never ? start + work : end, model.now, start + 1)
}

const isFree = (lines: Timelines, crewing: number, at: number): boolean =>
  lines.model.crewings[crewing]?.stations.every((station) => {
    const lane = lines.lanes[station]
    return lane === undefined || spanAfter(lane, at) === lane.count
  }) ?? false

/** Timelines that carry only what cannot move. */
export const fixedTimelines = (model: Model): Timelines => {
  const lines = emptyTimelines(model)
  placeFixed(lines)
  return lines
}
