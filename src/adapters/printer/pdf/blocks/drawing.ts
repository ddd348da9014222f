import type {
  CodeBlock,
  DrawingBlock,
  DrawnMark,
  PlateBlock,
  RulerBlock,
  StripsBlock,
  View,
} from '../../../../domain/ticket/ticket.ts'
import { gap, type Mark, type Node, node, type Piece, piece, rule } from '../marks.ts'
import { type Look, lineHeight } from '../type-setter.ts'
import { BODY, BODY_BOLD, type Room, SMALL, SMALL_BOLD, setText } from './room.ts'

/** One micrometre in points. */
const POINTS = 72 / 25_400

const NOTE = 100
const VIEW_HEIGHT = 180

type Scaled = { readonly x: number; readonly y: number; readonly scale: number }

const drawnMarks = (mark: DrawnMark, at: Scaled): readonly Mark[] => {
  const x = at.x + mark.atMicrometres[0] * at.scale
  const y = at.y + mark.atMicrometres[1] * at.scale
  const paths = mark.paths.map((path): Mark => ({ kind: 'path', x, y, scale: at.scale, path, weight: 0.5, fill: '#dcdcdc' }))
  const stones = mark.stones.map(
    (stones): Mark => ({
      kind: 'circles',
      x,
      y,
      scale: at.scale,
      radius: (stones.diameterMicrometres / 2) * at.scale,
      at: stones.at,
      weight: 0,
      fill: '#000000',
    }),
  )
  return [...paths, ...stones]
}

const measureMarks = (measure: View['measures'][number], at: Scaled): readonly Mark[] => {
  const point = ([x, y]: readonly [number, number]): readonly [number, number] => [at.x + x * at.scale, at.y + y * at.scale]
  const [from, to] = [point(measure.from), point(measure.to)]
  const tick = ([x, y]: readonly [number, number]): Mark => rule([x - 4, y], [x + 4, y], 0.8)
  return [rule(from, to, 0.8), tick(from), tick(to)]
}

type Noted = {
  readonly y: number
  readonly height: number
  readonly nodes: readonly Node[]
  readonly about: readonly [number, number]
}

const setNote = (room: Room, note: View['notes'][number], at: Scaled): Noted => {
  let y = 0
  const nodes = note.lines.map((line, index) => {
    const set = setText(room, line, { look: index === 0 ? BODY_BOLD : BODY, x: 0, y, width: NOTE - 8 })
    y += set.height
    return set.node
  })
  const about: readonly [number, number] = [at.x + note.about[0] * at.scale, at.y + note.about[1] * at.scale]
  return { y: about[1] - y / 2, height: y, nodes, about }
}

/** Notes beside the view at the height of what they are about, pushed down where they would meet. */
const stackNotes = (notes: readonly Noted[], top: number): readonly Noted[] => {
  let free = top
  return [...notes]
    .sort((a, b) => a.y - b.y)
    .map((note) => {
      const y = Math.max(free, note.y)
      free = y + note.height + 6
      return { ...note, y }
    })
}

const placed = (part: Node, x: number, y: number): Node => ({
  ...part,
  marks: part.marks.map((mark) => (mark.kind === 'line' ? mark : { ...mark, x: mark.x + x, y: mark.y + y })),
})

const TITLE: Look = { size: 11, bold: true }

const setView = (room: Room, view: View, at: { readonly x: number; readonly width: number; readonly scale: number }) => {
  const title = setText(room, view.title, { look: TITLE, x: at.x, y: 0, width: at.width })
  const top = title.height + 2
  const drawn: Scaled = { x: at.x + NOTE, y: top, scale: at.scale }
  const [wide, high] = [view.widthMicrometres * at.scale, view.heightMicrometres * at.scale]
  const notes = stackNotes(
    view.notes.map((note) => setNote(room, note, drawn)),
    top,
  )
  const leaders = notes.map((note): Mark => rule([at.x + NOTE - 6, note.y + lineHeight(BODY_BOLD) / 2], note.about, 0.4))
  const outline = view.outline.map((path): Mark => ({ kind: 'path', ...drawn, path, weight: 0.9, fill: null }))
  const ends = [
    setText(room, view.ends[0], { look: SMALL_BOLD, x: drawn.x, y: top + high + 1, width: wide / 2 - 2 }),
    setText(room, view.ends[1], {
      look: SMALL_BOLD,
      x: drawn.x + wide / 2 + 2,
      y: top + high + 1,
      width: wide / 2 - 2,
      align: 'right',
    }),
  ]
  const marks = [
    ...outline,
    ...view.marks.flatMap((mark) => drawnMarks(mark, drawn)),
    ...view.measures.flatMap((one) => measureMarks(one, drawn)),
    ...leaders,
  ]
  const texts = notes.flatMap((note) => note.nodes.map((part) => placed(part, at.x, note.y)))
  const foot = Math.max(...notes.map((note) => note.y + note.height), top + high + 1 + Math.max(...ends.map((end) => end.height)))
  return { marks, nodes: [title.node, ...texts, ...ends.map((end) => end.node)], height: foot }
}

/** Views side by side at one scale, their notes beside them. */
export const setDrawing = (block: DrawingBlock, room: Room): readonly Piece[] => {
  const width = room.width / 2
  const wide = Math.max(...block.views.map((view) => view.widthMicrometres))
  const high = Math.max(...block.views.map((view) => view.heightMicrometres))
  const scale = Math.min((width - NOTE - 8) / wide, VIEW_HEIGHT / high)
  const set = block.views.map((view, at) => setView(room, view, { x: at * width, width, scale }))
  const figure: Node = { tag: 'Figure', alternative: block.alternative, marks: set.flatMap((view) => view.marks), children: [] }
  return [piece(Math.max(...set.map((view) => view.height)) + 8, [figure, ...set.flatMap((view) => view.nodes)])]
}

