import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import { orderSteps, type StepName } from '../../ports/queue.ts'
import type { StoreFigures } from '../../ports/store-figures.ts'

/** What a scrape asks for; counts and seconds alone, nothing of anybody. */
type ShopFigures = StoreFigures & { readonly shopId: string; readonly tightJobs: number }
export type Sources = {
  readonly figures: () => Promise<readonly ShopFigures[]>
  /** Null in a process that does not hold the queue. */
  readonly queue: (() => Promise<{ readonly waiting: number; readonly active: number; readonly failed: number }>) | null
}

export type Outcome = 'done' | 'failed'
export type Metrics = {
  readonly contentType: string
  /** Everything in the text format of Prometheus. */
  readonly text: () => Promise<string>
  readonly ran: (step: StepName, seconds: number, outcome: Outcome) => void
}

type Gauges = { readonly set: (shops: readonly ShopFigures[]) => void }

const makeGauges = (registers: Registry[]): Gauges => {
  const gauge = <Label extends string = never>(name: string, help: string, more: Label[] = []): Gauge<Label | 'shop'> =>
    new Gauge({ name: `platenpost_${name}`, help, labelNames: ['shop' as const, ...more], registers })
  const due = gauge('steps_due', 'Steps that are due and not done.', ['step'])
  const age = gauge('step_oldest_seconds', 'How long the oldest due step waits.', ['step'])
  const givenUp = gauge('steps_given_up', 'Steps that wait for a person’s retry.', ['step'])
  const promise = gauge('promise_seconds', 'From the last word to the promise, over the last hour.', ['quantile'])
  const promises = gauge('promises_last_hour', 'Promises worked out in the last hour.')
  const plan = gauge('plan_age_seconds', 'Since the plan was last written.')
  const posts = gauge('posts_pending', 'Tickets that are printed and not posted.')
  const tight = gauge('tight_jobs', 'Sold orders that are planned to end less than a day before they are promised, or unplanned.')
  const unsent = gauge('outbox_waiting', 'Steps that wait to be handed to the queue.')
  const setSteps = ({ shopId: shop, steps }: ShopFigures): void => {
    for (const step of orderSteps) {
      const found = steps.find((one) => one.step === step)
      due.set({ shop, step }, found?.due ?? 0)
      age.set({ shop, step }, found?.oldestSeconds ?? 0)
      givenUp.set({ shop, step }, found?.givenUp ?? 0)
    }
    posts.set({ shop }, steps.find((one) => one.step === 'post')?.due ?? 0)
  }
  const setRest = ({ shopId: shop, promises: hour, planSeconds, tightJobs, unsent: waiting }: ShopFigures): void => {
    promises.set({ shop }, hour?.many ?? 0)
    promise.set({ shop, quantile: '0.5' }, hour?.medianSeconds ?? 0)
    promise.set({ shop, quantile: '0.95' }, hour?.p95Seconds ?? 0)
    plan.set({ shop }, planSeconds ?? 0)
    tight.set({ shop }, tightJobs)
    unsent.set({ shop }, waiting)
  }
  return {
    set: (shops) => {
      for (const shop of shops) {
        setSteps(shop)
        setRest(shop)
      }
    },
  }
}

const makeQueueGauge = (registers: Registry[], counts: NonNullable<Sources['queue']>) => {
  const jobs = new Gauge({ name: 'platenpost_queue_jobs', help: 'Jobs in the queue.', labelNames: ['state'] as const, registers })
  return async (): Promise<void> => {
    const { waiting, active, failed } = await counts()
    jobs.set({ state: 'waiting' }, waiting)
    jobs.set({ state: 'active' }, active)
    jobs.set({ state: 'failed' }, failed)
  }
}

/** The figures of one process and of its shop. */
export const makeMetrics = ({ figures, queue }: Sources): Metrics => {
  const registry = new Registry()
  collectDefaultMetrics({ register: registry, prefix: 'platenpost_' })
  const registers = [registry]
  const gauges = makeGauges(registers)
  const askQueue = queue === null ? null : makeQueueGauge(registers, queue)
  const runs = new Counter({
    name: 'platenpost_step_runs_total',
    help: 'Steps this process ran.',
    labelNames: ['step', 'outcome'] as const,
    registers,
  })
  const took = new Histogram({
    name: 'platenpost_step_run_seconds',
    help: 'How long a step ran in this process.',
    labelNames: ['step'] as const,
    buckets: [0.01, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30],
    registers,
  })
  return {
    contentType: registry.contentType,
    text: async () => {
      gauges.set(await figures())
      await askQueue?.()
      return registry.metrics()
    },
    ran: (step, seconds, outcome) => {
      runs.inc({ step, outcome })
      took.observe({ step }, seconds)
    },
  }
}
