import { fits, sizes } from '../garment/garment.ts'
import type { PlaceId } from '../garment/place.ts'
import { byName } from './bags.ts'
import type { RosterFacts, RowMark } from './facts.ts'
import { garmentName, lengthOf, once, piecesIn, type Scene, sizeText } from './names.ts'
import { cell, column, table } from './table.ts'
import type { Block, Cell, Column, Sheet, TableBlock } from './ticket.ts'

const letterKinds = ['front', 'back', 'name', 'sleeve', 'other'] as const
type LetterKind = (typeof letterKinds)[number]

const KIND_OF: Readonly<Record<PlaceId, LetterKind>> = {
  'front-number': 'front',
  'full-front': 'front',
  'below-number': 'other',
  'back-number': 'back',
  name: 'name',
  nape: 'other',
  yoke: 'other',
  'left-chest': 'other',
  'right-chest': 'other',
  'left-sleeve': 'sleeve',
  'right-sleeve': 'sleeve',
  'left-shoulder': 'sleeve',
  'right-shoulder': 'sleeve',
  'left-leg': 'other',
  'right-leg': 'other',
  hood: 'other',
  other: 'other',
}

/** What a roster line is pressed with, as letters over its boxes. */
const kindsOf = (row: RosterFacts): readonly LetterKind[] =>
  letterKinds.filter((kind) => row.marks.some((mark) => KIND_OF[mark.place] === kind))

const fittedTexts = (scene: Scene, { place, fitted }: RowMark): readonly string[] => {
  if (fitted === undefined) return []
  const { roster, place: places } = scene.words
  return [
    ...(fitted.heightMicrometres === null ? [] : [roster.setLower(places.ids[place], lengthOf(scene, fitted.heightMicrometres))]),
    ...(fitted.percent === null ? [] : [roster.setNarrower(places.ids[place], fitted.percent)]),
  ]
}

/** What is special about a line: what it has more, what it has not, what is set to fit, and its note. */
export const specialText = (scene: Scene, row: RosterFacts): string => {
  const { words } = scene
  const extras = row.marks.filter((mark) => row.extras.includes(mark.decoration))
  return [
    ...extras.map((mark) => words.roster.extra(`${words.place.ids[mark.place]} ${mark.text}`.trim())),
    ...row.without.map((place) => words.roster.without(words.place.ids[place])),
    ...row.marks.flatMap((mark) => fittedTexts(scene, mark)),
    row.age === 'under-3' || row.age === '3-12' ? words.roster.ages[row.age] : '',
    row.note ?? '',
  ]
    .filter((text) => text !== '')
    .join('; ')
}

const bySize = (a: RosterFacts, b: RosterFacts): number =>
  fits.indexOf(a.fit) - fits.indexOf(b.fit) || sizes.indexOf(a.size) - sizes.indexOf(b.size) || a.line - b.line

const dash = '–'

/** Lines of more pieces than this are ticked once, not piece by piece. */
const MOST_ROWS = 12

/** A roster line, or one piece of it, with how it is counted. */
type Counted = { readonly row: RosterFacts; readonly counted: string }

const piecesOf = (row: RosterFacts): readonly Counted[] => {
  if (row.quantity === 1) return [{ row, counted: '1' }]
  if (row.quantity > MOST_ROWS) return [{ row, counted: `×${row.quantity}` }]
  return Array.from({ length: row.quantity }, (_piece, at) => ({ row, counted: `${at + 1}/${row.quantity}` }))
}

const pressRow = (scene: Scene, { row, counted }: Counted, kinds: readonly LetterKind[]): readonly Cell[] => {
  const mine = kindsOf(row)
  const box = (needed: boolean): Cell => cell(needed ? '' : dash, { boxes: needed ? 1 : 0 })
  return [
    cell(String(row.line)),
    cell(row.number ?? dash, { bold: true }),
    cell(row.name ?? scene.words.roster.nameless),
    cell(sizeText(scene.words, row.fit, row.size), { bold: true }),
    cell(counted, { bold: row.quantity > 1 }),
    ...kinds.map((kind) => box(mine.includes(kind))),
    box(true),
    cell(specialText(scene, row)),
  ]
}

