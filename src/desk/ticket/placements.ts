import { type Box, joinBoxes, shiftBox } from '../../domain/geometry/point.ts'
import type { Colour, StoneSettingRecord } from '../../domain/material/material.ts'
import type { Decoration } from '../../domain/order/order.ts'
import type { Application, ResolvedLayer, ResolvedOrder } from '../../domain/order/resolve.ts'
import { topEdge } from '../../domain/order/top-edge.ts'
import { type Art, artBox, type ColourShown, type Ink, pathOf, stonesOf } from '../../domain/ticket/art.ts'
import type { CutGroup, LayerFacts, PlacementFacts } from '../../domain/ticket/facts.ts'
import type { Drawing, LaidApplication } from '../lay-out.ts'
import { colourShown } from './garments.ts'

export type DrawingMeans = { readonly colours: readonly Colour[]; readonly settings: readonly StoneSettingRecord[] }

type Source = DrawingMeans & { readonly resolved: ResolvedOrder; readonly applications: readonly LaidApplication[] }

/** The colour of a material; a record whose colour the shop does not list is shown by its id. */
const colourOf = (source: Source, id: string): ColourShown => {
  const colour = source.colours.find((known) => known.id === id)
  return colour === undefined ? { id, name: id, hex: '#808080' } : colourShown(colour, source.resolved.order.language)
}

const around = (box: Box, margin: number): Box => ({
  left: box.left - margin,
  right: box.right + margin,
  bottom: box.bottom - margin,
  top: box.top + margin,
})

const stoneBoxes = (drawing: Drawing): readonly Box[] =>
  drawing.stones.flatMap(({ layout }) =>
    layout.pieces.map((piece) => {
      const [x, y] = piece.at
      return around(shiftBox(piece.box, { x, y }), layout.setting.hole / 2)
    }),
  )

/** A drawing in the ticket's terms: vinyl as paths, stones as circles of the stone's own size, bottom layer first. */
const artOf = (source: Source, drawing: Drawing): Art => {
  const vinyl = drawing.vinyl.map(({ layer, shape }) => ({
    layer,
    ink: { kind: 'vinyl', colour: colourOf(source, layer.material.colour), path: pathOf(shape.contours) } satisfies Ink,
  }))
  const stones = drawing.stones.map(({ layer, layout }) => ({
    layer,
    ink: {
      kind: 'stones',
      colour: colourOf(source, layer.material.colour),
      diameterMicrometres:
        source.settings.find((setting) => setting.size === layout.setting.size)?.stoneMicrometres ?? layout.setting.hole,
      at: stonesOf(layout),
    } satisfies Ink,
  }))
  const inks: readonly { readonly layer: ResolvedLayer; readonly ink: Ink }[] = [...vinyl, ...stones]
  const box = joinBoxes([drawing.shape.box, ...drawing.vinyl.map(({ shape }) => shape.box), ...stoneBoxes(drawing)])
  return { box: artBox(box), inks: [...inks].sort((a, b) => (a.layer.id < b.layer.id ? -1 : 1)).map(({ ink }) => ink) }
}

const sameRow = (source: Source, application: Application): readonly Application[] =>
  source.resolved.applications.filter((mate) => mate.line === application.line)

/** How much stands on a line's garment in all: the line with most is drawn, so that name and number are one player's. */
const signsOn = (source: Source, application: Application): number =>
  sameRow(source, application).reduce((sum, { text }) => sum + text.length, 0)

/** Sizes that share height and offset share one drawing: that of the line among them with most on it. */
const groupsOf = (source: Source, laid: readonly LaidApplication[]): readonly CutGroup[] => {
  const groups = new Map<string, CutGroup & { readonly drawn: Drawing | null; readonly signs: number }>()
  for (const { application, drawing } of laid) {
    const row = source.resolved.order.roster.find((one) => one.line === application.line)
    if (row === undefined) continue
    const offset = topEdge(application, sameRow(source, application))
    const key = JSON.stringify([row.fit, application.height, offset])
    const known = groups.get(key)
    const signs = signsOn(source, application)
    const fuller = known === undefined || signs > known.signs
    const cut = drawing?.shape.fit.height ?? application.height
    groups.set(key, {
      fit: row.fit,
      sizes: [...new Set([...(known?.sizes ?? []), row.size])],
      heightMicrometres: application.height,
      lowestMicrometres: Math.min(cut, known?.lowestMicrometres ?? cut),
      highestMicrometres: Math.max(cut, known?.highestMicrometres ?? cut),
      offsetMicrometres: offset,
      sample: fuller ? application.text : known.sample,
      art: null,
      drawn: fuller ? drawing : known.drawn,
      signs: fuller ? signs : known.signs,
    })
  }
  return [...groups.values()].map(({ drawn, signs: _, ...group }) => ({
    ...group,
    art: drawn === null ? null : artOf(source, drawn),
  }))
}

const placementOf = (source: Source, decoration: Decoration, garment: string): PlacementFacts | null => {
  const laid = source.applications.filter(
    ({ application }) => application.decoration.id === decoration.id && application.garment === garment,
  )
  const first = laid[0]?.application
  if (first === undefined) return null
  return {
    decoration: decoration.id,
    garment,
    place: first.place.id,
    side: first.place.side,
    content: decoration.content.kind,
    face: decoration.face,
    measuredFrom: first.place.measuredFrom,
    groups: groupsOf(source, laid),
  }
}

const decorationsOf = (resolved: ResolvedOrder): readonly Decoration[] => [
  ...resolved.order.decorations,
  ...resolved.order.roster.flatMap((row) => row.extras ?? []),
]

/** Where each decoration goes on each garment, with one drawing per group of sizes. */
export const placementsOf = (source: Source): readonly PlacementFacts[] =>
  decorationsOf(source.resolved).flatMap((decoration) =>
    source.resolved.garments.flatMap((garment) => placementOf(source, decoration, garment.id) ?? []),
  )

const shapeName = (layer: ResolvedLayer['layer']): 'face' | 'surround' | 'shadow' => {
  if (layer.kind !== 'vinyl' || layer.shape === 'face') return 'face'
  return 'surround' in layer.shape ? 'surround' : 'shadow'
}

const layerFacts = (source: Source, decoration: string, { id, layer, material }: ResolvedLayer): LayerFacts => {
  const common = { id, decoration, colour: colourOf(source, material.colour), material: material.id }
  if (layer.kind === 'stones') return { ...common, kind: 'stones', size: layer.size, style: layer.layout }
  return { ...common, kind: 'vinyl', class: layer.class, shape: shapeName(layer) }
}

/** Every layer by the id that press steps name. */
export const layersOf = (source: Source): readonly LayerFacts[] =>
  [...source.resolved.layers].flatMap(([decoration, layers]) => layers.map((layer) => layerFacts(source, decoration, layer)))
