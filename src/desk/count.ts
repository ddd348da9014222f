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

const placed = (template: TemplateLine, uses: readonly Use[]): readonly PlacedTemplate[] => {
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
    },
  ]
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
    templates: countStones(uses, { percent: sparePercent }).templates.flatMap((template) => placed(template, uses)),
  }
}
