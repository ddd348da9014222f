import type { FieldsBlock, FrameBlock, HeadingBlock, SignalBlock, TextBlock } from '../../../../domain/ticket/ticket.ts'
import { frame, gap, type Node, node, type Piece, piece, rule } from '../marks.ts'
import { signPath } from '../symbols.ts'
import { type Look, lineHeight } from '../type-setter.ts'
import { BODY, BODY_BOLD, lookOf, type Room, SMALL, setText } from './room.ts'

const HEADINGS: Readonly<
  Record<HeadingBlock['level'], { readonly look: Look; readonly before: number; readonly after: number }>
> = {
  1: { look: { size: 20, bold: true }, before: 12, after: 4 },
  2: { look: { size: 12.5, bold: true }, before: 9, after: 3 },
  3: { look: { size: 10.5, bold: true }, before: 6, after: 2 },
}

export const setHeading = (block: HeadingBlock, room: Room): readonly Piece[] => {
  const { look, before, after } = HEADINGS[block.level]
  const set = setText(room, block.text, { look, x: 0, y: 0, width: room.width, tag: `H${block.level}` })
  const lead = [{ ...gap(before), keep: true }, piece(set.height + after, [set.node], { keep: true })]
  if (block.note === undefined) return lead
  const note = setText(room, block.note, { look: lookOf('strong'), x: 0, y: 0, width: room.width })
  return [...lead, piece(note.height + 2, [note.node], { keep: true })]
}

/** A paragraph is one node; when it is long its lines are pieces of their own, so that a page may end inside it. */
export const setParagraph = (block: TextBlock, room: Room): readonly Piece[] => {
  const look = lookOf(block.style)
  const lines = room.setter.wrap(block.text, room.width, look)
  if (lines.length <= 12) {
    const set = setText(room, block.text, { look, x: 0, y: 0, width: room.width })
    return [piece(set.height + 3, [set.node])]
  }
  return lines.map((line) => piece(lineHeight(look), [setText(room, line, { look, x: 0, y: 0, width: room.width + 1 }).node]))
}

type Field = FieldsBlock['fields'][number]

const setField = (room: Room, field: Field, x: number): { readonly nodes: readonly Node[]; readonly height: number } => {
  const label = setText(room, field.label, { look: SMALL, x, y: 0, width: room.width })
  const value = setText(room, field.value, { look: lookOf(field.style), x, y: label.height, width: room.width })
  return { nodes: [label.node, value.node], height: label.height + value.height }
}

export const setFields = (block: FieldsBlock, room: Room): readonly Piece[] => {
  const space = 10
  const width = (room.width - space * (block.columns - 1)) / block.columns
  const pieces: Piece[] = []
  for (let at = 0; at < block.fields.length; at += block.columns) {
    const row = block.fields.slice(at, at + block.columns)
    const cells = row.map((field, column) => setField({ ...room, width }, field, column * (width + space)))
    pieces.push(
      piece(
        Math.max(...cells.map((cell) => cell.height)) + 3,
        cells.flatMap((cell) => cell.nodes),
      ),
    )
  }
  return pieces
}

const INSET = 10

/** A heavy bar at the left holds the lines together, and may be cut by a page. */
export const setFrame = (block: FrameBlock, room: Room): readonly Piece[] => {
  const width = room.width - INSET
  const parts = [
    setText(room, block.title, { look: lookOf('strong'), x: INSET, y: 0, width }),
    ...block.lines.map((line) => setText(room, line, { look: BODY_BOLD, x: INSET, y: 0, width })),
  ]
  const pieces = parts.map((part, at) => {
    const bar = frame([0, 0, 3.5, part.height + 1], { weight: 0, fill: '#000000' })
    return piece(part.height + 1, [node(null, [bar]), part.node], { keep: at === 0 })
  })
  return [gap(6), ...pieces, gap(4)]
}

const COLOURS: Readonly<Record<SignalBlock['word'], string>> = {
  danger: '#c8102e',
  warning: '#ff8200',
  caution: '#ffd100',
  notice: '#0057b8',
}
const SIGN = 19

type Signed = { readonly symbol: string; readonly alternative: string }

/** A sign of our own drawing in a square. */
export const signNode = (sign: Signed, at: { readonly x: number; readonly y: number; readonly size: number }): Node => ({
  tag: 'Figure',
  alternative: sign.alternative,
  marks: [{ kind: 'path', x: at.x, y: at.y, scale: at.size / 24, path: signPath(sign.symbol), weight: 0, fill: '#000000' }],
  children: [],
})

const signalItem = (
  room: Room,
  item: SignalBlock['items'][number],
  at: { readonly x: number; readonly y: number; readonly width: number },
) => {
  const text = setText(room, item.text, { look: BODY, x: at.x + SIGN + 5, y: at.y, width: at.width - SIGN - 5, tag: 'LBody' })
  const sign = signNode(item, { x: at.x, y: at.y - 1, size: SIGN })
  return { nodes: [sign, text.node], height: Math.max(text.height, SIGN) + 2 }
}

/** Items in two columns, each filled from the top, so that nothing but whole items stand beside each other. */
const signalColumns = (room: Room, items: SignalBlock['items'], left: number) => {
  const space = 12
  const columns = items.length === 1 ? 1 : 2
  const width = (room.width - left - 6 - space * (columns - 1)) / columns
  const share = Math.ceil(items.length / columns)
  const nodes: Node[] = []
  let height = 0
  for (let column = 0; column < columns; column += 1) {
    let y = 5
    for (const item of items.slice(column * share, (column + 1) * share)) {
      const set = signalItem(room, item, { x: left + column * (width + space), y, width })
      nodes.push(...set.nodes)
      y += set.height
    }
    height = Math.max(height, y)
  }
  return { nodes, height: height + 2 }
}

const WORD: Look = { size: 13, bold: true }
const WORD_WIDTH = 104

/** The word stands black on white beside a stripe of its colour: it must be read on a printer without colour. */
export const setSignal = (block: SignalBlock, room: Room): readonly Piece[] => {
  const word = setText(room, block.label, { look: WORD, x: 14, y: 5, width: WORD_WIDTH - 20 })
  const columns = signalColumns(room, block.items, WORD_WIDTH + 6)
  const height = Math.max(columns.height, word.height + 8)
  const decor = node(null, [
    frame([0, 0, 8, height], { weight: 0, fill: COLOURS[block.word] }),
    frame([0, 0, room.width, height], { weight: 1.2 }),
    rule([WORD_WIDTH, 0], [WORD_WIDTH, height], 0.6),
  ])
  return [piece(height, [decor, word.node, ...columns.nodes]), gap(3)]
}
