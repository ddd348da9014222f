import type { Auxiliary } from '../material/material.ts'
import type { BenchSettings, ClothFacts, JobLayer, JobPlace } from './job.ts'
import { auxiliaryCap, bestAuxiliary, type Cap, clothCaps, layerCap, lowest, machineMost, softCaps } from './limits.ts'
import type { Machine } from './machine.ts'
import { type Group, groupings, rungsOf } from './rungs.ts'
import { settingNear } from './thermostat.ts'

/** Where a set-up is pressed: the cloth under the platen, the machine, and what lies inside the garment. */
export type HeatContext = {
  readonly cloth: ClothFacts
  readonly machine: Machine
  readonly auxiliaries: readonly Auxiliary[]
  readonly settings: BenchSettings
  readonly inside: 'pillow' | 'sheet' | 'none'
}

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
  readonly overMargin: boolean
}

/** Why a set-up cannot be pressed as it stands. */
export type HeatFailure =
  | {
      readonly code: 'no-common-heat'
      readonly leastTenthsC: number
      readonly leastBy: string
      readonly mostTenthsC: number
      readonly mostBy: Cap
    }
  | { readonly code: 'no-setting'; readonly leastTenthsC: number; readonly mostTenthsC: number }
  | { readonly code: 'asked-over-cap'; readonly askedTenthsC: number; readonly cap: Cap }
  | {
      readonly code: 'no-common-time'
      readonly leastSeconds: number
      readonly leastBy: string
      readonly mostSeconds: number
      readonly mostBy: string
    }
  | {
      readonly code: 're-press-not-allowed'
      readonly layer: JobLayer
      readonly times: number
      readonly seconds: number
    }
  | { readonly code: 'auxiliary-missing'; readonly kind: string }

export type Solved<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: HeatFailure }

const failed = (failure: HeatFailure): { readonly ok: false; readonly failure: HeatFailure } => ({ ok: false, failure })

const bounds = <T extends { readonly value: number; readonly by: string }>(
  all: readonly T[],
  better: (a: number, b: number) => boolean,
) => all.reduce<T | null>((best, one) => (best === null || better(one.value, best.value) ? one : best), null)

const least = <T extends { readonly value: number; readonly by: string }>(all: readonly T[]) => bounds(all, (a, b) => a < b)
const greatest = <T extends { readonly value: number; readonly by: string }>(all: readonly T[]) => bounds(all, (a, b) => a > b)

type Under = { readonly group: Group; readonly finished: readonly JobLayer[]; readonly asked: number | null }

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

type Point = Room & { readonly tenthsC: number; readonly overMargin: boolean }

const pointAsked = (context: HeatContext, room: Room, asked: number): Solved<Point> => {
  const hard = Math.min(room.mostBy.tenthsC, machineMost(context.machine))
  if (asked > hard) return failed({ code: 'asked-over-cap', askedTenthsC: asked, cap: room.mostBy })
  const range = { leastTenthsC: room.leastTenthsC, mostTenthsC: hard }
  const set = settingNear(context.machine.step, range, Math.max(asked, room.leastTenthsC))
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
  const set = settingNear(context.machine.step, { leastTenthsC, mostTenthsC }, wanted)
  if (set === null) return failed({ code: 'no-setting', leastTenthsC, mostTenthsC })
  return { ok: true, value: { ...room.value, tenthsC: set, overMargin: false } }
}

/** How many tacks a member has met before the full press: its own rung's and those of the rungs above it. */
export const tacksBefore = (group: Group, layer: JobLayer): number => {
  const own = group.rungs.findIndex((rung) => rung.layers.includes(layer))
  return group.rungs.length - 1 - own
}

type Times = { readonly tackSeconds: number; readonly seconds: number }

/** The greatest seconds asked, within what each member permits in all and each finished layer permits once more. */
const dwellWith = (under: Under, tack: number): Solved<Times> => {
  const { members } = under.group
  const spent = (layer: JobLayer): number => tack * tacksBefore(under.group, layer)
  const floor = greatest(
    members.map((layer) => ({ value: Math.max(1, layer.material.window.seconds.least - spent(layer)), by: layer.material.id })),
  )
  const roofs = [
    ...members.map((layer) => ({ value: layer.material.window.seconds.most - spent(layer), by: layer.material.id })),
    ...under.finished
      .filter((layer) => layer.material.rePress.times > 0)
      .map((layer) => ({ value: layer.material.rePress.seconds, by: layer.material.id })),
  ]
  const roof = least(roofs)
  if (floor === null || roof === null) throw new Error('a group without layers')
  if (floor.value > roof.value) {
    return failed({
      code: 'no-common-time',
      leastSeconds: floor.value,
      leastBy: floor.by,
      mostSeconds: roof.value,
      mostBy: roof.by,
    })
  }
  const asked = Math.max(...members.map((layer) => layer.material.window.seconds.usual))
  return { ok: true, value: { tackSeconds: tack, seconds: Math.min(Math.max(asked, floor.value), roof.value) } }
}

/** Tack lengths that the shop and the records of the tacked layers allow, the usual one first, then shorter, then longer. */
const tackChoices = (context: HeatContext, under: Under): readonly number[] => {
  const tacked = under.group.rungs.slice(0, -1).flatMap((rung) => rung.layers)
  const shop = context.settings.tackSeconds
  const own = tacked.flatMap((layer) => (layer.material.kind === 'vinyl' ? (layer.material.tackSeconds ?? []) : []))
  const low = Math.max(shop.least, ...own.map((one) => one.least))
  const high = Math.min(shop.most, ...own.map((one) => one.most))
  const all = Array.from({ length: Math.max(0, high - low + 1) }, (_, index) => low + index)
  return all.toSorted((a, b) => Math.abs(a - shop.usual) - Math.abs(b - shop.usual) || a - b)
}

const timesFor = (context: HeatContext, under: Under): Solved<Times> => {
  if (under.group.rungs.length === 1) return dwellWith(under, 0)
  const tries = tackChoices(context, under).map((tack) => dwellWith(under, tack))
  const allowed = tries.filter(
    (one) => !one.ok || under.finished.every((layer) => layer.material.rePress.seconds >= one.value.tackSeconds),
  )
  return allowed.find((one) => one.ok) ?? allowed[0] ?? dwellWith(under, context.settings.tackSeconds.usual)
}

const solveGroup = (context: HeatContext, under: Under): Solved<GroupHeat> => {
  const point = pointIn(context, under)
  if (!point.ok) return point
  const times = timesFor(context, under)
  if (!times.ok) return times
  const { mostBy, ...rest } = point.value
  return {
    ok: true,
    value: { ...rest, mostBy: mostBy.by, cap: mostBy, ...times.value, group: under.group, finished: under.finished },
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
