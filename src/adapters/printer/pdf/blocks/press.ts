import type { ChecksBlock, PressBoxBlock, StepsBlock } from '../../../../domain/ticket/ticket.ts'
import { type Container, frame, gap, type Node, node, type Piece, piece, rule } from '../marks.ts'
import { type Look, lineHeight } from '../type-setter.ts'
import { BODY, BODY_BOLD, BOX, lookOf, type Room, SMALL, setText } from './room.ts'
import { signNode } from './text.ts'

const PAD = 7

type Figure = PressBoxBlock['rows'][number]['figures'][number]

const figureLook = (at: number, lesser: number): Look =>
  at === 0 ? lookOf('giant') : at === 1 ? { size: 26, bold: true } : { size: lesser, bold: true }

/** Sizes of what stands beside temperature and time; the first in which a row holds them all is taken. */
const LESSER = [13.5, 12.5, 11.5] as const
const BESIDE = 11

const widthOf = (room: Room, figure: Figure, look: Look): number =>
  Math.max(room.setter.width(room.setter.spell(figure.value), look), room.setter.width(room.setter.spell(figure.label), SMALL)) +
  0.5

const lesserFor = (room: Room, figures: readonly Figure[]): number => {
  const isOneRow = (lesser: number): boolean =>
    figures.reduce((sum, figure, at) => sum + widthOf(room, figure, figureLook(at, lesser)) + BESIDE, -BESIDE) <=
    room.width - 2 * PAD
  return LESSER.find(isOneRow) ?? LESSER[0]
}

/** Figures from left to right, the first the largest; what does not fit goes on below. */
const setFigures = (room: Room, figures: readonly Figure[], top: number) => {
  const nodes: Node[] = []
  const lesser = lesserFor(room, figures)
  const base = lineHeight(SMALL) + lineHeight(figureLook(0, lesser))
  let [x, y, height] = [PAD, top, 0]
  figures.forEach((figure, at) => {
    const look = figureLook(at, lesser)
    const width = Math.min(widthOf(room, figure, look), room.width - 2 * PAD)
    if (x + width > room.width - PAD && x > PAD) [x, y] = [PAD, y + (y === top ? base : lineHeight(SMALL) + lineHeight(look)) + 2]
    const label = setText(room, figure.label, { look: SMALL, x, y, width })
    const drop = y === top ? base - lineHeight(SMALL) - lineHeight(look) - (at === 0 ? 0 : 4) : 0
    const set = setText(room, figure.value, { look, x, y: y + label.height + Math.max(0, drop), width })
    nodes.push(label.node, set.node)
    height = Math.max(height, y - top + label.height + Math.max(0, drop) + set.height)
    x += width + BESIDE
  })
  return { nodes, height: Math.max(height, base) }
}

const setRow = (room: Room, row: PressBoxBlock['rows'][number]): Piece => {
  const inner = room.width - 2 * PAD
  const covers = setText(room, row.covers, { look: BODY_BOLD, x: PAD, y: 4, width: inner })
  const figures = setFigures(room, row.figures, 4 + covers.height)
  let y = 4 + covers.height + figures.height
  const notes = row.notes.map((text) => {
    const set = setText(room, text, { look: BODY, x: PAD, y, width: inner })
    y += set.height
    return set.node
  })
  const height = y + 5
  const decor = node(null, [frame([0, 0, room.width, height], { weight: 1.8 })])
  return piece(height, [decor, covers.node, ...figures.nodes, ...notes])
}

const TITLE: Look = { size: 12, bold: true }

/** The garment's name stands in a frame of its own, again over rows that come on the next page: black on white, so that a printer without greys keeps it readable. */
export const setPressBox = (block: PressBoxBlock, room: Room): readonly Piece[] => {
  const title = setText(room, block.title, { look: TITLE, x: PAD, y: 3, width: room.width - 2 * PAD, tag: 'H3' })
  const height = title.height + 5
  const bar = node(null, [frame([0, 0, room.width, height], { weight: 1.8 })])
  const head = piece(height, [bar, title.node], { keep: true })
  const keep = block.leads === true
  const rows = block.rows.map((row) => ({ ...setRow(room, row), head, keep }))
  return [{ ...gap(6), keep: true }, head, ...rows, { ...gap(5), keep }]
}

