import type { Auxiliary } from '../material/material.ts'
import { timesFor } from './dwell.ts'
import type { JobLayer, JobPlace } from './job.ts'
import { auxiliaryCap, bestAuxiliary, type Cap, clothCaps, layerCap, lowest, machineMost, softCaps } from './limits.ts'
import type { Machine } from './machine.ts'
import { type Group, groupings, rungsOf } from './rungs.ts'
import { failed, greatest, type HeatContext, type HeatFailure, type Solved, type Under } from './solved.ts'
import { type Range, settingNear } from './thermostat.ts'

/** One full press and the tacks before it, all at one temperature. `mostTenthsC` is already less the swing. */
export type GroupHeat = {
  readonly group: Group
  readonly finished: readonly JobLayer[]
  readonly tenthsC: number
  readonly tackSeconds: number
  readonly seconds: number
  readonly leastTenthsC: number
  readonly leastBy: string
  readonly mostTenthsC: number
  readonly mostBy: string
  readonly cap: Cap
  /** The set point a person asked for; null: the usual one is taken. */
  readonly askedTenthsC: number | null
  readonly overMargin: boolean
}

const capsOver = (context: HeatContext, under: Under): Solved<readonly Cap[]> => {
  const kinds: Auxiliary['kind'][] = ['cover-sheet']
  if (under.group.members.some((layer) => layer.material.kind === 'stone')) kinds.push('tape')
  if (context.inside === 'pillow') kinds.push('pillow')
  const used = kinds.map((kind) => ({ kind, auxiliary: bestAuxiliary(context.auxiliaries, kind) }))
  const missing = used.find((one) => one.auxiliary === null)
  if (missing !== undefined) return failed({ code: 'auxiliary-missing', kind: missing.kind })
  const layers = [...under.group.members, ...under.finished].map(layerCap)
  const auxiliaries = used.flatMap(({ auxiliary }) => (auxiliary === null ? [] : [auxiliaryCap(auxiliary)]))
  return { ok: true, value: [...layers, ...clothCaps(context.cloth), ...auxiliaries] }
}

type Room = {
  readonly leastTenthsC: number
  readonly leastBy: string
  readonly mostTenthsC: number
  readonly mostBy: Cap
}

/** The window all members share with the cloth and the tools, less the swing; what is known from memory narrows it if it can. */
const roomFor = (context: HeatContext, under: Under): Solved<Room> => {
  const caps = capsOver(context, under)
  if (!caps.ok) return caps
  const { machine } = context
  const cap = lowest(caps.value)
  const floor = greatest(
    under.group.members.map((layer) => ({ value: layer.material.window.tenthsC.least, by: layer.material.id })),
  )
  if (cap === null || floor === null) throw new Error('a group without layers')
  const top = Math.min(cap.tenthsC - machine.swingTenthsC, machineMost(machine))
  const mostBy = top < cap.tenthsC - machine.swingTenthsC ? { ...cap, by: machine.id, tenthsC: machineMost(machine) } : cap
  const room = { leastTenthsC: floor.value, leastBy: floor.by, mostTenthsC: top, mostBy }
  if (floor.value > top) return failed({ code: 'no-common-heat', ...room })
  const soft = softCaps(context.cloth).map((one) => one.tenthsC - machine.swingTenthsC)
  const gentle = Math.min(top, ...soft)
  return { ok: true, value: gentle >= floor.value ? { ...room, mostTenthsC: gentle } : room }
}

/** The platen temperature nearest to `wanted` that today's correction leaves on a step of the thermostat; null when none is inside. */
const platenNear = ({ step, correctionTenthsC }: Machine, range: Range, wanted: number): number | null => {
  const dial = (tenths: number): number => tenths + correctionTenthsC
  const inside = { leastTenthsC: dial(range.leastTenthsC), mostTenthsC: dial(range.mostTenthsC) }
  const set = settingNear(step, inside, dial(wanted))
  return set === null ? null : set - correctionTenthsC
}

type Point = Room & { readonly tenthsC: number; readonly overMargin: boolean }

