import { setTimeout as pause } from 'node:timers/promises'
import type { Deliver, Delivery } from '../../../ports/chat.ts'
import { Undeliverable } from '../../../ports/platform-desk.ts'
import { deliveryTopic, type WaitingDelivery } from '../../../ports/platform-records.ts'
import type { Store } from '../../../ports/store.ts'
import { failureOf } from './rest-failure.ts'

export type WaitingNeeds = {
  readonly store: Store
  readonly deliver: Deliver
  /** The message as it shall stand there; null: nowhere. */
  readonly ready: (waiting: WaitingDelivery) => Promise<Delivery | null>
  readonly report: (error: unknown) => void
  /** How long it waits at most when no news comes. */
  readonly milliseconds?: number
}

const atOnce = 24
/** Whoever takes a message and dies keeps it from the others for so long. */
const claimSeconds = 60
const longestPause = 300
/** A fault of our own is not mended by trying on and on, and must not keep the channel's other messages back. */
const mostFaults = 5

const afterFailure = async ({ store, report }: WaitingNeeds, waiting: WaitingDelivery, error: unknown): Promise<void> => {
  const { deliveries } = store.platform
  if (error instanceof Undeliverable) return await deliveries.drop(waiting)
  const isOurs = failureOf(error) === null
  if (isOurs) report(error)
  if (isOurs && waiting.tries + 1 >= mostFaults) return await deliveries.drop(waiting)
  await deliveries.later(waiting, Math.min(longestPause, 2 ** waiting.tries))
}

/** Takes one message where it belongs; whatever happens, it is done, tried later or given up. */
const deliverWaiting = async (needs: WaitingNeeds, waiting: WaitingDelivery): Promise<void> => {
  try {
    const delivery = await needs.ready(waiting)
    if (delivery !== null) await needs.deliver(delivery)
    await needs.store.platform.deliveries.done(waiting)
  } catch (error) {
    await afterFailure(needs, waiting, error)
  }
}

/**
 * Delivers what waits in the records, as soon as news of it comes: the channels side by side, the messages of each in their
 * order. Any number of processes may do so at once.
 */
export const startDeliveries = async (needs: WaitingNeeds): Promise<{ readonly close: () => Promise<void> }> => {
  const { store, report, milliseconds = 1_000 } = needs
  const state = { stopped: false, wake: new AbortController() }
  const inHand = new Set<Promise<void>>()
  const wake = (): void => state.wake.abort()
  const silence = await store.listen([deliveryTopic], wake)
  const take = (waiting: WaitingDelivery): void => {
    const work = deliverWaiting(needs, waiting)
      .catch(report)
      .finally(() => {
        inHand.delete(work)
        wake()
      })
    inHand.add(work)
  }
  const loop = async (): Promise<void> => {
    while (!state.stopped) {
      state.wake = new AbortController()
      const { signal } = state.wake
      const room = atOnce - inHand.size
      const claimed =
        room === 0
          ? []
          : await store.platform.deliveries.claim(room, claimSeconds).catch((error: unknown) => {
              report(error)
              return []
            })
      for (const waiting of claimed) take(waiting)
      if (claimed.length === 0) await pause(milliseconds, undefined, { signal }).catch(() => undefined)
    }
  }
  const ended = loop()
  return {
    close: async () => {
      state.stopped = true
      wake()
      await silence()
      await ended
      await Promise.all(inHand)
    },
  }
}
