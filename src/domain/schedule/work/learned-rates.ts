import { type Axis, workBetween } from '../../calendar/axis.ts'
import type { Operation } from '../book/operation.ts'
import { type LearnedRate, learnRate, rateFrom } from './learn-rate.ts'
import type { Rates } from './rates.ts'

/** What is learned apart: cutting, weeding and brushing up to the first piece; pressing, inspecting and bagging after it. */
export const learnedStages = ['before-the-press', 'at-the-press'] as const
export type LearnedStage = (typeof learnedStages)[number]
export const isLearnedStage = (name: string): name is LearnedStage => learnedStages.some((stage) => stage === name)

/** Per stage, the minutes that a hundred planned minutes took. */
export type LearnedRates = { readonly [stage in LearnedStage]: LearnedRate }

const planned = 100

/** The pace of a shop that nothing was seen of: its own rates, a hundred for a hundred. */
export const ratesAsSet: LearnedRates = { 'before-the-press': rateFrom(planned), 'at-the-press': rateFrom(planned) }

const stageOf = (operation: string): LearnedStage | null => {
  if (/^(?:cut-|plugs|coupon|weed-|brush-)/.test(operation)) return 'before-the-press'
  return /^(?:first-piece|press-|inspect-)/.test(operation) ? 'at-the-press' : null
}

/** Something that was done with a ticket, in epoch minutes. */
export type Happened = { readonly code: string; readonly at: number }

/** Stretches in which somebody had the ticket in hand, between two moments. */
const inHand = (happened: readonly Happened[], from: number, to: number): readonly (readonly [number, number])[] => {
  const stretches: (readonly [number, number])[] = []
  let since: number | null = from
  for (const { code, at } of happened) {
    if (at < from || at > to) continue
    if ((code === 'hand-on' || code === 'pause') && since !== null) {
      stretches.push([since, at])
      since = null
    }
    if ((code === 'take' || code === 'resume') && since === null) since = at
  }
  return since === null ? stretches : [...stretches, [since, to]]
}

const lastOf = (happened: readonly Happened[], code: string): number | null =>
  happened.filter((one) => one.code === code).at(-1)?.at ?? null

/** Per stage, what a hundred minutes of the shop's own rates were reckoned as when an order was planned. */
export type Reckoned = { readonly [stage in LearnedStage]: number }

const asSet: Reckoned = { 'before-the-press': planned, 'at-the-press': planned }

/** The pace at which an order that is planned now is reckoned. */
export const reckonedAt = (pace: LearnedRates): Reckoned => ({
  'before-the-press': pace['before-the-press'].minutes,
  'at-the-press': pace['at-the-press'].minutes,
})

/** Minutes of a stage by the shop's own rates, and the open minutes it took while the ticket was in somebody's hands. */
export type WorkSeen = { readonly stage: LearnedStage; readonly plannedMinutes: number; readonly tookMinutes: number }

/**
 * What a ticket's own record says about the shop's pace: from its start to the signed first piece, and from there until it was
 * checked. It is measured against the shop's own rates, whatever pace the order was planned at: else what was learned would be
 * unlearned by the next order. Without a signed first piece, or a start, nothing can be told apart and nothing is learned.
 */
export const workSeen = (
  happened: readonly Happened[],
  work: { readonly operations: readonly Operation[]; readonly reckoned?: Reckoned | undefined },
  open: Axis,
): readonly WorkSeen[] => {
  const { operations, reckoned = asSet } = work
  const start = lastOf(happened, 'start')
  const first = lastOf(happened, 'first-piece')
  const checked = lastOf(happened, 'checked')
  if (start === null || first === null || checked === null || first < start || checked < first) return []
  const seen = (stage: LearnedStage, from: number, to: number): WorkSeen => ({
    stage,
    plannedMinutes:
      (operations.reduce((sum, one) => (stageOf(one.id) === stage ? sum + one.minutes : sum), 0) * planned) / reckoned[stage],
    tookMinutes: inHand(happened, from, to).reduce((sum, [a, b]) => sum + workBetween(open, a, b), 0),
  })
  const both = [seen('before-the-press', start, first), seen('at-the-press', first, checked)]
  return both.filter((one) => one.plannedMinutes > 0 && one.tookMinutes > 0)
}

/** The rates after what was seen; frozen ones stay. */
export const learned = (rates: LearnedRates, seen: readonly WorkSeen[]): LearnedRates => {
  const after = (stage: LearnedStage): LearnedRate =>
    seen
      .filter((one) => one.stage === stage)
      .reduce((rate, one) => learnRate(rate, (one.tookMinutes * planned) / one.plannedMinutes), rates[stage])
  return { 'before-the-press': after('before-the-press'), 'at-the-press': after('at-the-press') }
}

/** The rates with one frozen, or free to learn again. */
export const withFrozen = (rates: LearnedRates, stage: LearnedStage, frozen: boolean): LearnedRates => ({
  ...rates,
  [stage]: { ...rates[stage], frozen },
})

/** The shop's rates at the pace that was learned. */
export const atPace = (rates: Rates, pace: LearnedRates): Rates => {
  const before = pace['before-the-press'].minutes / planned
  const press = pace['at-the-press'].minutes / planned
  const { cutter, weed, template, brush } = rates
  return {
    ...rates,
    couponMinutes: rates.couponMinutes * before,
    cutter: { loadMinutes: cutter.loadMinutes * before, pieceEach: cutter.pieceEach * before },
    weed: { ...weed, numberEach: weed.numberEach * before, nameEach: weed.nameEach * before, markEach: weed.markEach * before },
    template: {
      cutEach: template.cutEach * before,
      plugsPer400Holes: template.plugsPer400Holes * before,
      boardEach: template.boardEach * before,
    },
    brush: {
      ...brush,
      usualPerMinute: brush.usualPerMinute / before,
      smallPerMinute: brush.smallPerMinute / before,
      tapeEach: brush.tapeEach * before,
    },
    press: {
      plainEach: rates.press.plainEach * press,
      twoColourEach: rates.press.twoColourEach * press,
      stonedSideEach: rates.press.stonedSideEach * press,
      firstPieceMinutes: rates.press.firstPieceMinutes * press,
    },
    inspectAndBagEach: rates.inspectAndBagEach * press,
  }
}
