import type { JobLayer } from './job.ts'
import type { Group } from './rungs.ts'
import { failed, greatest, type HeatContext, least, type Solved, type Under } from './solved.ts'

/** How many tacks a member has met before the full press: its own rung's and those of the rungs above it. */
const tacksBefore = (group: Group, layer: JobLayer): number => {
  const own = group.rungs.findIndex((rung) => rung.layers.includes(layer))
  return group.rungs.length - 1 - own
}

type Times = { readonly tackSeconds: number; readonly seconds: number }

/** The greatest seconds asked, within what each member permits in all and each finished layer permits once more. */
const dwellWith = (context: HeatContext, under: Under, tack: number): Solved<Times> => {
  const { members } = under.group
  const spent = (layer: JobLayer): number => tack * tacksBefore(under.group, layer)
  const floor = greatest(
    members.map((layer) => ({ value: Math.max(1, layer.material.window.seconds.least - spent(layer)), by: layer.material.id })),
  )
  const roofs = [
    ...members.map((layer) => ({ value: layer.material.window.seconds.most - spent(layer), by: layer.material.id })),
    ...[...under.finished, ...context.below]
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

export const timesFor = (context: HeatContext, under: Under): Solved<Times> => {
  if (under.group.rungs.length === 1) return dwellWith(context, under, 0)
  const tacks = tackChoices(context, under)
  const first = under.group.rungs[0]?.layers[0]
  const [usual] = tacks
  if (usual === undefined) {
    const { least: low, most: high } = context.settings.tackSeconds
    const by = first?.material.id ?? ''
    return failed({ code: 'no-common-time', leastSeconds: low, leastBy: by, mostSeconds: high, mostBy: by })
  }
  const spent = under.finished.find((layer) => layer.material.rePress.seconds < Math.min(...tacks))
  if (spent !== undefined) {
    return failed({ code: 're-press-not-allowed', layer: spent, times: under.group.rungs.length, seconds: Math.min(...tacks) })
  }
  const bearable = tacks.filter((tack) => under.finished.every((layer) => layer.material.rePress.seconds >= tack))
  const tries = bearable.map((tack) => dwellWith(context, under, tack))
  return tries.find((one) => one.ok) ?? tries[0] ?? dwellWith(context, under, usual)
}