const MARGIN = 48

const boxMark = (x: number, y: number): Node => node(null, [frame([x, y, BOX, BOX], { weight: 0.9 })])

const FIGURE: Look = { size: 19, bold: true }
const STEP: Look = { size: 11.5, bold: true }
const NUMBER: Look = { size: 19, bold: true }

const SIGN = 11

type Caution = StepsBlock['steps'][number]['cautions'][number]
type Corner = { readonly x: number; readonly y: number; readonly width: number }
type Bit = { readonly text: string; readonly sign: Caution['items'][number] | null }

const bitsOf = (cautions: readonly Caution[]): readonly Bit[] =>
  cautions.flatMap((caution) => [
    { text: caution.label, sign: null },
    ...caution.items.map((item) => ({ text: item.text, sign: item })),
  ])

/** The signal words, each followed by its signs with their words, flowing from left to right. */
const setCautions = (room: Room, cautions: readonly Caution[], at: Corner) => {
  const nodes: Node[] = []
  const step = lineHeight(BODY_BOLD) + 1.5
  let [x, y] = [at.x, at.y]
  const bits = bitsOf(cautions)
  const wideOf = (bit: Bit | undefined): number =>
    bit === undefined ? 0 : room.setter.width(room.setter.spell(bit.text), BODY_BOLD) + (bit.sign === null ? 0 : SIGN + 3)
  for (const [index, bit] of bits.entries()) {
    const lead = bit.sign === null ? 0 : SIGN + 3
    const width = Math.min(room.setter.width(room.setter.spell(bit.text), BODY_BOLD) + 0.5, at.width - lead)
    const need = bit.sign === null ? width + 6 + wideOf(bits[index + 1]) : lead + width
    if (x > at.x && x + need > at.x + at.width) [x, y] = [at.x, y + step]
    const text = setText(room, bit.text, { look: BODY_BOLD, x: x + lead, y, width })
    nodes.push(...(bit.sign === null ? [] : [signNode(bit.sign, { x, y, size: SIGN })]), text.node)
    if (text.height > step) y += text.height - step + 1.5
    x += lead + width + (bit.sign === null ? 6 : 11)
  }
  return { nodes, height: cautions.length === 0 ? 0 : y - at.y + step + 1 }
}

/** The step's own text: narrow beside its figures, as wide as the page below them. */
const setStepText = (
  room: Room,
  step: StepsBlock['steps'][number],
  beside: { readonly width: number; readonly bottom: number },
) => {
  const full = room.width - MARGIN
  const title = setText(room, step.title, { look: STEP, x: MARGIN, y: 5, width: full - beside.width })
  const nodes: Node[] = [title.node]
  let y = 5 + title.height
  for (const line of step.lines) {
    const width = y >= beside.bottom ? full : full - beside.width
    const set = setText(room, line, { look: BODY, x: MARGIN, y, width })
    nodes.push(set.node)
    y += set.height
  }
  const width = y + 1 >= beside.bottom ? full : full - beside.width
  const cautions = setCautions(room, step.cautions, { x: MARGIN, y: y + 1, width })
  return { nodes: [...nodes, ...cautions.nodes], bottom: y + cautions.height }
}

const setStep = (room: Room, step: StepsBlock['steps'][number], container: Container): Piece => {
  const number = setText(room, step.no, { look: NUMBER, x: 0, y: 3, width: 27, align: 'right', tag: 'Lbl' })
  const figures = step.figures.join('   ')
  const wide = figures === '' ? 0 : Math.min(room.setter.width(room.setter.spell(figures), FIGURE) + 1, room.width * 0.5)
  const big =
    figures === '' ? [] : [setText(room, figures, { look: FIGURE, x: room.width - wide, y: 2, width: wide, align: 'right' })]
  const bottom = 2 + (big[0]?.height ?? 0)
  const text = setStepText(room, step, { width: wide > 0 ? wide + 12 : 0, bottom })
  const height = Math.max(text.bottom, bottom, 3 + number.height) + 3
  const decor = node(null, [rule([0, height], [room.width, height], 0.5)])
  const item = node('LI', [], [number.node, node('LBody', [], [...big.map((set) => set.node), ...text.nodes])])
  return piece(height, [decor, boxMark(31, 8), item], { container })
}

