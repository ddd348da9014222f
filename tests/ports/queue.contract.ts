import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { openBench } from '../../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../../src/adapters/queue/bullmq/bull-queue.ts'
import type { QueuePlace } from '../../src/adapters/queue/bullmq/connection.ts'
import {
  type Bench,
  type GivenUp,
  type Handlers,
  Hopeless,
  type OrderStep,
  type OrderStepName,
  type Queue,
  type Step,
  stepId,
} from '../../src/ports/queue.ts'
import { runChild } from '../support/child.ts'
import { until } from '../support/until.ts'

export type QueueUnderTest = { readonly place: QueuePlace; readonly close: () => Promise<void> }

const quote = (orderId: string, attempt = 1): OrderStep<'quote'> => ({
  step: 'quote',
  shopId: 'shop-1',
  orderId,
  revision: 1,
  attempt,
})
const plan = (orderId: string): OrderStep<'plan'> => ({ step: 'plan', shopId: 'shop-1', orderId, revision: 1, attempt: 1 })
const named = (step: OrderStepName, orderId: string): Step => ({ ...quote(orderId), step })

/** What every queue does, whatever it lives on. */
export const queueContract = (name: string, open: () => Promise<QueueUnderTest>): void => {
  describe(`the queue on ${name}`, () => {
    let under: QueueUnderTest
    let queue: Queue
    const benches: Bench[] = []
    const troubles: unknown[] = []
    const onTrouble = (cause: unknown): void => {
      troubles.push(cause)
    }

    beforeAll(async () => {
      under = await open()
      queue = await openQueue(under.place, { onTrouble, firstPauseMilliseconds: 20 })
    })
    afterEach(async () => {
      await Promise.all(benches.splice(0).map((bench) => bench.close()))
      expect(troubles.splice(0)).toEqual([])
    })
    afterAll(async () => {
      await queue.close()
      await under.close()
    })

    /** A bench that does the same with every step; answers with what it ran and what was given up. */
    const work = async (run: (step: Step) => Promise<void> | void) => {
      const ran: string[] = []
      const givenUp: GivenUp[] = []
      const handle = async (step: Step): Promise<void> => {
        ran.push(stepId(step))
        await run(step)
      }
      const handlers: Handlers = { quote: handle, price: handle, plan: handle, ticket: handle, post: handle, remind: handle }
      const onGivenUp = async (gone: GivenUp): Promise<void> => {
        givenUp.push(gone)
      }
      const bench = await openBench(under.place, { handlers, onGivenUp, onTrouble, concurrency: 4, lockMilliseconds: 2_000 })
      benches.push(bench)
      return { ran, givenUp, bench }
    }
    const idle = () =>
      until('the queue is empty', async () => {
        const { active, waiting } = await queue.counts()
        return active + waiting === 0
      })

    it('gives each step to its own handler with the ids it was added with', async () => {
      const seen: Partial<Record<Step['step'], Step>> = {}
      const sent: readonly Step[] = [
        named('quote', 'each-a'),
        named('price', 'each-p'),
        named('plan', 'each-b'),
        named('ticket', 'each-c'),
        named('post', 'each-d'),
        { step: 'remind', shopId: 'shop-1', minute: 29_000_000 },
      ]
      const keep =
        (name: Step['step']) =>
        async (step: Step): Promise<void> => {
          seen[name] = step
        }
      const handlers: Handlers = {
        quote: keep('quote'),
        price: keep('price'),
        plan: keep('plan'),
        ticket: keep('ticket'),
        post: keep('post'),
        remind: keep('remind'),
      }
      benches.push(await openBench(under.place, { handlers, onGivenUp: async () => undefined, onTrouble }))
      for (const step of sent) await queue.add(step)
      await until('all six ran', () => Object.keys(seen).length === 6)
      expect(seen).toEqual(Object.fromEntries(sent.map((step) => [step.step, step])))
    })

    it('runs a step once that is added twice, and again under a new attempt', async () => {
      await queue.add(quote('twice'))
      await queue.add(quote('twice'))
      await queue.add(quote('twice', 2))
      const { ran } = await work(() => undefined)
      await idle()
      expect(ran.toSorted()).toEqual(['quote-twice-1-1', 'quote-twice-1-2'])
    })

    it('forgets a step that is done, so that it is live no more', async () => {
      await queue.add(quote('alive'))
      expect(await queue.isLive(quote('alive'))).toBe(true)
      expect(await queue.isLive(quote('alive', 2))).toBe(false)
      await work(() => undefined)
      await idle()
      expect(await queue.isLive(quote('alive'))).toBe(false)
    })

    it('runs a step again that throws', async () => {
      let times = 0
      const { ran, givenUp } = await work(() => {
        times += 1
        if (times < 3) throw new Error('not yet')
      })
      await queue.add(quote('again'))
      await until('the third run', () => times === 3)
      await idle()
      expect({ ran: ran.length, givenUp }).toEqual({ ran: 3, givenUp: [] })
    })

    it('gives up a step that throws five times, and says so once', async () => {
      const { ran, givenUp } = await work(() => {
        throw new Error('the press is cold')
      })
      await queue.add(quote('five'))
      await until('it is given up', () => givenUp.length > 0)
      expect(ran).toEqual(Array.from({ length: 5 }, () => 'quote-five-1-1'))
      expect(givenUp).toEqual([{ step: quote('five'), hopeless: false, reason: 'the press is cold' }])
      expect(await queue.isLive(quote('five'))).toBe(false)
    })

    it('gives up a hopeless step at once', async () => {
      const { ran, givenUp } = await work(() => {
        throw new Hopeless('the face is gone')
      })
      await queue.add(quote('hopeless'))
      await until('it is given up', () => givenUp.length > 0)
      expect(ran).toEqual(['quote-hopeless-1-1'])
      expect(givenUp).toEqual([{ step: quote('hopeless'), hopeless: true, reason: 'the face is gone' }])
    })

    it('ignores the id of a step it gave up, but takes its next attempt', async () => {
      const first = await work(() => {
        throw new Hopeless('no')
      })
      await queue.add(quote('kept'))
      await until('it is given up', () => first.givenUp.length > 0)
      await first.bench.close()
      await queue.add(quote('kept'))
      await queue.add(quote('kept', 2))
      const second = await work(() => undefined)
      await idle()
      expect(second.ran).toEqual(['quote-kept-1-2'])
    })

    it('plans once more after a burst that came while a plan was running, with the last of them', async () => {
      const go: { on: () => void } = { on: () => undefined }
      const started = new Promise<void>((resolve) => {
        go.on = resolve
      })
      let release: () => void = () => undefined
      const hold = new Promise<void>((resolve) => {
        release = resolve
      })
      const { ran } = await work(async (step) => {
        if (stepId(step) !== 'plan-burst1-1-1') return
        go.on()
        await hold
      })
      await queue.add(plan('burst1'))
      await started
      for (const orderId of ['burst2', 'burst3', 'burst4', 'burst5']) await queue.add(plan(orderId))
      release()
      await until('the second plan', () => ran.length >= 2)
      await idle()
      expect(ran).toHaveLength(2)
    })

    it('waits for the step in hand when the bench closes, and leaves the rest', async () => {
      const seen: { readonly begun: string[]; readonly ended: string[] } = { begun: [], ended: [] }
      const handle = async (step: Step): Promise<void> => {
        seen.begun.push(stepId(step))
        await new Promise((resolve) => setTimeout(resolve, 150))
        seen.ended.push(stepId(step))
      }
      const handlers: Handlers = { quote: handle, price: handle, plan: handle, ticket: handle, post: handle, remind: handle }
      const bench = await openBench(under.place, { handlers, onGivenUp: async () => undefined, onTrouble, concurrency: 1 })
      await queue.add(quote('hand1'))
      await queue.add(quote('hand2'))
      await until('the first began', () => seen.begun.length > 0)
      await bench.close()
      expect(seen.ended).toEqual(seen.begun)
      expect(await queue.isLive(quote('hand2'))).toBe(true)
      const rest = await work(() => undefined)
      await idle()
      expect(rest.ran).toEqual(['quote-hand2-1-1'])
    })

    it('runs a step again whose worker was killed', async () => {
      const worker = runChild(`
        const { openBench } = await import(built + '/src/adapters/queue/bullmq/bull-bench.js')
        const hang = async () => {
          console.log('in hand')
          await new Promise(() => setInterval(() => undefined, 1_000))
        }
        const handlers = { quote: hang, price: hang, plan: hang, ticket: hang, post: hang, remind: hang }
        await openBench(${JSON.stringify(under.place)}, {
          handlers, onGivenUp: async () => undefined, onTrouble: console.error, lockMilliseconds: 1_000,
        })
      `)
      await queue.add(quote('killed'))
      await worker.says('in hand')
      await worker.signal('SIGKILL')
      const { ran, givenUp } = await work(() => undefined)
      await until('it ran again', () => ran.length > 0)
      await idle()
      expect({ ran, givenUp }).toEqual({ ran: ['quote-killed-1-1'], givenUp: [] })
    })

    it('refuses ids that no job id can carry', async () => {
      await expect(queue.add(quote('a:b'))).rejects.toThrow()
    })
  })
}
