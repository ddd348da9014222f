/**
 * The catalogue of queued steps. A step carries ids only and may run twice: it loads, asks the store whether its result is
 * there, computes, stores, and passes on by the outbox. `attempt` is counted in the store, because a job id that is still
 * kept is silently ignored.
 */
export const orderSteps = ['quote', 'price', 'plan', 'ticket', 'post'] as const
export type OrderStepName = (typeof orderSteps)[number]

export type OrderStep<Name extends OrderStepName> = {
  readonly step: Name
  readonly shopId: string
  readonly orderId: string
  readonly revision: number
  readonly attempt: number
}
/** Asks the clock what must be said or let go; `minute` is the minute it was sent. */
export type RemindStep = { readonly step: 'remind'; readonly shopId: string; readonly minute: number }

export type Step =
  | OrderStep<'quote'>
  | OrderStep<'price'>
  | OrderStep<'plan'>
  | OrderStep<'ticket'>
  | OrderStep<'post'>
  | RemindStep
export type StepName = Step['step']
export type StepOf<Name extends StepName> = Extract<Step, { readonly step: Name }>

/** `<step>-<orderId>-<revision>-<attempt>`, `remind-<shop>-<minute>`: letters first, no colon. */
export const stepId = (step: Step): string =>
  step.step === 'remind'
    ? `remind-${step.shopId}-${step.minute}`
    : `${step.step}-${step.orderId}-${step.revision}-${step.attempt}`

/** Thrown by a step that no repetition can mend; everything else that is thrown means again. */
export class Hopeless extends Error {
  override readonly name = 'Hopeless'
}

export type Queue = {
  /** Adding a step that the queue still holds changes nothing. */
  readonly add: (step: Step) => Promise<void>
  /** Whether the queue holds the step and will still run it. */
  readonly isLive: (step: Step) => Promise<boolean>
  readonly counts: () => Promise<{ readonly waiting: number; readonly active: number; readonly failed: number }>
  readonly close: () => Promise<void>
}

/** Exactly one handler for each step. */
export type Handlers = { readonly [Name in StepName]: (step: StepOf<Name>) => Promise<void> }

/** A step that will not be run again: it was hopeless, or it failed as often as it may. */
export type GivenUp = { readonly step: Step; readonly hopeless: boolean; readonly reason: string }

/** Steps being worked on in this process. `close` waits for those in hand. */
export type Bench = { readonly close: () => Promise<void> }
