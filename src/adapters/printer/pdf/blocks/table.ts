import type { Cell, TableBlock } from '../../../../domain/ticket/ticket.ts'
import { type Container, frame, gap, type Node, node, type Piece, piece, rule } from '../marks.ts'
import { type Look, lineHeight } from '../type-setter.ts'
import { BODY, BODY_BOLD, BOX, type Room, SMALL_BOLD, setText } from './room.ts'

type Grid = { readonly x: number; readonly width: number; readonly align: 'left' | 'right' | 'centre' }

const PAD = 3

const gridOf = (block: TableBlock, width: number): readonly Grid[] => {
  const all = block.columns.reduce((sum, column) => sum + column.share, 0)
  let x = 0
  return block.columns.map((column) => {
    const own = (column.share / all) * width
    const grid: Grid = { x: x + PAD, width: own - 2 * PAD, align: column.align }
    x += own
    return grid
  })
}

const boxesOf = (cell: Cell, at: Grid, top: number): readonly Node[] => {
  if (cell.boxes === 0) return []
  const wide = cell.boxes * (BOX + 3) - 3
  const start = at.align === 'centre' ? at.x + (at.width - wide) / 2 : at.x
  return [
    node(
      null,
      Array.from({ length: cell.boxes }, (_box, index) => frame([start + index * (BOX + 3), top, BOX, BOX], { weight: 0.9 })),
    ),
  ]
}

/** The looks of a table's plain and bold cells. */
type Looks = { readonly plain: Look; readonly bold: Look }

const LOOKS: Readonly<Record<TableBlock['style'], Looks>> = {
  body: { plain: BODY, bold: BODY_BOLD },
  strong: { plain: { size: 11, bold: false }, bold: { size: 11.5, bold: true } },
}

type SetAs = { readonly room: Room; readonly looks: Looks }

const setCell = ({ room, looks }: SetAs, cell: Cell, at: Grid): { readonly nodes: readonly Node[]; readonly height: number } => {
  const look = cell.bold ? looks.bold : looks.plain
  const text = setText(room, cell.text, { look, x: at.x, y: PAD, width: at.width, align: at.align, tag: 'TD' })
  const height = Math.max(text.height, cell.boxes > 0 ? BOX + 1 : 0)
  const boxes = boxesOf(cell, at, PAD + 0.5)
  return { nodes: [...boxes, ...(cell.text === '' ? [] : [text.node])], height }
}

const setRow = (as: SetAs, cells: readonly Cell[], grid: readonly Grid[]): Piece => {
  const set = cells.flatMap((cell, at) => {
    const place = grid[at]
    return place === undefined ? [] : [setCell(as, cell, place)]
  })
  const height = Math.max(lineHeight(as.looks.plain), ...set.map((one) => one.height)) + 2 * PAD
  const parts = set.flatMap((one) => one.nodes)
  const decor = node(null, [
    rule([0, height], [as.room.width, height], 0.4),
    ...parts.flatMap((part) => (part.tag === null ? part.marks : [])),
  ])
  return piece(height, [
    decor,
    node(
      'TR',
      [],
      parts.filter((part) => part.tag !== null),
    ),
  ])
}

const setHead = (room: Room, block: TableBlock, grid: readonly Grid[]): Piece => {
  const set = block.columns.flatMap((column, at) => {
    const place = grid[at]
    if (place === undefined) return []
    const text = setText(room, column.title, { look: SMALL_BOLD, x: place.x, y: 2, width: place.width, align: place.align })
    return [{ ...text, node: { ...text.node, tag: 'TH', scope: 'Column' as const } }]
  })
  const height = Math.max(...set.map((one) => one.height)) + 4
  const decor = node(null, [rule([0, height], [room.width, height], 1.1)])
  const row = node(
    'TR',
    [],
    set.map((one) => one.node),
  )
  return piece(height, [decor, row], { keep: true })
}

const setGroup = (room: Room, heading: string): Piece => {
  const text = setText(room, heading, { look: BODY_BOLD, x: PAD, y: 3, width: room.width - 2 * PAD })
  const height = text.height + 6
  const decor = node(null, [rule([0, 0], [room.width, 0], 1.1), rule([0, height], [room.width, height], 0.7)])
  const row = node('TR', [], [{ ...text.node, tag: 'TH', scope: 'Row' as const }])
  return piece(height, [decor, row], { keep: true })
}

/** Rows under heads that are set again on every page; a group's heading stays with its first row. */
export const setTable = (block: TableBlock, room: Room): readonly Piece[] => {
  const container: Container = { tag: 'Table' }
  const grid = gridOf(block, room.width)
  const head = { ...setHead(room, block, grid), container }
  const body = block.groups.flatMap((group) => {
    const heading = group.heading === null ? [] : [setGroup(room, group.heading)]
    return [...heading, ...group.rows.map((row) => setRow({ room, looks: LOOKS[block.style] }, row, grid))]
  })
  return [head, ...body.map((part) => ({ ...part, container, head })), gap(5)]
}