const pointAsked = (context: HeatContext, room: Room, asked: number): Solved<Point> => {
  const hard = Math.min(room.mostBy.tenthsC, machineMost(context.machine))
  if (asked > hard) return failed({ code: 'asked-over-cap', askedTenthsC: asked, cap: room.mostBy })
  const range = { leastTenthsC: room.leastTenthsC, mostTenthsC: hard }
  const set = platenNear(context.machine, range, Math.max(asked, room.leastTenthsC))
  if (set === null) return failed({ code: 'no-setting', ...range })
  return { ok: true, value: { ...room, tenthsC: set, overMargin: set > room.mostTenthsC } }
}

/** The usual point of the layer that asks for least, moved into the window, on a step of the thermostat. */
const pointIn = (context: HeatContext, under: Under): Solved<Point> => {
  const room = roomFor(context, under)
  if (!room.ok) return room
  if (under.asked !== null) return pointAsked(context, room.value, under.asked)
  const { leastTenthsC, mostTenthsC } = room.value
  const usual = Math.min(...under.group.members.map((layer) => layer.material.window.tenthsC.usual))
  const wanted = Math.min(Math.max(usual, leastTenthsC), mostTenthsC)
  const set = platenNear(context.machine, { leastTenthsC, mostTenthsC }, wanted)
  if (set === null) return failed({ code: 'no-setting', leastTenthsC, mostTenthsC })
  return { ok: true, value: { ...room.value, tenthsC: set, overMargin: false } }
}

const solveGroup = (context: HeatContext, under: Under): Solved<GroupHeat> => {
  const point = pointIn(context, under)
  if (!point.ok) return point
  const times = timesFor(context, under)
  if (!times.ok) return times
  const { mostBy, ...rest } = point.value
  return {
    ok: true,
    value: {
      ...rest,
      mostBy: mostBy.by,
      cap: mostBy,
      askedTenthsC: under.asked,
      ...times.value,
      group: under.group,
      finished: under.finished,
    },
  }
}

/** Presses a finished layer meets after its own group, and the longest of them. */
const rePresses = (heats: readonly GroupHeat[], layer: JobLayer): { readonly times: number; readonly seconds: number } => {
  const after = heats.filter((heat) => heat.finished.includes(layer))
  const times = after.reduce((sum, heat) => sum + heat.group.rungs.length, 0)
  return { times, seconds: Math.max(0, ...after.map((heat) => heat.seconds)) }
}

const overPressed = (heats: readonly GroupHeat[]): HeatFailure | null => {
  for (const layer of heats.flatMap((heat) => heat.group.members)) {
    const { times, seconds } = rePresses(heats, layer)
    const allowed = layer.material.rePress
    if (times > allowed.times || seconds > allowed.seconds) return { code: 're-press-not-allowed', layer, times, seconds }
  }
  return null
}

const solveGrouping = (context: HeatContext, groups: readonly Group[], asked: number | null): Solved<readonly GroupHeat[]> => {
  const heats: GroupHeat[] = []
  for (const group of groups) {
    const finished = heats.flatMap((heat) => heat.group.members)
    const heat = solveGroup(context, { group, finished, asked })
    if (!heat.ok) return heat
    heats.push(heat.value)
  }
  const over = overPressed(heats)
  return over === null ? { ok: true, value: heats } : failed(over)
}

/**
 * The setting of every press over places that lie under the platen together: per full press the temperature all its layers
 * share (tenths of °C), the tacks before it and its seconds. Takes as few full presses as the records allow; fails with the
 * limit that stands in the way of the fewest.
 */
export const solveHeat = (context: HeatContext, places: readonly JobPlace[]): Solved<readonly GroupHeat[]> => {
  const asks = places.flatMap((place) => place.askedTenthsC ?? [])
  const asked = asks.length === 0 ? null : Math.max(...asks)
  const tries = groupings(rungsOf(places)).map((groups) => solveGrouping(context, groups, asked))
  const first = tries[0]
  if (first === undefined) throw new Error('no layers to press')
  return tries.find((one) => one.ok) ?? first
}
