import { ironTenthsC } from '../garment/fibre-limits.ts'
import { mayBeChild } from '../order/child.ts'
import { bleedsFromTenthsC, bleedsUnder } from './bleed.ts'
import type { Bench, JobGarment, Material } from './job.ts'
import { softCaps } from './limits.ts'
import type { Gate, Heat } from './press-plan.ts'
import { repellenceSuspected, smallSharePercent, unnamedFibres } from './suspicions.ts'

const gate = (garment: JobGarment, code: Gate['code'], rest: Partial<Gate>): Gate => ({
  code,
  garment: garment.id,
  subject: garment.id,
  blocks: 'pressing',
  waitMinutes: 0,
  ...rest,
})

const materialsOf = (garment: JobGarment): readonly Material[] => [
  ...new Map(garment.places.flatMap((place) => place.layers).map(({ material }) => [material.id, material])).values(),
]

/** Heat that a garment meets, the swing on top; null when it is not pressed. */
const hottest = (garment: JobGarment, heats: readonly Heat[]): number | null => {
  const own = heats.filter((heat) => heat.garment === garment.id)
  return own.length === 0 ? null : Math.max(...own.map((heat) => heat.tenthsC + heat.swingTenthsC))
}

/** Whether something about the cloth is only known after one piece was pressed and tried with the nail. */
const wantsTestPress = (garment: JobGarment, heats: readonly Heat[]): boolean => {
  const { cloth } = garment
  const heat = hottest(garment, heats) ?? 0
  const overIron = cloth.careDots !== null && heat > ironTenthsC[cloth.careDots]
  const unnamed = materialsOf(garment).some((material) =>
    unnamedFibres(garment, material.takesFibres).some((share) => share.percent >= smallSharePercent),
  )
  const soft = softCaps(cloth).some((cap) => heat > cap.tenthsC)
  return cloth.finish === 'repellent' || repellenceSuspected(cloth) === 'nylon' || overIron || unnamed || soft
}

const bleeds = (garment: JobGarment, heats: readonly Heat[]): boolean =>
  bleedsUnder(garment).some(({ layer }) =>
    heats.some(
      (heat) =>
        heat.garment === garment.id && heat.layers.includes(layer.id) && heat.tenthsC + heat.swingTenthsC >= bleedsFromTenthsC,
    ),
  )

/** Lots of stones that go on children's wear: the certificate of each lot is looked at before it is pressed. */
const certificates = (garment: JobGarment): readonly Gate[] => {
  const children = garment.lines.filter(mayBeChild).map((line) => line.line)
  const worn = garment.places.filter((place) => place.lines.some((line) => children.includes(line)))
  const stones = worn.flatMap((place) => place.layers.filter((layer) => layer.material.kind === 'stone'))
  const lots = [...new Set(stones.map(({ material }) => `${material.id} ${material.lot}`))]
  return lots.map((lot) => gate(garment, 'certificate', { subject: lot }))
}

/** Lots of stones that are new to the shop: a coupon is cut and brushed first, because their hole is not known yet. */
const coupons = (garments: readonly JobGarment[]): readonly Gate[] => {
  const stones = garments.flatMap(materialsOf).flatMap((material) => (material.kind === 'stone' ? [material] : []))
  const lots = stones.filter((stone) => stone.coupon === undefined).map(({ id, lot }) => `${id} ${lot}`)
  return [...new Set(lots)].map((subject) => ({ code: 'coupon', garment: null, subject, blocks: 'cutting', waitMinutes: 0 }))
}

/**
 * Neck or hood strings on a child's outerwear (16 CFR 1120, quoted): the owner is told and looks before anything is pressed. A child's
 * cut of which nobody said the age is looked at, too.
 */
const mayHaveStrings = ({ features, lines }: JobGarment): boolean =>
  (features.includes('hood') || features.includes('strings')) && lines.some(mayBeChild)

const gatesFor = (bench: Bench, garment: JobGarment, heats: readonly Heat[]): readonly Gate[] => {
  const gates: Gate[] = [gate(garment, 'count-in', { blocks: 'cutting' })]
  if (mayHaveStrings(garment)) gates.push(gate(garment, 'strings', {}))
  if (garment.cloth.finish === 'unknown' || repellenceSuspected(garment.cloth) !== null)
    gates.push(gate(garment, 'water-drops', {}))
  if (wantsTestPress(garment, heats)) gates.push(gate(garment, 'test-press', {}))
  if (bleeds(garment, heats)) gates.push(gate(garment, 'bleed-test', { waitMinutes: bench.settings.bleedWaitMinutes }))
  return [...gates, ...certificates(garment), gate(garment, 'first-piece', { blocks: 'run' })]
}

/**
 * What must be found right first: a coupon for every new lot of stones, then per garment in this order: count-in, strings, water drops,
 * test press, bleed test, certificates by lot, first piece. A bleed test waits the shop's time (24 h as a rule) before it opens.
 */
export const gatesOf = (bench: Bench, garments: readonly JobGarment[], heats: readonly Heat[]): readonly Gate[] => {
  const pressed = garments.filter((garment) => garment.places.length > 0)
  return [...coupons(pressed), ...pressed.flatMap((garment) => gatesFor(bench, garment, heats))]
}
