import type { Fit, Size } from '../garment/garment.ts'
import type { PlaceId } from '../garment/place.ts'
import type { CutGroup, GarmentFacts, PlacementFacts } from './facts.ts'
import { type Silhouette, silhouette } from './silhouette.ts'

/** A placement with the group of sizes it is drawn for, and the left top corner of its ink in the view. */
export type LaidMark = {
  readonly placement: PlacementFacts
  readonly group: CutGroup
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  /** The place this one hangs under, where it is measured from another place. */
  readonly under: PlaceId | null
}

export type LaidView = { readonly side: 'front' | 'back'; readonly shape: Silhouette; readonly marks: readonly LaidMark[] }

/** Sizes that share every drawing of a garment. */
export type SizeSet = {
  readonly fit: Fit
  readonly sizes: readonly Size[]
  readonly pairs: readonly (readonly [PlacementFacts, CutGroup])[]
}

/** The sizes of a garment that are drawn alike, fit by fit. */
export const sizeSets = (garment: GarmentFacts, placements: readonly PlacementFacts[]): readonly SizeSet[] => {
  const found = new Map<string, { fit: Fit; sizes: Size[]; pairs: (readonly [PlacementFacts, CutGroup])[] }>()
  for (const { fit, size } of garment.sizes) {
    const pairs = placements.flatMap((placement): readonly (readonly [PlacementFacts, CutGroup])[] => {
      const group = placement.groups.find((one) => one.fit === fit && one.sizes.includes(size))
      return placement.garment === garment.id && group !== undefined ? [[placement, group]] : []
    })
    const key = [fit, ...pairs.map(([placement, group]) => `${placement.decoration}/${placement.groups.indexOf(group)}`)].join(
      ' ',
    )
    const known = found.get(key)
    if (known === undefined) found.set(key, { fit, sizes: [size], pairs })
    else known.sizes.push(size)
  }
  return [...found.values()]
}

/** How far from the middle line a place lies, in shares of the distance to the sleeve; plus is the wearer's left. */
const ACROSS: Partial<Readonly<Record<PlaceId, number>>> = {
  'left-chest': 0.3,
  'right-chest': -0.3,
  'left-shoulder': 0.5,
  'right-shoulder': -0.5,
  'left-leg': 0.5,
  'right-leg': -0.5,
  'left-sleeve': 1,
  'right-sleeve': -1,
}

const sideOf = (placement: PlacementFacts): 'front' | 'back' => (placement.side === 'back' ? 'back' : 'front')

const isSleeve = (placement: PlacementFacts): boolean => placement.side === 'left-sleeve' || placement.side === 'right-sleeve'

const inkOf = (group: CutGroup): { readonly width: number; readonly height: number } =>
  group.art === null
    ? { width: group.heightMicrometres, height: group.heightMicrometres }
    : { width: group.art.box.right - group.art.box.left, height: group.art.box.bottom - group.art.box.top }

const topOf = (shape: Silhouette, [placement, group]: readonly [PlacementFacts, CutGroup], above: number): number => {
  const { height } = inkOf(group)
  if (isSleeve(placement)) return shape.sleeve[1] - group.offsetMicrometres - height
  if (placement.measuredFrom === 'hem') return shape.hemY - group.offsetMicrometres - height
  if (placement.measuredFrom === 'other-place') return above + group.offsetMicrometres
  return shape.collarY + group.offsetMicrometres
}

const layMarks = (shape: Silhouette, pairs: SizeSet['pairs']): readonly LaidMark[] => {
  const marks: LaidMark[] = []
  const ordered = [...pairs].sort(
    ([a], [b]) => Number(a.measuredFrom === 'other-place') - Number(b.measuredFrom === 'other-place'),
  )
  for (const [placement, group] of ordered) {
    const turned = sideOf(placement) === 'back' ? -1 : 1
    const middle = shape.middle + (ACROSS[placement.place] ?? 0) * turned * shape.sleeve[0]
    const ink = inkOf(group)
    const lowest = marks.reduce<LaidMark | null>(
      (low, mark) => (low === null || mark.top + mark.height > low.top + low.height ? mark : low),
      null,
    )
    const above = lowest === null ? shape.collarY : lowest.top + lowest.height
    const top = Math.max(0, topOf(shape, [placement, group], above))
    const under = placement.measuredFrom === 'other-place' ? (lowest?.placement.place ?? null) : null
    marks.push({ placement, group, left: Math.round(middle - ink.width / 2), top: Math.round(top), ...ink, under })
  }
  return marks
}

/** Front and back of a garment in one set of sizes, drawn to scale: every mark where its placement puts it. */
export const viewsOf = (garment: GarmentFacts, set: SizeSet): readonly LaidView[] => {
  const [size] = set.sizes
  if (size === undefined) return []
  const laid = { kind: garment.kind, fit: set.fit, size, zipped: garment.features.includes('full-zip') }
  return (['front', 'back'] as const).flatMap((side) => {
    const pairs = set.pairs.filter(([placement]) => sideOf(placement) === side)
    const shape = silhouette(laid, side)
    return pairs.length === 0 ? [] : [{ side, shape, marks: layMarks(shape, pairs) }]
  })
}
