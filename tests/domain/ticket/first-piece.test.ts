import { describe, expect, test } from 'vitest'
import type { GateState } from '../../../src/domain/press/gate-state.ts'
import { pieceWait, waitingForPiece } from '../../../src/domain/ticket/first-piece.ts'
import { making, type Work } from '../../../src/domain/ticket/made.ts'
import { workSteps } from '../../../src/domain/ticket/work-steps.ts'
import { footballFacts, rosterRow, sideSteps } from './facts.builder.ts'

const workOf = (quantities: readonly number[]): Work => {
  const roster = quantities.map((quantity, at) => rosterRow(at + 1, { quantity }))
  const lines = roster.map(({ line }) => line)
  return { roster, steps: workSteps({ ...footballFacts(1), roster, press: sideSteps('back', lines, 1) }), ticks: [] }
}

const ticked = (work: Work, line: number, kinds: readonly string[] = making): Work => {
  const steps = work.steps.filter((step) => kinds.includes(step.kind))
  return { ...work, ticks: [...work.ticks, ...steps.map(({ no }) => ({ step: no, line, state: 'done' as const, by: 'Noor' }))] }
}

const stateOf = (garment: string | null, rest: Partial<Omit<GateState, 'gate'>> = {}): GateState => ({
  gate: { code: 'first-piece', garment, subject: garment ?? '', blocks: 'run', waitMinutes: 0 },
  is: 'closed',
  why: 'not-done',
  lookAt: null,
  ...rest,
})

const three = workOf([1, 1, 1])
const garment = three.roster[0]?.garment ?? ''
const bench = ['cut', 'weed', 'brush']

describe('a first piece that is not signed waits', () => {
  test.each([
    ['for its steps', three, stateOf(garment), 'make'],
    ['for its steps at the press', ticked(three, 1, bench), stateOf(garment), 'make'],
    ['to be written down', ticked(three, 2), stateOf(garment), 'write'],
    ['for a second person', ticked(three, 2), stateOf(garment, { why: 'wants-second' }), 'sign'],
    ['to be made right', ticked(three, 2), stateOf(garment, { why: 'failed' }), 'again'],
    ['for its steps once it was taken back', ticked(three, 2, bench), stateOf(garment, { why: 'failed' }), 'make'],
    ['for its cutting where lines are of several', workOf([5, 5]), stateOf(garment), 'make'],
    ['to be pressed by hand where lines are of several', ticked(workOf([5, 5]), 1, bench), stateOf(garment), 'alone'],
    ['for the only single one', ticked(workOf([5, 1]), 1, bench), stateOf(garment), 'make'],
    ['no more once it is signed', ticked(three, 2), stateOf(garment, { is: 'open', why: 'passed' }), null],
  ] as const)('%s', (_, work, state, wait) => {
    expect(pieceWait(work, state)).toBe(wait)
  })

  test('and a gate of another kind waits for none', () => {
    const state = stateOf(garment)
    expect(pieceWait(three, { ...state, gate: { ...state.gate, code: 'count-in' } })).toBeNull()
  })
})

describe('lines that wait for a first piece', () => {
  const waits = (work: Work, kind: 'cut' | 'press' | 'inspect', states = [stateOf(garment)]) => [
    ...waitingForPiece(work, states, kind),
  ]

  test('are all but the one that goes ahead at the press, and that one, too, before it is looked at', () => {
    expect([waits(three, 'cut'), waits(three, 'press'), waits(three, 'inspect')]).toEqual([[], [2, 3], [1, 2, 3]])
    expect(waits(ticked(three, 3, bench), 'press')).toEqual([1, 2])
  })

  test('are those of the garments whose gate is shut, each kind for itself', () => {
    const roster = three.roster.map((row) => (row.line === 1 ? row : { ...row, garment: 'other' }))
    const work = { ...three, roster }
    expect(waits(work, 'press')).toEqual([])
    expect(waits(work, 'press', [stateOf(garment), stateOf('other')])).toEqual([3])
    expect(waits(work, 'press', [stateOf('other', { is: 'open', why: 'passed' })])).toEqual([])
  })

  test('are all where every line is of several garments: ticks would take a line whole', () => {
    expect(waits(workOf([5, 5]), 'press')).toEqual([1, 2])
    expect(waits(workOf([5, 1]), 'press')).toEqual([1])
  })
})
