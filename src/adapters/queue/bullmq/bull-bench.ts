import { UnrecoverableError } from 'bullmq'
import { type Bench, type GivenUp, type Handlers, Hopeless, type Step } from '../../../ports/queue.ts'
import { type OnTrouble, openBullWorker, type QueuePlace, type RunningJob } from './connection.ts'
import { stepSchema } from './step-schema.ts'

export type Ran = { readonly step: Step; readonly milliseconds: number; readonly cause: unknown }

export type BenchSettings = {
  readonly handlers: Handlers
  /** Called once for each step that will not be run again. */
  readonly onGivenUp: (givenUp: GivenUp) => Promise<void>
  readonly onTrouble: OnTrouble
  /** Told of every run of a step; a cause when it threw. */
  readonly onRan?: (ran: Ran) => void
  /** Steps in hand at once. They share one thread: more than a few help only those that wait for others. */
  readonly concurrency?: number
  /** A step that its worker has not confirmed for so long is taken for lost and run again. */
  readonly lockMilliseconds?: number
}

const handle = (handlers: Handlers, step: Step): Promise<void> => {
  switch (step.step) {
    case 'quote':
      return handlers.quote(step)
    case 'price':
      return handlers.price(step)
    case 'plan':
      return handlers.plan(step)
    case 'ticket':
      return handlers.ticket(step)
    case 'post':
      return handlers.post(step)
    case 'remind':
      return handlers.remind(step)
  }
}

const parse = (job: RunningJob): Step => {
  const parsed = stepSchema.safeParse(job.data)
  if (parsed.success) return parsed.data
  throw new UnrecoverableError(`job ${job.id} is no step: ${parsed.error.message}`)
}

const runWith =
  (handlers: Handlers, onRan: (ran: Ran) => void) =>
  async (job: RunningJob): Promise<void> => {
    const step = parse(job)
    const from = performance.now()
    try {
      await handle(handlers, step)
      onRan({ step, milliseconds: performance.now() - from, cause: null })
    } catch (cause) {
      onRan({ step, milliseconds: performance.now() - from, cause })
      if (cause instanceof Hopeless) throw new UnrecoverableError(cause.message)
      throw cause
    }
  }

/** A worker that dies takes its step along; five deaths of the same step are no accident. */
const mostDeaths = 5

/** Works on the queue's steps until it is closed; closing waits for the steps in hand. */
export const openBench = async (place: QueuePlace, settings: BenchSettings): Promise<Bench> => {
  const { handlers, onGivenUp, onTrouble, onRan = () => undefined, concurrency = 2, lockMilliseconds = 30_000 } = settings
  const failed = (job: RunningJob, cause: Error): void => {
    const step = stepSchema.safeParse(job.data)
    if (!step.success) onTrouble(cause)
    if (job.finishedOn === undefined || !step.success) return
    const hopeless = cause instanceof UnrecoverableError
    onGivenUp({ step: step.data, hopeless, reason: cause.message }).catch(onTrouble)
  }
  const stalledInterval = Math.min(5_000, lockMilliseconds)
  const options = { concurrency, lockDuration: lockMilliseconds, stalledInterval, maxStalledCount: mostDeaths }
  const { it: worker, close } = openBullWorker(place, { run: runWith(handlers, onRan), failed, options }, onTrouble)
  await worker.waitUntilReady()
  return { close }
}
