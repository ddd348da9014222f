import type { Cloth, Fabric, Feature, Garment } from '../garment/garment.ts'
import type { Place } from '../garment/place.ts'
import type { Colour, Stone, Vinyl } from '../material/material.ts'
import type { Problem, Result } from '../result/result.ts'
import { ok, pointer } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import type { Catalogue } from './catalogue.ts'
import { chooseMaterial } from './choose-material.ts'
import type { Decoration, Layer, Order, OrderGarment, Row } from './order.ts'
import type { OrderProblem } from './problems.ts'

export type ResolvedGarment = {
  readonly id: string
  readonly order: OrderGarment
  readonly record: Garment | null
  readonly fabric: Fabric | null
  readonly cloth: Cloth
  readonly features: readonly Feature[]
  readonly colour: Colour
}

export type ResolvedLayer = { readonly id: string; readonly layer: Layer; readonly material: Vinyl | Stone }

/** One decoration as it is put on one row's garment. `text` is what is read; `freeWidth` the flat cloth there. */
export type Application = {
  readonly line: number
  readonly garment: string
  readonly decoration: Decoration
  readonly at: string
  readonly place: Place
  readonly text: string
  readonly height: Micrometres
  readonly freeWidth: Micrometres
  readonly quantity: number
}

export type ResolvedOrder = {
  readonly order: Order
  readonly garments: readonly ResolvedGarment[]
  readonly applications: readonly Application[]
  /** Layers of every decoration, bottom first, by decoration id. */
  readonly layers: ReadonlyMap<string, readonly ResolvedLayer[]>
  readonly problems: readonly Problem[]
}

type Found<T> = { readonly value: T | null; readonly problems: readonly OrderProblem[] }

const stop = <T>(problem: OrderProblem): Found<T> => ({ value: null, problems: [problem] })

/** What the shop cannot get of a garment it sells: the colour, or a size cut that the roster asks for. */
const notSold = (order: Order, index: number, record: Garment): readonly OrderProblem[] => {
  const garment = order.garments[index]
  if (garment === undefined || garment.from === 'customer') return []
  const cuts = order.roster.flatMap((row, line): OrderProblem[] => {
    const sold = row.size === 'later' || record.cuts.some((cut) => cut.fit === row.fit && cut.size === row.size)
    if (row.garment !== garment.id || sold) return []
    const facts = { garment: record.id, fit: row.fit, size: row.size, line: row.line }
    return [{ code: 'cut-not-sold', at: pointer('roster', line, 'size'), severity: 'stop', facts }]
  })
  if (record.colours.includes(garment.colour)) return cuts
  const facts = { garment: record.id, colour: garment.colour, sold: record.colours }
  return [{ code: 'colour-not-sold', at: pointer('garments', index, 'colour'), severity: 'stop', facts }, ...cuts]
}

const resolveGarment = (catalogue: Catalogue, order: Order, index: number): Found<ResolvedGarment> => {
  const garment = order.garments[index]
  if (garment === undefined) return { value: null, problems: [] }
  const at = pointer('garments', index)
  const colour = catalogue.colours.find((known) => known.id === garment.colour)
  if (colour === undefined) {
    const known = catalogue.colours.map((one) => one.id)
    return stop({ code: 'colour-unknown', at: `${at}/colour`, severity: 'stop', facts: { id: garment.colour, known } })
  }
  const record = catalogue.garments.find((sold) => sold.id === garment.catalogue)
  if (garment.catalogue !== undefined && record === undefined) {
    const sold = catalogue.garments.map((one) => one.id)
    return stop({ code: 'garment-not-sold', at: `${at}/catalogue`, severity: 'stop', facts: { id: garment.catalogue, sold } })
  }
  const fabric = catalogue.fabrics.find((known) => known.id === record?.fabric) ?? null
  const { fibres, knit, finish, dye } = garment
  const features = [...new Set([...garment.features, ...(record?.features ?? [])])]
  return {
    value: {
      id: garment.id,
      order: garment,
      record: record ?? null,
      fabric,
      cloth: { fibres, knit, finish, dye },
      features,
      colour,
    },
    problems: record === undefined ? [] : notSold(order, index, record),
  }
}

const textFor = (decoration: Decoration, row: Row): string | null => {
  switch (decoration.content.kind) {
    case 'number':
      return row.number ?? null
    case 'name':
      return row.name ?? null
    case 'text':
      return decoration.content.text
    case 'artwork':
      return ''
  }
}

const missingText = (decoration: Decoration, row: Row, at: string): readonly OrderProblem[] => {
  const facts = { line: row.line, decoration: decoration.id }
  if (decoration.content.kind === 'number') return [{ code: 'row-without-number', at, severity: 'note', facts }]
  return [{ code: 'row-without-name', at, severity: 'note', facts }]
}

type Wanted = { readonly decoration: Decoration; readonly row: Row; readonly at: string; readonly rowAt: string }

