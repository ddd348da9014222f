import type { PlaceId } from '../domain/garment/place.ts'
import { countStones, type StoneLine, type StoneUse, type TemplateLine } from '../domain/layout/count.ts'
import type { StonePiece } from '../domain/layout/layout.ts'
import type { Stone } from '../domain/material/material.ts'
import type { Micrometres } from '../domain/units/units.ts'
import type { LaidApplication } from './lay-out.ts'

/** Stones of one material record (so of one lot), counted over the roster. */
export type MaterialStones = { readonly material: Stone; readonly line: StoneLine }

/** The texts of one place that a template is brushed for. */
export type Serves = { readonly place: PlaceId; readonly texts: readonly string[] }

/** One template, with where it is used, what it is laid out in, and the piece itself with its hole in µm. */
export type PlacedTemplate = TemplateLine & {
  /** Its number on the ticket, its cut sheet and its print, from 1. */
  readonly no: number
  readonly places: readonly PlaceId[]
  /** What it is brushed for; empty when that is every text of its places that has its letters. */
  readonly on: readonly Serves[]
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

/** What is written on a template: its number on the ticket and its letters. */
export const templateName = ({ no, text }: Pick<PlacedTemplate, 'no' | 'text'>): string => `#${no} · ${text}`

const byNumber = (a: string, b: string): number => a.localeCompare(b, 'en', { numeric: true })

const textsAt = (uses: readonly Use[], place: PlaceId): readonly string[] =>
  [...new Set(uses.flatMap(({ laid: { application } }) => (application.place.id === place ? [application.text] : [])))].toSorted(
    byNumber,
  )

/** What could be taken for the template's own: the same stones at the same height in the same face, with its letters in the text. */
const alikeIn = (uses: readonly Use[], template: TemplateLine, first: Use): readonly Use[] =>
  uses.filter(
    ({ layout, colour, laid: { application } }) =>
      layout.setting.size === template.size &&
      colour === template.colour &&
      application.height === first.laid.application.height &&
      application.decoration.face === first.laid.application.decoration.face &&
      application.text.includes(template.text),
  )

const placed = (template: TemplateLine, uses: readonly Use[]): readonly Omit<PlacedTemplate, 'no'>[] => {
  const found = uses
    .filter(({ colour }) => colour === template.colour)
    .flatMap((use) => use.layout.pieces.flatMap((piece) => (piece.key === template.key ? [{ use, piece }] : [])))
  const served = found.map(({ use }) => use)
  const [first] = found
  if (first === undefined) return []
  const { application } = first.use.laid
  const places = [...new Set(served.map(({ laid }) => laid.application.place.id))].toSorted()
  const alike = alikeIn(uses, template, first.use)
  const serves = places.map((place) => ({ place, texts: textsAt(served, place) }))
  const isAll = serves.every(({ place, texts }) => textsAt(alike, place).every((text) => texts.includes(text)))
  return [
    {
      ...template,
      places,
      on: isAll ? [] : serves,
      face: application.decoration.face,
      heightMicrometres: first.use.laid.drawing?.shape.fit.height ?? application.height,
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
    templates: countStones(uses, { percent: sparePercent })
      .templates.flatMap((template) => placed(template, uses))
      .map((template, at) => ({ ...template, no: at + 1 })),
  }
}