const pressColumns = ({ words }: Scene, kinds: readonly LetterKind[]): readonly Column[] => {
  const { heads, letters } = words.roster
  return [
    column(heads.line, 0.8, 'right'),
    column(heads.number, 1.2, 'right'),
    column(heads.name, 4),
    column(heads.size, 2.4),
    column(heads.quantity, 0.9, 'right'),
    ...kinds.map((kind) => column(letters[kind], 0.8, 'centre')),
    column(heads.inspected, 1.5, 'centre'),
    column(heads.special, 4),
  ]
}

/** The roster as the press takes it: by garment, fit and size. */
const forThePress = (scene: Scene): TableBlock => {
  const { facts, words } = scene
  const kinds = letterKinds.filter((kind) => facts.roster.some((row) => kindsOf(row).includes(kind)))
  const groups = facts.garments.flatMap((garment) => {
    const mine = facts.roster.filter((row) => row.garment === garment.id)
    const cuts = once([...mine].sort(bySize).map((row) => sizeText(words, row.fit, row.size)))
    return cuts.map((cut) => {
      const rows = mine.filter((row) => sizeText(words, row.fit, row.size) === cut).sort(bySize)
      return {
        heading: words.roster.group(garmentName(scene, garment.id), cut, piecesIn(rows)),
        rows: rows.flatMap(piecesOf).map((counted) => pressRow(scene, counted, kinds)),
      }
    })
  })
  return { ...table(pressColumns(scene, kinds), groups), style: 'strong' }
}

const bagRow = (scene: Scene, row: RosterFacts): readonly Cell[] => [
  cell(row.name ?? scene.words.roster.nameless, { bold: row.name !== null }),
  cell(row.number ?? dash, { bold: true }),
  cell(sizeText(scene.words, row.fit, row.size)),
  cell(garmentName(scene, row.garment)),
  cell(row.quantity === 1 ? '1' : `×${row.quantity}`, { bold: row.quantity > 1 }),
  cell('', { boxes: 1 }),
  cell(String(row.line)),
]

/** The roster as the bags take it: by name. */
const forTheBags = (scene: Scene): TableBlock => {
  const { heads } = scene.words.roster
  const columns = [
    column(heads.name, 4),
    column(heads.number, 1, 'right'),
    column(heads.size, 2),
    column(heads.garment, 4),
    column(heads.quantity, 0.9, 'right'),
    column(heads.bagged, 1.2, 'centre'),
    column(heads.line, 0.8, 'right'),
  ]
  const rows = [...scene.facts.roster].sort(byName).map((row) => bagRow(scene, row))
  return { ...table(columns, [{ heading: null, rows }]), style: 'strong' }
}

const specialRows = (scene: Scene): readonly Block[] => {
  const lines = scene.facts.roster.flatMap((row) => {
    const text = specialText(scene, row)
    const who = [
      scene.words.roster.row(row.line),
      row.number === null ? '' : `#${row.number}`,
      row.name ?? '',
      sizeText(scene.words, row.fit, row.size),
    ]
    return text === '' ? [] : [`${who.filter((part) => part !== '').join(' ')}: ${text}`]
  })
  if (lines.length === 0) return []
  return [{ kind: 'frame', title: scene.words.roster.special, lines }]
}

/** The roster twice, by size for the press and by name for the bags, with boxes to tick. */
export const rosterSheets = (scene: Scene): readonly Sheet[] => {
  const { roster, garment } = scene.words
  const total: Block = { kind: 'text', style: 'strong', text: garment.sum(piecesIn(scene.facts.roster)) }
  return [
    {
      title: roster.bySize,
      blocks: [
        { kind: 'heading', level: 1, text: roster.bySize },
        total,
        { kind: 'text', style: 'small', text: roster.legend },
        ...specialRows(scene),
        forThePress(scene),
      ],
    },
    { title: roster.byName, blocks: [{ kind: 'heading', level: 1, text: roster.byName }, total, forTheBags(scene)] },
  ]
}
