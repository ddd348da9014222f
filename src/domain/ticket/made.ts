import type { RosterFacts } from './facts.ts'
import { type Ticked, tickOf, type WorkKind, type WorkStep } from './work-steps.ts'

/** A ticket's lines, what is done with them, and what is ticked of it so far. */
export type Work = {
  readonly roster: readonly RosterFacts[]
  readonly steps: readonly WorkStep[]
  readonly ticks: readonly Ticked[]
}

/** A step that a line still has to go through. */
export type Wanting = { readonly step: WorkStep; readonly line: number }

/** What makes a piece, before anybody looks at it. */
export const making: readonly WorkKind[] = ['cut', 'weed', 'brush', 'press']

const wantingOf = ({ steps, ticks }: Work, kinds: readonly WorkKind[], line: number): readonly Wanting[] =>
  steps
    .filter((step) => kinds.includes(step.kind) && step.lines.includes(line) && tickOf(ticks, step.no, line).state !== 'done')
    .map((step) => ({ step, line }))

/** The steps of these kinds that some of the lines still have to go through, each once, in the order of the work. */
export const wanting = (work: Work, kinds: readonly WorkKind[], lines: readonly number[]): readonly WorkStep[] => {
  const open = new Set(lines.flatMap((line) => wantingOf(work, kinds, line)).map(({ step }) => step.no))
  return work.steps.filter(({ no }) => open.has(no))
}

/** A line of which a first piece is made, and what it still has to go through; `line` is null where ticks would take several at once. */
type Leader = { readonly line: number | null; readonly wants: readonly Wanting[] }

/** The line of a garment that has gone furthest to a first piece; of several the first. */
const leaderOf = (work: Work, garment: string | null): Leader => {
  const pressed = new Set(work.steps.flatMap(({ kind, lines }) => (kind === 'press' ? lines : [])))
  const own = work.roster.filter((row) => (garment === null || row.garment === garment) && pressed.has(row.line))
  const single = own.filter(({ quantity }) => quantity === 1)
  const kinds = single.length > 0 ? making : making.filter((kind) => kind !== 'press')
  const leaders = (single.length > 0 ? single : own).map(({ line, quantity }) => ({
    line: quantity === 1 ? line : null,
    wants: wantingOf(work, kinds, line),
  }))
  return leaders.toSorted((a, b) => a.wants.length - b.wants.length)[0] ?? { line: null, wants: [] }
}

/**
 * What must be ticked before a first piece of a garment is there, on the line that has gone furthest; empty when it is. A line of
 * several garments is ticked as a whole: where there is no other, its first piece is made before its pressing is ticked.
 */
export const beforeFirstPiece = (work: Work, garment: string | null): readonly Wanting[] => leaderOf(work, garment).wants

/** The line that goes through the press alone before the first piece of its garment is signed; null where every line is of several. */
export const firstPieceLine = (work: Work, garment: string | null): number | null => leaderOf(work, garment).line

/** How many garments of some lines are through a step or go through it now. */
export const piecesThrough = ({ roster, ticks }: Work, step: WorkStep, now: readonly number[]): number =>
  roster
    .filter(({ line }) => step.lines.includes(line) && (now.includes(line) || tickOf(ticks, step.no, line).state === 'done'))
    .reduce((sum, { quantity }) => sum + quantity, 0)
