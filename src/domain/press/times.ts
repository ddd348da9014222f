import type { Draft } from './step-draft.ts'

/**
 * Labour at the press by what is done, in seconds for one garment (common practice: a plain place 1.2-2 min, two colours
 * 2-3, stones 3-4 a side when two garments are worked in turn). Closed seconds are labour too: nobody leaves a closed press.
 */
const load = 45
const closing = 5
const handling: Readonly<Record<Draft['action'], number>> = {
  'pre-press': 0,
  protect: 10,
  place: 20,
  tack: 0,
  press: 0,
  lift: 15,
  cool: 0,
  peel: 8,
  inspect: 8,
  'press-inside': 5,
  turn: 10,
  'turn-out': 15,
  'turn-back': 5,
}
const stonePlace = 45
const stonePeel = 25
const stoneInspect = 30

const withStones = (step: Draft): boolean => step.cover === 'tape' || step.lookFor.includes('stone-that-lifts')

const handlingOf = (step: Draft): number => {
  if (step.action === 'place' && withStones(step)) return stonePlace
  if (step.action === 'peel' && withStones(step)) return stonePeel
  if (step.action === 'inspect' && step.lookFor.includes('empty-holes')) return stoneInspect
  if (step.action === 'protect' && step.inside === 'none') return 0
  return handling[step.action]
}

const closedSeconds = (step: Draft): number => (step.tenthsC === null ? 0 : (step.seconds ?? 0) + closing)

/** Labour of one garment through one set-up, in seconds; cooling runs beside the next garment. */
export const labourSeconds = (steps: readonly Draft[]): number =>
  load + steps.reduce((sum, step) => sum + handlingOf(step) + closedSeconds(step), 0)

const awayFromPress: readonly Draft['action'][] = ['cool', 'inspect']

/** Seconds for which one garment keeps the press from another. */
export const machineSeconds = (steps: readonly Draft[]): number =>
  load +
  steps
    .filter((step) => !awayFromPress.includes(step.action) && !(step.action === 'peel' && withStones(step)))
    .reduce((sum, step) => sum + handlingOf(step) + closedSeconds(step), 0)

/** Once per batch (common practice): a change of temperature 5-15 min, of pad or pressure less; a first piece 10-15 min. */
export const setUpSeconds = { sameFamily: 60, newTemperature: 600, otherChange: 240, firstPiece: 750 } as const