/** At least 4 dots of a 300 dpi printer to a module and four modules free all round (ISO/IEC 18004). */
const LEAST_MODULE = (4 * 72) / 300
const QUIET = 4

export const setCode = (block: CodeBlock, room: Room): readonly Piece[] => {
  const count = block.rows.length
  const module = Math.max(LEAST_MODULE, Math.min(2.6, room.width / (count + 2 * QUIET)))
  const side = module * (count + 2 * QUIET)
  const left = Math.max(0, room.width - side)
  const path = block.rows.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1Z`] : []))).join('')
  const figure: Node = {
    tag: 'Figure',
    alternative: block.alternative,
    marks: [{ kind: 'path', x: left + QUIET * module, y: QUIET * module, scale: module, path, weight: 0, fill: '#000000' }],
    children: [],
  }
  const caption = setText(room, block.caption, { look: BODY_BOLD, x: 0, y: side, width: room.width, align: 'right' })
  return [piece(side + caption.height, [figure, caption.node])]
}

export const setPlate = (block: PlateBlock): readonly Piece[] => {
  const at = { x: 0, y: 0, scale: POINTS }
  const moved = { ...at, x: block.shiftMicrometres[0] * POINTS, y: block.shiftMicrometres[1] * POINTS }
  const marks: readonly Mark[] = [
    ...block.paths.map((path): Mark => ({ kind: 'path', ...moved, path, weight: 0.4, fill: null })),
    ...block.circles.map(
      (circles): Mark => ({
        kind: 'circles',
        ...at,
        radius: (circles.diameterMicrometres / 2) * POINTS,
        at: circles.at,
        weight: 0.35,
        fill: null,
      }),
    ),
    ...block.ticks.map(({ from, to }) => rule([from[0] * POINTS, from[1] * POINTS], [to[0] * POINTS, to[1] * POINTS], 0.5)),
  ]
  return [piece(block.heightMicrometres * POINTS + 4, [{ tag: 'Figure', alternative: block.alternative, marks, children: [] }])]
}

export const setRuler = (block: RulerBlock, room: Room): readonly Piece[] => {
  const count = Math.round(block.lengthMicrometres / block.tickMicrometres)
  const ticks = Array.from({ length: count + 1 }, (_tick, at): Mark => {
    const x = at * block.tickMicrometres * POINTS
    return rule([x, 0], [x, at % 10 === 0 ? 12 : at % 5 === 0 ? 9 : 6], 0.5)
  })
  const labels = block.labels.map(({ atMicrometres, text }) =>
    setText(room, text, { look: SMALL, x: atMicrometres * POINTS + 2, y: 12, width: 60 }),
  )
  const base = rule([0, 0], [block.lengthMicrometres * POINTS, 0], 0.8)
  const figure: Node = { tag: 'Figure', alternative: block.alternative, marks: [base, ...ticks], children: [] }
  return [gap(6), piece(26, [figure, ...labels.map((label) => label.node)])]
}

const STRIP = 76
const NUMBER: Look = { size: 30, bold: true }

const setStrip = (room: Room, strip: StripsBlock['strips'][number], x: number) => {
  const width = room.width / 2 - 16
  const figure = setText(room, strip.figure, { look: NUMBER, x: x + 8, y: 22, width: 58 })
  const left = strip.figure === '' ? x + 8 : x + 70
  const head = setText(room, strip.head, { look: SMALL, x: x + 8, y: 6, width })
  const name = setText(room, strip.name, {
    look: { size: 13, bold: true },
    x: left,
    y: 6 + head.height + 2,
    width: width - (left - x - 8),
  })
  let y = 6 + head.height + 2 + name.height
  const lines = strip.lines.map((line) => {
    const set = setText(room, line, { look: BODY, x: left, y, width: width - (left - x - 8) })
    y += set.height
    return set.node
  })
  const shifted = strip.figure === '' ? [] : [placed(figure.node, 0, Math.max(0, 6 + head.height - 22))]
  const bottom = strip.figure === '' ? y : Math.max(y, 6 + head.height + figure.height)
  return { nodes: [head.node, ...shifted, name.node, ...lines], height: Math.max(STRIP, bottom + 6) }
}

/** Two strips side by side, with dashed lines to cut along. */
export const setStrips = (block: StripsBlock, room: Room): readonly Piece[] => {
  const hint = setText(room, block.hint, { look: BODY, x: 0, y: 0, width: room.width })
  const rows: Piece[] = []
  for (let at = 0; at < block.strips.length; at += 2) {
    const pair = block.strips.slice(at, at + 2).map((strip, index) => setStrip(room, strip, (index * room.width) / 2))
    const height = Math.max(...pair.map((one) => one.height))
    const cut = (from: readonly [number, number], to: readonly [number, number]): Mark => ({
      kind: 'line',
      from,
      to,
      weight: 0.5,
      dash: true,
    })
    const decor = node(null, [
      cut([0, 0], [room.width, 0]),
      cut([0, height], [room.width, height]),
      cut([room.width / 2, 0], [room.width / 2, height]),
    ])
    rows.push(piece(height, [decor, ...pair.map((one) => node('Sect', [], one.nodes))]))
  }
  return [piece(hint.height + 4, [hint.node], { keep: true }), ...rows]
}
