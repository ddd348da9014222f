import type { OrderStepName } from './queue.ts'

/** How one kind of step stands: due and not done, how long the oldest of them waits, and given up. */
export type StepFigures = {
  readonly step: OrderStepName
  readonly due: number
  readonly oldestSeconds: number
  readonly givenUp: number
}
/** From a customer's sign that all is said until the promise is worked out, over the last hour; null when there was none. */
export type PromiseFigures = { readonly many: number; readonly medianSeconds: number; readonly p95Seconds: number } | null

export type StoreFigures = {
  readonly steps: readonly StepFigures[]
  readonly promises: PromiseFigures
  /** Since the plan was last written; null before the first. */
  readonly planSeconds: number | null
  /** Rows that wait to be handed to the queue. */
  readonly unsent: number
}
