import type { Colour } from '../material/material.ts'
import type { Layer } from '../order/order.ts'
import type { Application, ResolvedGarment, ResolvedLayer, ResolvedOrder } from '../order/resolve.ts'
import { pointer } from '../result/result.ts'
import type { ClothFacts, Extent, JobGarment, JobLayer, JobPlace, PressJob } from './job.ts'

type Source = {
  readonly resolved: ResolvedOrder
  readonly colours: readonly Colour[]
  readonly extents: readonly Extent[]
}

/** What the label leaves open is taken from the fabric's record; what nobody knows is taken as the careful case. */
const clothOf = (garment: ResolvedGarment): ClothFacts => {
  const { cloth, fabric } = garment
  const knit = cloth.knit === 'unknown' ? (fabric?.knit ?? 'unknown') : cloth.knit
  return {
    fibres: cloth.fibres === 'unknown' ? (fabric?.fibres ?? 'unknown') : cloth.fibres,
    knit,
    finish: cloth.finish === 'unknown' ? (fabric?.finish ?? 'unknown') : cloth.finish,
    dye: cloth.dye === 'unknown' ? (fabric?.dye ?? 'unknown') : cloth.dye,
    perforated: knit === 'mesh' || knit === 'unknown' || fabric?.perforated === true,
    thin: knit === 'tricot' || fabric?.thin === true,
    marks: knit === 'fleece' || fabric?.marks === true,
    capTenthsC: fabric?.capTenthsC ?? null,
    careDots: garment.order.careDots ?? fabric?.careDots ?? null,
    families: garment.colour.families,
    colour: garment.colour.id,
  }
}

/** An outline of stones runs beside the vinyl it goes round; everything else lies on what is below. */
const lies = (layer: Layer, below: Layer | undefined): JobLayer['lies'] => {
  if (below === undefined) return 'on-cloth'
  if (layer.kind === 'stones') return layer.layout.style === 'outline' ? 'on-cloth' : 'on-layer-below'
  const inside = below.kind === 'stones' && below.layout.style === 'outline' && layer.shape === 'face'
  return inside ? 'on-cloth' : 'on-layer-below'
}

type Stacked = { readonly resolved: ResolvedLayer; readonly below: ResolvedLayer | undefined; readonly at: string }

const layerOf = (source: Source, { resolved, below, at }: Stacked): JobLayer => ({
  id: resolved.id,
  at,
  material: resolved.material,
  lies: lies(resolved.layer, below?.layer),
  families: source.colours.find((colour) => colour.id === resolved.material.colour)?.families ?? [],
})

const greatest = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.max(...values))

/** The top edge below the collar: the place's own offset, or under the place it follows where that one is decorated too. */
const topOf = (application: Application, mates: readonly Application[]): number | null => {
  const { place } = application
  if (place.measuredFrom === 'hem') return null
  const above = mates.find((mate) => mate.place.id === place.follows?.place && mate.decoration.id !== application.decoration.id)
  if (above === undefined || place.follows === null) return place.offsetMicrometres
  const start = topOf(above, [])
  return start === null ? null : start + above.height + place.follows.gapMicrometres
}

/** Where nothing is laid out yet a decoration is as high as it is ordered. */
const reachOf = (
  extents: readonly Extent[],
  here: readonly Application[],
): Pick<JobPlace, 'aboveMicrometres' | 'belowMicrometres'> =>
  extents.length === 0
    ? { aboveMicrometres: 0, belowMicrometres: greatest(here.map((one) => one.height)) }
    : {
        aboveMicrometres: greatest(extents.map((extent) => extent.aboveMicrometres)),
        belowMicrometres: greatest(extents.map((extent) => extent.heightMicrometres - extent.aboveMicrometres)),
      }

const placeOf = (source: Source, garment: string, decoration: string): JobPlace | null => {
  const { applications, layers } = source.resolved
  const here = applications.filter((one) => one.garment === garment && one.decoration.id === decoration)
  const first = here[0]
  if (first === undefined) return null
  const extents = source.extents.filter((extent) => extent.decoration === decoration)
  const stack = layers.get(decoration) ?? []
  const tops = here.map((one) =>
    topOf(
      one,
      applications.filter((mate) => mate.line === one.line),
    ),
  )
  return {
    decoration,
    at: first.at,
    place: first.place.id,
    side: first.place.side,
    near: first.place.near,
    lines: [...new Set(here.map((one) => one.line))],
    layers: stack.map((resolved, index) =>
      layerOf(source, { resolved, below: stack[index - 1], at: `${first.at}${pointer('layers', index)}` }),
    ),
    topMicrometres: tops.includes(null) ? null : greatest(tops.flatMap((top) => top ?? [])),
    ...reachOf(extents, here),
    widthMicrometres: greatest(extents.map((extent) => extent.widthMicrometres)),
    heightMicrometres: greatest(
      extents.length > 0 ? extents.map((extent) => extent.heightMicrometres) : here.map((one) => one.height),
    ),
    askedTenthsC: first.decoration.askedTenthsC ?? null,
  }
}

const garmentOf = (source: Source, garment: ResolvedGarment): JobGarment => {
  const { order, applications } = source.resolved
  const decorations = new Set(applications.filter((one) => one.garment === garment.id).map((one) => one.decoration.id))
  return {
    id: garment.id,
    at: pointer(
      'garments',
      order.garments.findIndex((one) => one.id === garment.id),
    ),
    cloth: clothOf(garment),
    features: garment.features,
    lines: order.roster
      .filter((row) => row.garment === garment.id)
      .map(({ line, quantity, age, fit }) => ({ line, quantity, age, fit })),
    places: [...decorations].flatMap((decoration) => placeOf(source, garment.id, decoration) ?? []),
  }
}

/** The work at the press that a resolved order asks for: per garment its cloth, its lines, and each place with its layers. */
export const jobFromOrder = (source: Source): PressJob => ({
  garments: source.resolved.garments.map((garment) => garmentOf(source, garment)),
})
