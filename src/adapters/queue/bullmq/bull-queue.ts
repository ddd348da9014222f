import type { JobsOptions } from 'bullmq'
import { type Queue, type Step, stepId } from '../../../ports/queue.ts'
import { type OnTrouble, openBullQueue, type QueuePlace } from './connection.ts'
import { stepSchema } from './step-schema.ts'

const week = 7 * 24 * 60 * 60

export type QueueSettings = {
  readonly onTrouble: OnTrouble
  /** The pause before a step that threw is run again; each further one is twice as long, all shortened by up to half. */
  readonly firstPauseMilliseconds?: number
}

const everyStep = ({ firstPauseMilliseconds = 1_000 }: QueueSettings): JobsOptions => ({
  attempts: 5,
  backoff: { type: 'exponential', delay: firstPauseMilliseconds, jitter: 0.5 },
  removeOnComplete: true,
  removeOnFail: { age: week },
})

/** One waiting and one running plan a shop: each plans every order that is signed by then. */
const optionsOf = (step: Step): JobsOptions => ({
  jobId: stepId(step),
  ...(step.step === 'plan' ? { deduplication: { id: `plan-${step.shopId}`, keepLastIfActive: true } } : {}),
  ...(step.step === 'remind' ? { attempts: 1 } : {}),
})

const live = new Set(['waiting', 'active', 'delayed', 'prioritized', 'waiting-children'])

export const openQueue = async (place: QueuePlace, settings: QueueSettings): Promise<Queue> => {
  const { it: queue, close } = openBullQueue(place, everyStep(settings), settings.onTrouble)
  await queue.waitUntilReady()
  return {
    add: async (step) => {
      await queue.add(step.step, stepSchema.parse(step), optionsOf(step))
    },
    isLive: async (step) => {
      const job = await queue.getJob(stepId(step))
      return job !== undefined && live.has(await job.getState())
    },
    counts: async () => {
      const counts = await queue.getJobCounts('waiting', 'delayed', 'prioritized', 'active', 'failed')
      const of = (name: string): number => counts[name] ?? 0
      return {
        waiting: of('waiting') + of('delayed') + of('prioritized'),
        active: of('active'),
        failed: of('failed'),
      }
    },
    close,
  }
}
