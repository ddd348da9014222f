import type { StationKind } from '../../../src/domain/schedule/book/operation.ts'
import type { PlanReason } from '../../../src/domain/schedule/book/plan-reason.ts'
import type { Fix } from '../../../src/domain/schedule/explain/bottleneck.ts'
import type { Cause } from '../../../src/domain/schedule/explain/causes.ts'
import type { LearnedStage } from '../../../src/domain/schedule/work/learned-rates.ts'

/** What stands for a fix in a sentence: whom or what it is about, until when, how long. */
export type FixFacts = { readonly subject: string; readonly at: string; readonly duration: string }

/** The owner's load page and the questions it sends to customers, in words. */
export type LoadWords = {
  readonly title: string
  readonly stationsTitle: string
  readonly dueTitle: string
  readonly pictureAlt: (worst: string) => string
  readonly idle: string
  readonly calm: string
  readonly stopped: (job: string, promised: string | null) => string
  readonly over: (kind: string, day: string, percent: number) => string
  readonly worst: (name: string, day: string, percent: number) => string
  readonly station: string
  readonly kinds: { readonly [kind in StationKind]: string }
  readonly kindsOf: { readonly [kind in StationKind]: string }
  readonly days: readonly [string, string, string, string, string, string, string]
  readonly date: (month: number, day: number) => string
  readonly duration: (days: number, hours: number, minutes: number) => string
  readonly lateTitle: string
  readonly nobodyLate: string
  readonly late: (job: string, by: string, promised: string) => string
  readonly tight: (job: string, slack: string, promised: string) => string
  readonly causes: { readonly [cause in Cause['cause']]: (duration: string, about: string) => string }
  readonly work: { readonly [prefix: string]: string }
  readonly because: string
  readonly fixesTitle: string
  readonly fixes: { readonly [code in Fix['code']]: (facts: FixFacts) => string }
  readonly buttons: { readonly [code in Fix['code']]: string }
  readonly mended: (job: string) => string
  readonly notMended: (job: string, by: string) => string
  readonly asked: (job: string) => string
  readonly gone: string
  readonly ownerOnly: string
  readonly proposal: {
    readonly 'move-promise': (at: string) => string
    readonly 'split-collection': (parts: {
      readonly garments: number
      readonly of: number
      readonly at: string
      readonly rest: string
    }) => string
    readonly 'drop-stones': (at: string) => string
    readonly yes: string
    readonly no: string
    readonly thanks: { readonly 'move-promise': (at: string) => string; readonly 'split-collection': (at: string) => string }
    /** What is said in the customer's name when they agree to leave the stones off. */
    readonly withoutStones: string
    readonly refused: string
    readonly over: string
  }
  readonly answered: { readonly yes: (job: string, what: string) => string; readonly no: (job: string, what: string) => string }
  readonly ratesTitle: string
  readonly ratesLead: string
  readonly stages: { readonly [stage in LearnedStage]: string }
  readonly rate: (took: number, seen: number, spread: number) => string
  readonly rateUnseen: string
  readonly frozen: string
  readonly freeze: string
  readonly thaw: string
  readonly keptTitle: string
  readonly kept: { readonly [reason in PlanReason]: string }
}

/** Parts of a length of time, those that are nothing left out. */
export const joined = (parts: readonly string[]): string => parts.filter((part) => part !== '').join(' ')

/** A sentence with its full stop: an abbreviation at its end (“5 p. m.”) has brought one. */
export const ended = (sentence: string): string => (sentence.endsWith('.') ? sentence : `${sentence}.`)