/** So many last steps stay on one page: nobody turns a page for the last look alone. */
const LAST = 3

/** One step a row: number, box, what is done, and its figures large at the right. */
export const setSteps = (block: StepsBlock, room: Room): readonly Piece[] => {
  const container: Container = { tag: 'L' }
  const lasts = block.steps.length - LAST
  const steps = block.steps.map((step, at) => {
    const set = setStep(room, step, container)
    return at >= lasts && at < block.steps.length - 1 ? { ...set, keep: true } : set
  })
  return [gap(3), ...steps]
}

type Item = ChecksBlock['items'][number]

const answerFlow = (room: Room, answers: readonly string[], top: number) => {
  const nodes: Node[] = []
  let [x, y] = [0, top]
  for (const answer of answers) {
    const wide = room.setter.width(room.setter.spell(answer), BODY_BOLD)
    const width = Math.min(wide + 0.5, room.width - BOX - 6)
    if (x > 0 && x + BOX + 5 + width > room.width) [x, y] = [0, y + lineHeight(BODY) + 4]
    const set = setText(room, answer, { look: BODY_BOLD, x: x + BOX + 5, y, width })
    nodes.push(boxMark(x, y + 0.5), set.node)
    if (set.height > lineHeight(BODY_BOLD) * 1.5) y += set.height - lineHeight(BODY_BOLD)
    x += BOX + 5 + width + 16
  }
  return { nodes, right: x, height: answers.length === 0 ? 0 : y - top + lineHeight(BODY) + 5 }
}

const LINE = 70
/** Where nothing is ticked the lines are long enough for a day and an hour by hand. */
const LONG_LINE = 130

const writesWidth = (room: Room, writes: readonly string[]): number =>
  writes.reduce((sum, label) => sum + room.setter.width(room.setter.spell(label), SMALL) + LINE + 14, 0)

/** Lines to write on: beside the answers where they fit, else below them. */
const writeFlow = (room: Room, { writes, answers }: Item, [left, top]: readonly [number, number]) => {
  const nodes: Node[] = []
  const line = answers.length === 0 ? LONG_LINE : LINE
  let [x, y] = [left, top]
  for (const label of writes) {
    const width = Math.min(room.setter.width(room.setter.spell(label), SMALL) + 0.5, room.width / 2)
    if (x > left && x + width + line > room.width) [x, y] = [left, y + 18]
    const set = setText(room, label, { look: SMALL, x, y: y + 4, width })
    nodes.push(set.node, node(null, [rule([x + width + 3, y + 13], [x + width + line, y + 13], 0.5)]))
    x += width + line + 14
  }
  return { nodes, height: writes.length === 0 ? 0 : y - top + 18 }
}

const setCheck = (room: Room, item: Item, container: Container): Piece => {
  const nodes: Node[] = []
  let y = 3
  if (item.title !== '') {
    const title = setText(room, item.title, { look: lookOf('strong'), x: 0, y, width: room.width })
    nodes.push(title.node)
    y += title.height
  }
  if (item.text !== '') {
    const text = setText(room, item.text, { look: BODY, x: 0, y, width: room.width })
    nodes.push(text.node)
    y += text.height
  }
  const answers = answerFlow(room, item.answers, y + 2)
  const need = writesWidth(room, item.writes)
  const beside = item.writes.length > 0 && answers.height > 0 && answers.right + need <= room.width
  const writes = beside
    ? writeFlow(room, item, [room.width - need, y + 2 + answers.height - lineHeight(BODY) - 6])
    : writeFlow(room, item, [0, y + 2 + answers.height])
  const height = y + 2 + answers.height + (beside ? 0 : writes.height)
  const decor = node(null, [rule([0, height], [room.width, height], 0.4)])
  return piece(height, [decor, node('LI', [], [node('LBody', [], [...nodes, ...answers.nodes, ...writes.nodes])])], { container })
}

export const setChecks = (block: ChecksBlock, room: Room): readonly Piece[] => {
  const container: Container = { tag: 'L' }
  return [...block.items.map((item) => setCheck(room, item, container)), gap(3)]
}
