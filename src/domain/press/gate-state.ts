import type { Gate } from './press-plan.ts'
import { dropsVerdict, slowestOf } from './water-drops.ts'

/** What somebody found at a gate; `at` in epoch minutes. Fields that do not belong to the gate are absent. */
export type Found = {
  readonly code: string
  readonly by: string
  readonly at: number
  readonly garment?: string
  readonly subject?: string
  readonly result?: string
  readonly seconds?: readonly number[]
  readonly missing?: number
}

export const gateReasons = [
  'not-done',
  'passed',
  'short',
  'sunk',
  'wants-test-press',
  'beaded',
  'waits',
  'bled',
  'skipped',
  'failed',
  'wants-second',
] as const
export type GateReason = (typeof gateReasons)[number]

/** `open`: goes on. `closed`: somebody must look. `shut`: this revision cannot go on. `lookAt`: not before this minute. */
export type GateState = {
  readonly gate: Gate
  readonly is: 'open' | 'closed' | 'shut'
  readonly why: GateReason
  readonly lookAt: number | null
}

type Answer = Omit<GateState, 'gate'>
const answer = (is: Answer['is'], why: GateReason, lookAt: number | null = null): Answer => ({ is, why, lookAt })
const notDone = answer('closed', 'not-done')

const last = (found: readonly Found[], code: string): Found | undefined => found.filter((one) => one.code === code).at(-1)

const byResult = (one: Found | undefined, good: string): Answer => {
  if (one === undefined) return notDone
  return one.result === good ? answer('open', 'passed') : answer('shut', 'failed')
}

const countIn = (found: readonly Found[]): Answer => {
  const one = last(found, 'count-in')
  if (one === undefined) return notDone
  return (one.missing ?? 0) > 0 ? answer('closed', 'short') : answer('open', 'passed')
}

/** Drops that sink slowly ask for a piece that is pressed and tried with the nail. */
const waterDrops = (found: readonly Found[]): Answer => {
  const one = last(found, 'water-drops')
  const seconds = one?.seconds ?? []
  if (seconds.length === 0) return notDone
  const verdict = dropsVerdict(slowestOf(seconds))
  if (verdict === 'sunk') return answer('open', 'sunk')
  if (verdict === 'beaded') return answer('shut', 'beaded')
  const tried = last(found, 'test-press')
  if (tried === undefined) return answer('closed', 'wants-test-press')
  return tried.result === 'held' ? answer('open', 'passed') : answer('shut', 'failed')
}

/**
 * One piece is pressed and looked at after the wait; a customer may sign that the wait is skipped. Once dye came through, only another
 * piece that was pressed afterwards and waited in its turn opens the gate: nobody skips what is known to bleed.
 */
const bleedTest = (gate: Gate, found: readonly Found[], now: number): Answer => {
  const tests = found.filter(({ code }) => code === 'bleed-test')
  const bled = tests.findLastIndex(({ result }) => result === 'bled')
  const since = tests.slice(bled + 1).filter(({ result }) => bled < 0 || result !== 'skipped')
  const pressed = since.find(({ result }) => result === 'pressed')
  const one = since.at(-1)
  if (bled >= 0 && pressed === undefined) return answer('shut', 'bled')
  if (one === undefined) return notDone
  if (one.result === 'skipped') return answer('open', 'skipped')
  const lookAt = (pressed?.at ?? one.at) + gate.waitMinutes
  if (one.result === 'clean' && one.at >= lookAt) return answer('open', 'passed')
  return answer('closed', now < lookAt ? 'waits' : 'not-done', lookAt)
}

/** A second person signs the first piece: never the one who made it. */
const firstPiece = (found: readonly Found[]): Answer => {
  const made = last(found, 'first-piece')
  if (made === undefined) return notDone
  const seen = found.filter(({ code, by, at }) => code === 'second-look' && by !== made.by && at >= made.at).at(-1)
  if (seen === undefined) return answer('closed', 'wants-second')
  return seen.result === 'right' ? answer('open', 'passed') : answer('closed', 'failed')
}

const stateOf = (gate: Gate, found: readonly Found[], now: number): Answer => {
  switch (gate.code) {
    case 'count-in':
      return countIn(found)
    case 'strings':
      return byResult(last(found, 'strings'), 'no-strings')
    case 'water-drops':
      return waterDrops(found)
    case 'test-press':
      return byResult(last(found, 'test-press'), 'held')
    case 'bleed-test':
      return bleedTest(gate, found, now)
    case 'certificate':
      return byResult(last(found, 'certificate'), 'seen')
    case 'coupon':
      return byResult(last(found, 'coupon'), 'held')
    case 'first-piece':
      return firstPiece(found)
  }
}

const isOf =
  (gate: Gate) =>
  (one: Found): boolean =>
    one.code === 'certificate' || one.code === 'coupon'
      ? one.subject === gate.subject
      : one.garment === undefined || gate.garment === null || one.garment === gate.garment

/** How every gate of a ticket stands by what was found so far. */
export const gateStates = (gates: readonly Gate[], found: readonly Found[], now: number): readonly GateState[] =>
  gates.map((gate) => ({ gate, ...stateOf(gate, found.filter(isOf(gate)), now) }))
