import { fits, sizes } from '../garment/garment.ts'
import type { Change } from './changes.ts'
import { codeRows } from './code.ts'
import type { SizeCount, TicketFacts } from './facts.ts'
import { firstPiece, gateBlocks } from './gates.ts'
import { pressBoxes } from './heat.ts'
import { problemText } from './last-sheet.ts'
import { namedMoment } from './moment.ts'
import { garmentName, once, piecesIn, placeText, type Scene, sizeText, whenText } from './names.ts'
import { placementBlocks } from './placements.ts'
import { signalBlocks } from './signals.ts'
import { cell, column, table } from './table.ts'
import type { Block, Field, FrameBlock, Sheet } from './ticket.ts'

const changeText = ({ words }: Scene, change: Change): string => {
  const said = words.head.change
  const shown = (value: string): string => (value === '' ? said.nothing : value)
  switch (change.kind) {
    case 'row-added':
      return said.added(change.line, change.row)
    case 'row-dropped':
      return said.dropped(change.line, change.row)
    case 'row-changed':
      return said.row(change.line, said.fields[change.field], said.fromTo(shown(change.was), shown(change.now)))
    case 'order-changed':
      return `${said.fields[change.field]}: ${said.fromTo(shown(change.was), shown(change.now))}`
  }
}

const changedFrame = (scene: Scene): readonly FrameBlock[] => {
  const { facts, words } = scene
  if (facts.changes.length === 0) return []
  return [{ kind: 'frame', title: words.head.changed, lines: facts.changes.map((change) => changeText(scene, change)) }]
}

const thrownTable = ({ facts, words }: Scene): readonly Block[] => {
  if (facts.throwAway.length === 0) return []
  const { thrown } = words.head
  const rows = facts.throwAway.map((piece) => [
    cell(String(piece.line)),
    cell(piece.text, { bold: true }),
    cell(placeText(words, piece.place)),
    cell(thrown[piece.state]),
    cell('', { boxes: 1 }),
  ])
  const columns = [
    column(thrown.line, 1),
    column(thrown.piece, 3),
    column(thrown.place, 3),
    column(thrown.state, 2),
    column(thrown.done, 1, 'centre'),
  ]
  return [{ kind: 'heading', level: 2, text: words.head.throwAway }, table(columns, [{ heading: null, rows }])]
}

const garmentText = (scene: Scene, id: string): string => {
  const { facts, words } = scene
  const garment = facts.garments.find((one) => one.id === id)
  if (garment === undefined) return id
  const said = words.garment
  const cloth =
    garment.fibres === 'unknown'
      ? said.unknown
      : garment.fibres.map(({ percent, fibre }) => said.fibre(percent, said.fibres[fibre])).join(', ')
  const parts = [
    cloth,
    said.knits[garment.knit],
    said.finish[garment.finish],
    said.dye[garment.dye],
    ...garment.features.map((one) => said.features[one]),
  ]
  return [...parts.filter((part) => part !== ''), said.from[garment.from]].join(' · ')
}

const inOrder = (counts: readonly SizeCount[]): readonly SizeCount[] =>
  [...counts].sort((a, b) => fits.indexOf(a.fit) - fits.indexOf(b.fit) || sizes.indexOf(a.size) - sizes.indexOf(b.size))

const garmentTable = (scene: Scene): Block => {
  const { facts, words } = scene
  const rows = facts.garments.map((garment) => [
    cell(garmentName(scene, garment.id), { bold: true }),
    cell(
      inOrder(garment.sizes)
        .map((size) => `${sizeText(words, size.fit, size.size)} × ${size.quantity}`.replaceAll(' ', '\u00a0'))
        .join('   '),
    ),
    cell(String(garment.sizes.reduce((sum, size) => sum + size.quantity, 0)), { bold: true }),
    cell(garmentText(scene, garment.id)),
  ])
  const said = words.garment
  return table(
    [column(said.title, 3), column(words.roster.heads.size, 4), column(said.total, 1, 'right'), column(said.cloth, 4)],
    [{ heading: null, rows }],
  )
}

