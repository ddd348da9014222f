import { setTimeout as pause } from 'node:timers/promises'
import type { Clock } from '../../ports/clock.ts'
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
  readonly everyMilliseconds?: number
  readonly overdueSeconds?: number
}

/** Does it for every shop of the house now, and again after each pause, until it is closed. */
const forEachShop = (
  { store, house, onTrouble }: Pick<ReconcilerSettings, 'store' | 'house' | 'onTrouble'>,
  pauseMilliseconds: () => number,
  once: (shops: readonly ShopStore[]) => Promise<void>,
): Running => {
  const stop = new AbortController()
  const loop = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      try {
        await once((await store.shopsOf(house)).map(store.shop))
      } catch (cause) {
        onTrouble(cause)
      }
      await pause(pauseMilliseconds(), undefined, { signal: stop.signal }).catch(() => undefined)
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

/** Each minute of the machine: what is due and lost goes again, and the outbox is cleared of old rows. */
export const startReconciler = (settings: ReconcilerSettings): Running => {
  const { store, house, queue, everyMilliseconds = 60_000, overdueSeconds = 60 } = settings
  return forEachShop(
    settings,
    () => everyMilliseconds,
    async (shops) => {
      for (const shop of shops) await reconcileOnce(shop, queue, overdueSeconds)
      await store.outboxOf(house).prune(keptSeconds)
    },
  )
}

const minuteMilliseconds = 60_000
/** However fast the clock runs: a reminder must be over before the next one comes. */
const shortestPause = 1_000

export type ReminderSettings = Pick<ReconcilerSettings, 'store' | 'house' | 'queue' | 'onTrouble'> & { readonly clock: Clock }

/** Each minute of the shop's clock every shop is reminded of it; on a clock that runs faster than sixty times, each second. */
export const startReminder = ({ clock, queue, ...settings }: ReminderSettings): Running =>
  forEachShop(
    settings,
    () => Math.max(shortestPause, clock.lasting(minuteMilliseconds)),
    async (shops) => {
      for (const shop of shops) await remindOnce(shop, queue, clock.now())
    },
  )
