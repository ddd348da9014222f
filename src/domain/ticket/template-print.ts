import { formatLength } from '../units/format.ts'
import { micrometres } from '../units/units.ts'
import type { Language, Show } from './facts.ts'
import type { LocalMinute } from './plan-facts.ts'
import type { Block, PlateBlock, Sheet, Ticket } from './ticket.ts'
import type { TicketWords } from './words.ts'

/** A stone template to print one to one: middles of its holes and their diameter in whole µm, x right, y down. */
export type PrintedTemplate = {
  readonly text: string
  readonly stone: string
  readonly heightMicrometres: number
  readonly holeMicrometres: number
  readonly holes: readonly (readonly [x: number, y: number])[]
  /** Outlines of the vinyl it stands around, to lay it by. */
  readonly paths: readonly string[]
}

/** The templates of one job; `of` is what it is called: its ticket, or its team while no ticket is made. */
export type TemplatePrintFacts = {
  readonly now: LocalMinute
  readonly language: Language
  readonly show: Pick<Show, 'length' | 'paper'>
  readonly of: string
  readonly revision: number
  readonly templates: readonly PrintedTemplate[]
}

type Window = { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

/** What is left for the drawing on a sheet under its heading and ruler, in µm, whichever paper is smaller. */
const PLATE: Readonly<Record<Show['paper'], { readonly width: number; readonly height: number }>> = {
  letter: { width: 188_000, height: 194_000 },
  a4: { width: 182_000, height: 211_000 },
}
/** Neighbouring sheets show this much of each other, to be laid over. */
const OVERLAP = 15_000
/** Room round the holes of a sheet for its ticks. */
const MARGIN = 6_000
const TICK = 5_000
/** Half the arm of a cross where sheets join, and how far from the ends of the seam it stands. */
const ARM = 3_000
const FROM_END = 20_000

const spans = (from: number, to: number, room: number): readonly number[] => {
  const starts = [from]
  for (let at = from; at + room < to; ) {
    at += room - OVERLAP
    starts.push(at)
  }
  return starts
}

/** The windows of the paper that cover all holes, row by row. */
export const windowsOf = (template: PrintedTemplate, paper: Show['paper']): readonly Window[] => {
  const { width, height } = PLATE[paper]
  const edge = Math.ceil(template.holeMicrometres / 2)
  const xs = template.holes.map(([x]) => x)
  const ys = template.holes.map(([, y]) => y)
  const lefts = spans(Math.min(...xs) - edge, Math.max(...xs) + edge, width - 2 * MARGIN)
  const tops = spans(Math.min(...ys) - edge, Math.max(...ys) + edge, height - 2 * MARGIN)
  return tops.flatMap((top) => lefts.map((left) => ({ left: left - MARGIN, top: top - MARGIN, width, height })))
}

type Tick = PlateBlock['ticks'][number]

const lineFrom = (x: number, y: number, [right, down]: readonly [number, number]): Tick => ({
  from: [x, y],
  to: [x + right, y + down],
})

/** Centre ticks above and below, baseline ticks at both sides, wherever those lines cross the sheet. */
const ticksOf = ({ holes }: PrintedTemplate, { left, top, width, height }: Window): readonly Tick[] => {
  const xs = holes.map(([x]) => x)
  const centre = Math.round((Math.min(...xs) + Math.max(...xs)) / 2)
  const upright = centre > left && centre < left + width ? [top, top + height - TICK] : []
  const level = top < 0 && top + height > 0 ? [left, left + width - TICK] : []
  return [...upright.map((y) => lineFrom(centre, y, [0, TICK])), ...level.map((x) => lineFrom(x, 0, [TICK, 0]))]
}

const cross = (x: number, y: number): readonly Tick[] => [lineFrom(x - ARM, y, [2 * ARM, 0]), lineFrom(x, y - ARM, [0, 2 * ARM])]

/** Crosses in the middle of every seam, at the same spots on both sheets: laid over each other they join the template. */
const seamsOf = (windows: readonly Window[], { left, top, width, height }: Window): readonly Tick[] => {
  const middle = MARGIN + Math.round(OVERLAP / 2)
  const others = windows.filter((other) => other.left !== left || other.top !== top)
  const seam = (mine: number, theirs: number): number => Math.max(mine, theirs) + middle
  return others.flatMap((other) => {
    const [across, down] = [Math.abs(other.left - left), Math.abs(other.top - top)]
    const besides = down === 0 && across > 0 && across < width
    const below = across === 0 && down > 0 && down < height
    const ys = [top + FROM_END, top + height - FROM_END]
    const xs = [left + FROM_END, left + width - FROM_END]
    if (besides) return ys.flatMap((y) => cross(seam(left, other.left), y))
    return below ? xs.flatMap((x) => cross(x, seam(top, other.top))) : []
  })
}

const within = (template: PrintedTemplate, window: Window): readonly (readonly [number, number])[] => {
  const edge = template.holeMicrometres / 2
  return template.holes
    .filter(
      ([x, y]) =>
        x - edge >= window.left &&
        x + edge <= window.left + window.width &&
        y - edge >= window.top &&
        y + edge <= window.top + window.height,
    )
    .map(([x, y]): readonly [number, number] => [x - window.left, y - window.top])
}

const rulerOf = (facts: TemplatePrintFacts, words: TicketWords): Block => {
  const inches = facts.show.length === 'in'
  const unit = inches ? 25_400 : 10_000
  const count = inches ? 6 : 15
  const labels = Array.from({ length: count + 1 }, (_label, at) => ({ atMicrometres: at * unit, text: String(at) }))
  const last = labels.at(-1)
  return {
    kind: 'ruler',
    alternative: words.template.ruler(`${count} ${facts.show.length}`),
    lengthMicrometres: count * unit,
    tickMicrometres: unit / 10,
    labels: [...labels.slice(0, -1), ...(last === undefined ? [] : [{ ...last, text: `${last.text} ${facts.show.length}` }])],
  }
}

const onSheet = ({ left, top }: Window, [x, y]: readonly [number, number]): readonly [number, number] => [x - left, y - top]

type Shown = {
  readonly template: PrintedTemplate
  readonly windows: readonly Window[]
  readonly window: Window
  readonly at: number
}

const sheetOf = (facts: TemplatePrintFacts, words: TicketWords, { template, windows, window, at }: Shown): Sheet => {
  const said = words.template
  const of = windows.length
  const holes = within(template, window)
  const height = formatLength(micrometres(template.heightMicrometres), facts.show.length)
  const title = said.title(template.text, height, template.stone)
  const plate: PlateBlock = {
    kind: 'plate',
    alternative: said.holes(holes.length),
    widthMicrometres: window.width,
    heightMicrometres: window.height,
    paths: of === 1 ? template.paths : [],
    shiftMicrometres: [-window.left, -window.top],
    circles: [{ diameterMicrometres: template.holeMicrometres, at: holes }],
    ticks: [...ticksOf(template, window), ...seamsOf(windows, window)].map((tick) => ({
      from: onSheet(window, tick.from),
      to: onSheet(window, tick.to),
    })),
  }
  return {
    title,
    blocks: [
      { kind: 'heading', level: 2, text: title },
      { kind: 'text', style: 'strong', text: `${said.fullSize} · ${said.readsRight} · ${said.sheet(at + 1, of)}` },
      ...(of === 1 ? [] : [{ kind: 'text', style: 'body', text: said.join } as const]),
      rulerOf(facts, words),
      { kind: 'text', style: 'strong', text: said.top },
      plate,
    ],
  }
}

/**
 * Stone templates drawn one to one, each in as many sheets as the paper needs, every sheet with a ruler that shows whether it
 * was printed at 100 %. Templates are not mirrored.
 */
export const composeTemplatePrint = (facts: TemplatePrintFacts, words: TicketWords): Ticket => {
  const shown = facts.templates.flatMap((template) => {
    const windows = windowsOf(template, facts.show.paper)
    return windows.map((window, at): Shown => ({ template, windows, window, at }))
  })
  return {
    title: words.template.all(facts.of),
    language: words.language,
    paper: facts.show.paper,
    made: facts.now,
    running: [facts.of, words.head.revision(facts.revision)].join(' · '),
    foot: words.head.page,
    lacking: words.head.lacking,
    sheets: shown.map((one) => sheetOf(facts, words, one)),
  }
}
