import { setTimeout as pause } from 'node:timers/promises'
import type { Queue } from '../../ports/queue.ts'
import { type Outbox, outboxTopic, type Store } from '../../ports/store.ts'

const atOnce = 200

/**
 * Hands what waits in the outbox to the queue and marks it; answers how many rows went. A row that was handed over and not
 * marked goes again: its job id is the same, and its step asks the store first.
 */
export const relayOnce = async (outbox: Outbox, queue: Queue): Promise<number> => {
  const rows = await outbox.waiting(atOnce)
  for (const { step } of rows) await queue.add(step)
  await outbox.sent(rows.map(({ outboxId }) => outboxId))
  return rows.length
}

export type Running = { readonly close: () => Promise<void> }

export type RelaySettings = {
  readonly store: Store
  /** Whose shops' steps these are. */
  readonly house: string
  readonly queue: Queue
  readonly onTrouble: (cause: unknown) => void
  /** How long it waits at most when no news comes. */
  readonly milliseconds?: number
}

/** Relays as soon as news of the outbox comes, and from time to time without any. */
export const startRelay = async (settings: RelaySettings): Promise<Running> => {
  const { store, house, queue, onTrouble, milliseconds = 1_000 } = settings
  const outbox = store.outboxOf(house)
  const state = { stopped: false, wake: new AbortController() }
  const wake = (): void => state.wake.abort()
  const silence = await store.listen([outboxTopic], wake)
  const loop = async (): Promise<void> => {
    while (!state.stopped) {
      state.wake = new AbortController()
      const { signal } = state.wake
      const sent = await relayOnce(outbox, queue).catch((cause: unknown) => {
        onTrouble(cause)
        return 0
      })
      if (sent < atOnce && !state.stopped) await pause(milliseconds, undefined, { signal }).catch(() => undefined)
    }
  }
  const ended = loop()
  return {
    close: async () => {
      state.stopped = true
      wake()
      await silence()
      await ended
    },
  }
}