const neededFields = (scene: Scene): readonly Field[] => {
  const { facts, words } = scene
  const { head } = words
  const field = (label: string, value: string | null, style: Field['style'] = 'body'): readonly Field[] =>
    value === null ? [] : [{ label, value, style }]
  return [
    ...field(
      head.team,
      `${head.pieces(piecesIn(facts.roster))} · ${words.sports[facts.sport] ?? facts.sport} · ${words.uses[facts.use]}`,
    ),
    ...field(head.people.ask, facts.shop.ask),
    ...field(head.people.orders, facts.people.orders),
    ...field(head.people.signsOff, facts.people.signsOff),
    ...field(head.people.collects, facts.people.collects),
  ]
}

/** The promise is what the shop works to; what was wished stands beside it where it is another hour. */
const whenFields = (scene: Scene): readonly Field[] => {
  const { facts, words } = scene
  const { promised } = facts.plan
  const needed = whenText(scene, facts.needBy)
  if (promised === null) return [{ label: words.head.needed, value: needed, style: 'large' }]
  const first: Field = { label: words.head.promised, value: whenText(scene, promised), style: 'large' }
  return promised === facts.needBy ? [first] : [first, { label: words.head.needed, value: needed, style: 'strong' }]
}

const purpose = ({ facts, words }: Scene): string =>
  [
    words.head.handOver[facts.handOver],
    ...(facts.needFor === null ? [] : [words.head.needFor(facts.needFor)]),
    ...(facts.gameDay === null
      ? []
      : [words.head.gameDay(words.date(namedMoment(facts.gameDay, words.language), facts.show.dateOrder))]),
  ].join(' · ')

/** What the code on the ticket leads to. */
const codeContent = (facts: Pick<TicketFacts, 'link' | 'ticket' | 'revision'>): string =>
  facts.link ?? `${facts.ticket}-${facts.revision}`

/** What this order itself warns of, on the page that is read first. */
const heedFrame = ({ facts, words }: Scene): readonly FrameBlock[] => {
  const lines = once(facts.problems.flatMap((problem) => (problem.severity === 'note' ? [] : [problemText(words, problem)])))
  return lines.length === 0 ? [] : [{ kind: 'frame', title: words.last.heed, lines }]
}

const titleBlocks = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  const { head } = words
  const replaced = facts.replaces === null ? [] : [head.replaces(facts.replaces)]
  return [
    { kind: 'heading', level: 1, text: facts.team },
    {
      kind: 'text',
      style: 'strong',
      text: [`${head.jobTicket} ${facts.ticket}`, head.revision(facts.revision), ...replaced].join(' · '),
    },
    { kind: 'fields', columns: 1, fields: whenFields(scene) },
    { kind: 'text', style: 'strong', text: purpose(scene) },
    { kind: 'fields', columns: 4, fields: neededFields(scene) },
  ]
}

/**
 * The front page: what, until when, at which heat, with what care, what must be found right first; then where everything goes, and the
 * first piece to sign against it.
 */
export const headSheet = (scene: Scene): Sheet => {
  const { facts, words } = scene
  const content = codeContent(facts)
  const code: Block = {
    kind: 'code',
    rows: codeRows(content),
    alternative: words.head.code(content),
    caption: `${facts.ticket}-${facts.revision}`,
  }
  const notes: readonly Block[] =
    facts.notes === null ? [] : [{ kind: 'frame', title: words.head.notes, lines: facts.notes.split('\n') }]
  return {
    title: words.head.title(facts.ticket, facts.team),
    blocks: [
      { kind: 'beside', share: 0.8, left: titleBlocks(scene), right: [code] },
      ...changedFrame(scene),
      ...thrownTable(scene),
      ...pressBoxes(scene, facts.press),
      ...heedFrame(scene),
      ...signalBlocks(scene),
      { kind: 'text', style: 'strong', text: words.signs.burn },
      garmentTable(scene),
      ...notes,
      ...gateBlocks(scene),
      ...placementBlocks(scene),
      ...firstPiece(scene),
    ],
  }
}
