import type { Change, ThrowAway } from './changes.ts'
import type { RosterFacts, TicketFacts } from './facts.ts'
import { garmentName, layerText, once, placeText, type Scene, sizeText, whenText } from './names.ts'
import type { TicketWords } from './words.ts'

/** How far a roster line has come in the work. */
export type RowState = 'not-cut' | 'cut' | 'pressed' | 'bagged'

type Pair = { readonly was: RosterFacts | null; readonly now: RosterFacts | null }

type Same = (a: RosterFacts, b: RosterFacts) => boolean

const sameMarks: Same = (a, b) => a.number === b.number && a.name === b.name && a.garment === b.garment
const sameLine: Same = (a, b) => a.line === b.line && (a.number === b.number || a.name === b.name)
const samePerson: Same = (a, b) => a.name === b.name && a.number === b.number
const onlyLine: Same = (a, b) => a.line === b.line

/** Rows of two revisions that are the same player's: lines may have moved, so numbers and names count first. */
const pairsOf = (before: readonly RosterFacts[], after: readonly RosterFacts[]): readonly Pair[] => {
  const pairs: Pair[] = []
  let [left, right] = [[...before], [...after]]
  for (const same of [(a: RosterFacts, b: RosterFacts) => onlyLine(a, b) && sameMarks(a, b), sameLine, samePerson, onlyLine]) {
    for (const was of left) {
      const now = right.find((row) => same(was, row))
      if (now === undefined) continue
      pairs.push({ was, now })
      right = right.filter((row) => row !== now)
    }
    left = left.filter((row) => !pairs.some((pair) => pair.was === row))
  }
  return [...pairs, ...left.map((was) => ({ was, now: null })), ...right.map((now) => ({ was: null, now }))]
}

const rowText = (scene: Scene, row: RosterFacts): string =>
  [
    row.number === null ? scene.words.roster.numberless : `#${row.number}`,
    row.name ?? scene.words.roster.nameless,
    sizeText(scene.words, row.fit, row.size),
    garmentName(scene, row.garment),
  ].join(' · ')

type RowField = Extract<Change, { kind: 'row-changed' }>['field']

const extrasText = (words: TicketWords, row: RosterFacts): string =>
  row.marks
    .filter((mark) => row.extras.includes(mark.decoration))
    .map((mark) => `${words.place.ids[mark.place]} ${mark.text}`.trim())
    .join(', ')

const fieldsOf = (scene: Scene, row: RosterFacts): Readonly<Record<RowField, string>> => ({
  number: row.number ?? '',
  name: row.name ?? '',
  size: sizeText(scene.words, row.fit, row.size),
  garment: garmentName(scene, row.garment),
  quantity: String(row.quantity),
  extras: extrasText(scene.words, row),
  note: row.note ?? '',
})

const FIELDS: readonly RowField[] = ['number', 'name', 'size', 'garment', 'quantity', 'extras', 'note']

const rowChanges = (before: Scene, after: Scene, { was, now }: Pair): readonly Change[] => {
  if (was === null && now === null) return []
  if (was === null) return now === null ? [] : [{ kind: 'row-added', line: now.line, row: rowText(after, now) }]
  if (now === null) return [{ kind: 'row-dropped', line: was.line, row: rowText(before, was) }]
  const [old, fresh] = [fieldsOf(before, was), fieldsOf(after, now)]
  return FIELDS.filter((field) => old[field] !== fresh[field]).map((field) => ({
    kind: 'row-changed',
    line: now.line,
    field,
    was: old[field],
    now: fresh[field],
  }))
}

type OrderField = Extract<Change, { kind: 'order-changed' }>['field']

const decorationsText = ({ facts, words }: Scene): string =>
  once(
    facts.placements.map((placement) => {
      const layers = facts.layers.filter((layer) => layer.decoration === placement.decoration)
      return `${placeText(words, placement.place)}: ${layers.map((layer) => layerText(words, layer)).join(' + ')}`
    }),
  ).join('; ')

const orderFields = (scene: Scene): Readonly<Record<OrderField, string>> => {
  const { facts, words } = scene
  const book = facts.rulebook
  return {
    needBy: whenText(scene, facts.needBy),
    handOver: words.head.handOver[facts.handOver],
    garments: facts.garments.map((garment) => garmentName(scene, garment.id)).join(', '),
    decorations: decorationsText(scene),
    rulebook: book === null ? '' : words.last.rule(book.body, book.clause, book.edition),
    notes: facts.notes ?? '',
  }
}

const ORDER_FIELDS: readonly OrderField[] = ['needBy', 'handOver', 'garments', 'decorations', 'rulebook', 'notes']

/** What became different between two revisions of a ticket, the order first, then line by line; texts are finished in the later one's language. */
export const changesBetween = (before: TicketFacts, after: TicketFacts, words: TicketWords): readonly Change[] => {
  const [was, now]: readonly [Scene, Scene] = [
    { facts: before, words },
    { facts: after, words },
  ]
  const [old, fresh] = [orderFields(was), orderFields(now)]
  const order = ORDER_FIELDS.filter((field) => old[field] !== fresh[field]).map(
    (field): Change => ({ kind: 'order-changed', field, was: old[field], now: fresh[field] }),
  )
  const rows = pairsOf(before.roster, after.roster).flatMap((pair) => rowChanges(was, now, pair))
  return [...order, ...rows.sort((a, b) => ('line' in a ? a.line : 0) - ('line' in b ? b.line : 0))]
}

/** How high a mark of a line is cut; null where the placement draws nothing for its size. */
const heightOf = (facts: TicketFacts, row: RosterFacts, decoration: string): number | null => {
  const placement = facts.placements.find((one) => one.decoration === decoration && one.garment === row.garment)
  const group = placement?.groups.find((one) => one.fit === row.fit && one.sizes.includes(row.size))
  return group?.heightMicrometres ?? null
}

const sameGarment: Same = (a, b) => a.garment === b.garment && a.fit === b.fit && a.size === b.size

/**
 * Pieces already cut or pressed for the earlier revision that the later one has no use for: the text, the place, the height
 * or, once pressed, the garment itself is another. Layers that changed are not seen here: a new material is a new order of work.
 */
export const throwAwayBetween = (
  before: TicketFacts,
  later: TicketFacts,
  stateOf: (line: number) => RowState,
): readonly ThrowAway[] =>
  pairsOf(before.roster, later.roster).flatMap(({ was, now }): readonly ThrowAway[] => {
    if (was === null || stateOf(was.line) === 'not-cut') return []
    const state = stateOf(was.line) === 'cut' ? 'cut' : 'pressed'
    const stays = (decoration: string, text: string): boolean =>
      now?.marks.some((mark) => mark.decoration === decoration && mark.text === text) === true &&
      heightOf(before, was, decoration) === heightOf(later, now, decoration)
    const gone = was.marks.filter((mark) => !stays(mark.decoration, mark.text))
    const ruined = state === 'pressed' && (now === null || gone.length > 0 || !sameGarment(was, now))
    return (ruined ? was.marks : gone).map((mark) => ({ line: was.line, place: mark.place, text: mark.text, state }))
  })
