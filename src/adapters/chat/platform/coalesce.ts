import type { Deliver, Delivered, Delivery } from '../../../ports/chat.ts'
import type { Clock } from './patience.ts'

type Waiting = {
  delivery: Delivery
  readonly settle: { readonly resolve: (done: Delivered) => void; readonly reject: (error: unknown) => void }[]
}
type Lane = { next: Waiting | null; readyAt: number; running: boolean }

const mostIdleLanes = 1_000

/**
 * One delivery of a nonce at a time, and at most one in `spacing` milliseconds: what comes meanwhile waits, and only the
 * newest body is sent. Everybody who waited is told of that one.
 */
export const coalesced = (deliver: Deliver, spacing: number, clock: Clock): Deliver => {
  const lanes = new Map<string, Lane>()

  const sweep = (): void => {
    if (lanes.size < mostIdleLanes) return
    for (const [key, lane] of lanes) if (!lane.running && lane.readyAt <= clock.now()) lanes.delete(key)
  }
  const runLane = async (lane: Lane): Promise<void> => {
    lane.running = true
    while (lane.next !== null) {
      const pause = lane.readyAt - clock.now()
      if (pause > 0) await clock.pause(pause)
      const waiting: Waiting = lane.next
      lane.next = null
      try {
        const done = await deliver(waiting.delivery)
        for (const { resolve } of waiting.settle) resolve(done)
      } catch (error) {
        for (const { reject } of waiting.settle) reject(error)
      }
      lane.readyAt = clock.now() + spacing
    }
    lane.running = false
  }
  return (delivery) =>
    new Promise((resolve, reject) => {
      sweep()
      const key = `${delivery.shop}|${delivery.nonce}`
      const lane = lanes.get(key) ?? { next: null, readyAt: 0, running: false }
      lanes.set(key, lane)
      lane.next = { delivery, settle: [...(lane.next?.settle ?? []), { resolve, reject }] }
      if (!lane.running) runLane(lane).catch(reject)
    })
}
