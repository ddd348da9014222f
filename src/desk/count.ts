import type { PlaceId } from '../domain/garment/place.ts'
import { countStones, type StoneLine, type StoneUse, type TemplateLine } from '../domain/layout/count.ts'
import type { StonePiece } from '../domain/layout/layout.ts'
import type { Stone } from '../domain/material/material.ts'
import type { Micrometres } from '../domain/units/units.ts'
import type { LaidApplication } from './lay-out.ts'

/** Stones of one material record (so of one lot), counted over the roster. */
export type MaterialStones = { readonly material: Stone; readonly line: StoneLine }

/** One template, with where it is used, what it is laid out in, and the piece itself with its hole in µm. */
export type PlacedTemplate = TemplateLine & {
  /** What it is brushed for, where others at this place say and measure the same; empty when nothing can be mistaken. */
  readonly on: readonly string[]
  readonly place: PlaceId
  readonly face: string
  readonly heightMicrometres: number
  readonly piece: StonePiece
  readonly hole: Micrometres
}

export type Counted = { readonly stones: readonly MaterialStones[]; readonly templates: readonly PlacedTemplate[] }

type Use = StoneUse & { readonly material: Stone; readonly laid: LaidApplication }

const usesOf = (applications: readonly LaidApplication[]): readonly Use[] =>
  applications.flatMap((laid) =>
    (laid.drawing?.stones ?? []).flatMap(({ layer, layout }) =>
      layer.material.kind === 'stone'
        ? [{ layout, colour: layer.material.colour, quantity: laid.application.quantity, material: layer.material, laid }]
        : [],
    ),
  )

/** What is written on a template: its letters, and whom it is for where others say the same: `2 (12, 20)`. */
export const templateName = ({ text, on }: Pick<PlacedTemplate, 'text' | 'on'>): string =>
  on.length === 0 ? text : `${text} (${on.join(', ')})`

type Found = Omit<PlacedTemplate, 'on'> & { readonly serves: readonly string[] }

const placed = (template: TemplateLine, uses: readonly Use[]): readonly Found[] => {
  const found = uses.flatMap((use) => use.layout.pieces.flatMap((piece) => (piece.key === template.key ? [{ use, piece }] : [])))
  const [first] = found
  if (first === undefined) return []
  const { application } = first.use.laid
  return [
    {
      ...template,
      place: application.place.id,
      face: application.decoration.face,
      heightMicrometres: application.height,
      piece: first.piece,
      hole: first.use.layout.setting.hole,
      serves: [...new Set(found.map(({ use }) => use.laid.application.text))].toSorted(byNumber),
    },
  ]
}

const byNumber = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true })

const looksLike = ({ text, size, colour, place, heightMicrometres }: Found): string =>
  JSON.stringify([text, size, colour, place, heightMicrometres])

/** A number that was narrowed has templates of its own, which to the eye are those of the others. */
const toldApart = (templates: readonly Found[]): readonly PlacedTemplate[] => {
  const alike = new Map<string, number>()
  for (const template of templates) alike.set(looksLike(template), (alike.get(looksLike(template)) ?? 0) + 1)
  return templates.map((found) => {
    const { serves, ...template } = found
    return { ...template, on: (alike.get(looksLike(found)) ?? 0) > 1 ? serves : [] }
  })
}

/** Stones per material record with spare and whole gross, and one template per distinct piece and colour. */
export const countOrder = (applications: readonly LaidApplication[], sparePercent: number): Counted => {
  const uses = usesOf(applications)
  const materials = [...new Map(uses.map((use) => [use.material.id, use.material])).values()]
  const counts = materials.map((material) => ({
    material,
    count: countStones(
      uses.filter((use) => use.material.id === material.id),
      { percent: sparePercent, grossMilligrams: () => material.grossMilligrams },
    ),
  }))
  return {
    stones: counts.flatMap(({ material, count }) => count.stones.map((line) => ({ material, line }))),
    templates: toldApart(countStones(uses, { percent: sparePercent }).templates.flatMap((template) => placed(template, uses))),
  }
}
