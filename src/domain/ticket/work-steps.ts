import type { PressStep } from '../press/press-plan.ts'
import type { TicketFacts } from './facts.ts'

export const workKinds = ['cut', 'weed', 'brush', 'press', 'inspect', 'bag'] as const
export type WorkKind = (typeof workKinds)[number]

/** A step that can be ticked for chosen lines. Steps at the press keep the number of the printed sequence; the bench's are fixed. */
export type WorkStep = {
  readonly no: number
  readonly kind: WorkKind
  readonly press: PressStep | null
  readonly lines: readonly number[]
}

const benchNumbers = { cut: 1_001, weed: 1_002, brush: 1_003, inspect: 1_004, bag: 1_005 } as const

const atBench = (kind: keyof typeof benchNumbers, lines: readonly number[]): WorkStep => ({
  no: benchNumbers[kind],
  kind,
  press: null,
  lines,
})

type Worked = Pick<TicketFacts, 'roster' | 'press' | 'vinyl' | 'stones'>

/** Everything that is ticked on a ticket, in the order of the work. */
export const workSteps = ({ roster, press, vinyl, stones }: Worked): readonly WorkStep[] => {
  const lines = roster.map(({ line }) => line)
  return [
    atBench('cut', lines),
    ...(vinyl.length > 0 ? [atBench('weed', lines)] : []),
    ...(stones.length > 0 ? [atBench('brush', lines)] : []),
    ...press.map((step): WorkStep => ({ no: step.no, kind: 'press', press: step, lines: step.lines })),
    atBench('inspect', lines),
    atBench('bag', lines),
  ]
}

export type StepState = 'waiting' | 'taken' | 'started' | 'done' | 'spoiled'
export type Ticked = { readonly step: number; readonly line: number; readonly state: StepState; readonly by: string | null }

export const tickOf = (ticks: readonly Ticked[], step: number, line: number): Ticked =>
  ticks.find((tick) => tick.step === step && tick.line === line) ?? { step, line, state: 'waiting', by: null }

/** Whether every step of a kind that a line goes through is ticked; a line that goes through none counts as done. */
export const isThrough = (steps: readonly WorkStep[], ticks: readonly Ticked[], of: { kind: WorkKind; line: number }): boolean =>
  steps
    .filter(({ kind, lines }) => kind === of.kind && lines.includes(of.line))
    .every(({ no }) => tickOf(ticks, no, of.line).state === 'done')

export type LineState = 'not-cut' | 'cut' | 'pressed' | 'bagged'

/** How far a line is by its ticks. */
export const lineState = (steps: readonly WorkStep[], ticks: readonly Ticked[], line: number): LineState => {
  const through = (kind: WorkKind): boolean => isThrough(steps, ticks, { kind, line })
  if (!through('cut')) return 'not-cut'
  if (!through('press')) return 'cut'
  return through('bag') ? 'bagged' : 'pressed'
}
