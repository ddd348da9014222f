import { pointer } from '../result/result.ts'
import type { ComposedDecoration } from './compose/decorations.ts'
import type { ComposedGarment } from './compose/garments.ts'
import type { ComposedRow } from './compose/roster.ts'
import type { Draft } from './draft.ts'
import { type Known, type Missing, type QuestionCode, questionCodes } from './known.ts'

type Parts = {
  readonly draft: Draft
  readonly garments: readonly ComposedGarment[]
  readonly decorations: readonly ComposedDecoration[]
  readonly rows: readonly ComposedRow[]
}

const lacks = (code: QuestionCode, path: string, of?: string): Missing => (of === undefined ? { code, path } : { code, path, of })

const inGarments = ({ garments }: Parts): readonly Missing[] => {
  if (garments.length === 0) return [lacks('ask-garment', '/garments')]
  return garments.flatMap(({ known }, index) =>
    known.colour === undefined ? [lacks('ask-garment-colour', pointer('garments', index, 'colour'), known.id)] : [],
  )
}

const inDecorations = ({ decorations, draft }: Parts): readonly Missing[] => {
  if (decorations.length === 0) {
    const extras = Object.values(draft.rows).some((row) => row.extras !== undefined)
    return extras ? [] : [lacks('ask-decoration', '/decorations')]
  }
  return decorations.flatMap(({ known, missing }, index) =>
    missing.map((path) => {
      const at = `${pointer('decorations', index)}${path}`
      return path === '/content/text' ? lacks('ask-text', at, known.place) : lacks('ask-vinyl-colour', at, known.content?.kind)
    }),
  )
}

const wornAs = (order: Known, kind: 'number' | 'name', garment: string | undefined): boolean =>
  order.decorations.some(({ content, on }) => content?.kind === kind && garment !== undefined && (on ?? []).includes(garment))

/** Some have a number and some have none: those without are asked for once, unless they were said to come later. */
const lackingNumbers = (order: Known, { draft }: Parts): boolean => {
  if (draft.later.numbers || draft.agreed['numbers']) return false
  const worn = order.roster.filter(
    (row) => wornAs(order, 'number', row.garment) && row.age !== undefined && row.note === undefined,
  )
  return worn.some((row) => row.number === undefined && !row.without?.length)
}

const lackingNames = (order: Known, { draft }: Parts): boolean => {
  if (draft.later.names || draft.agreed['names']) return false
  const worn = order.roster.filter((row) => wornAs(order, 'name', row.garment))
  return worn.some((row) => row.name === undefined && !row.without?.length)
}

/** A garment that is on nobody yet: for whom, in which sizes? */
const unworn = ({ garments, rows }: Parts): readonly Missing[] =>
  garments.flatMap(({ known }) =>
    rows.some((row) => row.known.garment === known.id) ? [] : [lacks('ask-garment-sizes', '/roster', known.id)],
  )

const inRoster = (order: Known, parts: Parts): readonly Missing[] => {
  if (parts.rows.length === 0) return [lacks('ask-roster', '/roster')]
  const first = (path: string) => parts.rows.findIndex((row) => row.missing.includes(path))
  const colour = parts.rows.findIndex((row) => row.missing.some((path) => path.startsWith('/extras')))
  return [
    ...(lackingNumbers(order, parts) ? [lacks('ask-numbers', '/roster')] : []),
    ...(lackingNames(order, parts) ? [lacks('ask-names', '/roster')] : []),
    ...unworn(parts),
    ...(first('/size') >= 0 ? [lacks('ask-sizes', pointer('roster', first('/size'), 'size'))] : []),
    ...(first('/fit') >= 0 ? [lacks('ask-fit', pointer('roster', first('/fit'), 'fit'))] : []),
    ...(colour >= 0 ? [lacks('ask-vinyl-colour', pointer('roster', colour, 'extras'), 'text')] : []),
  ]
}

/** What the label says is worth one question when the garments are the customer's; that nobody knows is an answer. */
const inCloth = ({ draft }: Parts): readonly Missing[] =>
  Object.entries(draft.garments).flatMap(([id, wish], index) =>
    wish.from === 'customer' && wish.fibres === undefined && wish.knit === undefined && !draft.agreed['cloth']
      ? [lacks('ask-cloth', pointer('garments', index, 'fibres'), id)]
      : [],
  )

/** A child's cut and a player of the list are asked for by themselves; of counted adult sizes nothing more is asked. */
const agesOpen = ({ draft, rows }: Parts): boolean => {
  const unknown = rows.filter(({ known }) => known.age === 'unknown')
  if (draft.ages === undefined) return rows.length === 0 || unknown.length > 0
  if (draft.ages === 'unknown') return false
  return unknown.some(({ key, known }) => draft.rows[key] !== undefined || known.fit === 'toddler' || known.fit === 'youth')
}

const inHead = (order: Known, parts: Parts): readonly Missing[] => [
  ...(parts.draft.day === undefined ? [lacks('ask-day', '/needBy')] : []),
  ...(parts.draft.day !== undefined && parts.draft.hour === undefined ? [lacks('ask-hour', '/needBy')] : []),
  ...(order.sport === undefined ? [lacks('ask-sport', '/sport')] : []),
  ...(order.team === undefined ? [lacks('ask-team', '/team')] : []),
  ...(agesOpen(parts) ? [lacks('ask-ages', '/roster')] : []),
  ...(order.people.orders === undefined ? [lacks('ask-who', '/people/orders')] : []),
]

/** Everything the document still lacks, the most valuable question first. */
export const missingOf = (order: Known, parts: Parts): readonly Missing[] => {
  const all = [
    ...inGarments(parts),
    ...inDecorations(parts),
    ...inRoster(order, parts),
    ...inCloth(parts),
    ...inHead(order, parts),
  ]
  return [...all].sort((a, b) => questionCodes.indexOf(a.code) - questionCodes.indexOf(b.code))
}