const apply = (catalogue: Catalogue, wanted: Wanted): Found<Application> => {
  const { decoration, row, at, rowAt } = wanted
  const text = textFor(decoration, row)
  if (text === null) return { value: null, problems: missingText(decoration, row, rowAt) }
  const place = catalogue.places.find((known) => known.id === decoration.place)
  const figures = place?.bySize.find((entry) => entry.fit === row.fit && entry.sizes.includes(row.size))
  if (place === undefined || figures === undefined) {
    const facts = { place: decoration.place, fit: row.fit, size: row.size }
    return stop({ code: 'place-without-figures', at: `${at}/place`, severity: 'stop', facts })
  }
  const height = 'micrometres' in decoration.height ? decoration.height.micrometres : figures.heightMicrometres
  const { line, garment, quantity } = row
  const freeWidth = micrometres(figures.freeWidthMicrometres)
  return { value: { line, garment, decoration, at, place, text, height: micrometres(height), freeWidth, quantity }, problems: [] }
}

const wantedOf = (order: Order, index: number): readonly Wanted[] => {
  const row = order.roster[index]
  if (row === undefined) return []
  const rowAt = pointer('roster', index)
  const common = order.decorations.flatMap((decoration, place) =>
    decoration.on.includes(row.garment) && !(row.without ?? []).includes(decoration.id)
      ? [{ decoration, row, at: pointer('decorations', place), rowAt }]
      : [],
  )
  const extras = (row.extras ?? []).map((decoration, place) => ({
    decoration,
    row,
    at: `${rowAt}${pointer('extras', place)}`,
    rowAt,
  }))
  return [...common, ...extras]
}

const layersOf = (catalogue: Catalogue, decoration: Decoration, at: string) =>
  decoration.layers.map((layer, index) => ({
    id: `${decoration.id}-${index + 1}`,
    layer,
    choice: chooseMaterial(catalogue, layer, `${at}${pointer('layers', index)}`),
  }))

const decorationProblems = (catalogue: Catalogue, decoration: Decoration, at: string): readonly OrderProblem[] => {
  const problems: OrderProblem[] = []
  if (!catalogue.faces.includes(decoration.face)) {
    const facts = { face: decoration.face, offered: catalogue.faces }
    problems.push({ code: 'face-not-offered', at: `${at}/face`, severity: 'stop', facts })
  }
  if (decoration.content.kind === 'artwork') {
    const facts = { decoration: decoration.id, file: decoration.content.file }
    problems.push({ code: 'artwork-needs-a-person', at: `${at}/content`, severity: 'needs-test', facts })
  }
  return problems
}

const everyDecoration = (order: Order) => [
  ...order.decorations.map((decoration, index) => ({ decoration, at: pointer('decorations', index) })),
  ...order.roster.flatMap((row, line) =>
    (row.extras ?? []).map((decoration, index) => ({ decoration, at: pointer('roster', line, 'extras', index) })),
  ),
]

const unworn = (order: Order, applications: readonly Application[]): readonly OrderProblem[] =>
  order.decorations.flatMap((decoration, index) =>
    applications.some((one) => one.decoration.id === decoration.id)
      ? []
      : [
          {
            code: 'decoration-on-nobody',
            at: pointer('decorations', index),
            severity: 'caution',
            facts: { decoration: decoration.id },
          } as const,
        ],
  )

const sizesLater = (order: Order): readonly OrderProblem[] =>
  order.roster.flatMap((row, index) =>
    row.size === 'later'
      ? [{ code: 'size-later', at: pointer('roster', index, 'size'), severity: 'note', facts: { line: row.line } } as const]
      : [],
  )

/**
 * Looks up everything an order names: cloth of each garment, the material record of each layer, and for each roster row what
 * is put where, how high (µm) and how much flat cloth there is. Stops are returned as problems, the rest rides along.
 */
export const resolveOrder = (order: Order, catalogue: Catalogue): Result<ResolvedOrder> => {
  const garments = order.garments.map((_, index) => resolveGarment(catalogue, order, index))
  const decorations = everyDecoration(order)
  const layers = decorations.map(({ decoration, at }) => ({ id: decoration.id, layers: layersOf(catalogue, decoration, at) }))
  const found = order.roster.flatMap((_, index) => wantedOf(order, index)).map((wanted) => apply(catalogue, wanted))
  const applications = found.flatMap((one) => (one.value === null ? [] : [one.value]))
  const problems: readonly Problem[] = [
    ...garments.flatMap((one) => one.problems),
    ...decorations.flatMap(({ decoration, at }) => decorationProblems(catalogue, decoration, at)),
    ...layers.flatMap((one) => one.layers.flatMap(({ choice }) => (choice.ok ? [] : choice.problems))),
    ...found.flatMap((one) => one.problems),
    ...unworn(order, applications),
    ...sizesLater(order),
  ]
  if (problems.some((problem) => problem.severity === 'stop')) return { ok: false, problems }
  return ok({
    order,
    garments: garments.flatMap((one) => (one.value === null ? [] : [one.value])),
    applications,
    layers: new Map(
      layers.map((one) => [
        one.id,
        one.layers.flatMap(({ id, layer, choice }) => (choice.ok ? [{ id, layer, material: choice.value }] : [])),
      ]),
    ),
    problems,
  })
}
