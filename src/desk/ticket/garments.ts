import type { Colour } from '../../domain/material/material.ts'
import type { Row } from '../../domain/order/order.ts'
import type { ResolvedGarment, ResolvedOrder } from '../../domain/order/resolve.ts'
import type { ColourShown } from '../../domain/ticket/art.ts'
import type { GarmentFacts, Language, RosterFacts, RowMark, SizeCount } from '../../domain/ticket/facts.ts'
import type { LaidApplication } from '../lay-out.ts'

/** A colour as people read it: its first name in the language. */
export const colourShown = (colour: Colour, language: Language): ColourShown => ({
  id: colour.id,
  name: colour.names[language][0] ?? colour.id,
  hex: colour.hex,
})

const sizesOf = (rows: readonly Row[]): readonly SizeCount[] => {
  const counted = new Map<string, SizeCount>()
  for (const { fit, size, quantity } of rows) {
    const key = `${fit} ${size}`
    counted.set(key, { fit, size, quantity: (counted.get(key)?.quantity ?? 0) + quantity })
  }
  return [...counted.values()]
}

const garmentFacts = (resolved: ResolvedOrder, garment: ResolvedGarment): GarmentFacts => {
  const { language, roster } = resolved.order
  const { fibres, knit, finish, dye } = garment.cloth
  return {
    id: garment.id,
    name: garment.record?.name[language] ?? garment.id,
    kind: garment.record?.kind ?? 'jersey',
    colour: colourShown(garment.colour, language),
    fibres,
    knit,
    finish,
    dye,
    features: garment.features,
    from: garment.order.from,
    sizes: sizesOf(roster.filter((row) => row.garment === garment.id)),
  }
}

/** Whether a text came out lower or narrower than it was asked for. */
const fittedOf = ({ application, drawing }: LaidApplication): Pick<RowMark, 'fitted'> => {
  if (drawing === null) return {}
  const { height, condensedPercent } = drawing.shape.fit
  const lower = height < application.height ? height : null
  const percent = condensedPercent < 100 ? condensedPercent : null
  return lower === null && percent === null ? {} : { fitted: { heightMicrometres: lower, percent } }
}

const marksOf = (laid: readonly LaidApplication[], row: Row): readonly RowMark[] =>
  laid
    .filter(({ application }) => application.line === row.line)
    .map((one): RowMark => {
      const { decoration, place, text } = one.application
      return { decoration: decoration.id, place: place.id, text, ...fittedOf(one) }
    })

type Laid = { readonly resolved: ResolvedOrder; readonly applications: readonly LaidApplication[] }

const rosterFacts = ({ resolved, applications }: Laid, row: Row): RosterFacts => ({
  line: row.line,
  garment: row.garment,
  fit: row.fit,
  size: row.size,
  number: row.number ?? null,
  name: row.name ?? null,
  quantity: row.quantity,
  age: row.age,
  marks: marksOf(applications, row),
  extras: (row.extras ?? []).map((extra) => extra.id),
  without: (row.without ?? []).flatMap((id) => resolved.order.decorations.find((one) => one.id === id)?.place ?? []),
  note: row.note ?? null,
})

/** The garments of an order with their sizes added up. */
export const garmentsOf = (resolved: ResolvedOrder): readonly GarmentFacts[] =>
  resolved.garments.map((garment) => garmentFacts(resolved, garment))

/** Every roster line with all that stands on it. */
export const rosterOf = (laid: Laid): readonly RosterFacts[] => laid.resolved.order.roster.map((row) => rosterFacts(laid, row))
