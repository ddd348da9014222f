import { setTimeout as pause } from 'node:timers/promises'
import type { Queue, Step } from '../../ports/queue.ts'
import type { ShopStore, Store } from '../../ports/store.ts'
import type { StepRecord } from '../../ports/work-records.ts'
import type { Running } from './relay.ts'

const stepOf = (shopId: string, { step, orderId, revision, attempt }: StepRecord): Step => ({
  step,
  shopId,
  orderId,
  revision,
  attempt,
})

/**
 * Sends every step again that is due, was last sent at least so many seconds ago and that the queue does not hold: losing
 * the whole queue loses nothing. Answers how many it sent.
 */
export const reconcileOnce = async ({ shopId, steps }: ShopStore, queue: Queue, seconds: number): Promise<number> => {
  let sent = 0
  for (const record of await steps.overdue(seconds)) {
    if (!(await queue.isLive(stepOf(shopId, record)))) {
      await steps.again(record)
      sent += 1
    }
  }
  return sent
}

/** One `remind` for the minute it is; a second one in the same minute is the same job. */
export const remindOnce = ({ shopId }: ShopStore, queue: Queue, minute: number): Promise<void> =>
  queue.add({ step: 'remind', shopId, minute })

/** Rows that were handed over so long ago are of no more use. */
const keptSeconds = 3_600

export type ReconcilerSettings = {
  readonly store: Store
  /** Whose shops these are. */
  readonly house: string
  readonly queue: Queue
  readonly onTrouble: (cause: unknown) => void
  /** The minute it is, counted from 1970. */
  readonly minute: () => number
  readonly everyMilliseconds?: number
  readonly overdueSeconds?: number
}

/** Each minute: what is due and lost goes again, every shop is reminded of the clock, and the outbox is cleared of old rows. */
export const startReconciler = (settings: ReconcilerSettings): Running => {
  const { store, house, queue, onTrouble, minute, everyMilliseconds = 60_000, overdueSeconds = 60 } = settings
  const stop = new AbortController()
  const loop = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      try {
        for (const shop of (await store.shopsOf(house)).map(store.shop)) {
          await reconcileOnce(shop, queue, overdueSeconds)
          await remindOnce(shop, queue, minute())
        }
        await store.outboxOf(house).prune(keptSeconds)
      } catch (cause) {
        onTrouble(cause)
      }
      await pause(everyMilliseconds, undefined, { signal: stop.signal }).catch(() => undefined)
    }
  }
  const ended = loop()
  return {
    close: async () => {
      stop.abort()
      await ended
    },
  }
}
