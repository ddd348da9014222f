import { Queue as BullQueue, createPostgresBackend } from 'bullmq'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBench } from '../../../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../../../src/adapters/queue/bullmq/bull-queue.ts'
import { queueName } from '../../../src/adapters/queue/bullmq/connection.ts'
import { reconcileOnce, remindOnce } from '../../../src/adapters/queue/reconcile.ts'
import { relayOnce, startRelay } from '../../../src/adapters/queue/relay.ts'
import { refuse } from '../../../src/domain/result/result.ts'
import { type Bench, type Handlers, type Queue, type Step, stepId } from '../../../src/ports/queue.ts'
import type { ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'
import { until } from '../../support/until.ts'

let test: TestStore
let queue: Queue
let shop: ShopStore
const troubles: unknown[] = []
const onTrouble = (cause: unknown): void => {
  troubles.push(cause)
}
const place = () => {
  const { service } = test.embedded
  return { kind: 'postgres', house: 'shop-1', address: service } as const
}

beforeAll(async () => {
  test = await openTestStore()
  queue = await openQueue(place(), { onTrouble })
  shop = await test.store.openShop('shop-1')
})
afterAll(async () => {
  await queue.close()
  await test.close()
  expect(troubles).toEqual([])
})

const outbox = () => test.store.outboxOf('shop-1')

const order = async (orderId: string): Promise<{ step: 'quote'; orderId: string; revision: number }> => {
  unwrap(await shop.orders.add({ orderId, conversationId: null }))
  unwrap(await shop.orders.revise({ id: orderId, version: 1 }, { document: {}, hash: 'h' }))
  return { step: 'quote', orderId, revision: 1 }
}
const sent = (orderId: string, attempt: number): Step => ({ step: 'quote', shopId: 'shop-1', orderId, revision: 1, attempt })

/** Works until the steps of this order were run, then goes away. */
const workOff = async (done: (ran: readonly string[]) => boolean): Promise<readonly string[]> => {
  const ran: string[] = []
  const handle = async (step: Step): Promise<void> => {
    ran.push(stepId(step))
    if (step.step !== 'remind') await shop.steps.done(step)
  }
  const handlers: Handlers = { quote: handle, price: handle, plan: handle, ticket: handle, post: handle, remind: handle }
  const bench: Bench = await openBench(place(), { handlers, onGivenUp: async () => undefined, onTrouble })
  await until('the steps ran', () => done(ran))
  await bench.close()
  return ran
}

describe('the relay', () => {
  it('hands a wanted step to the queue as soon as its transaction is kept', async () => {
    const relay = await startRelay({ store: test.store, house: 'shop-1', queue, onTrouble, milliseconds: 60_000 })
    await shop.steps.want(await order('relayed'))
    await until('it is in the queue', () => queue.isLive(sent('relayed', 1)))
    await relay.close()
    expect(await workOff((ran) => ran.length > 0)).toEqual(['quote-relayed-1-1'])
  })

  it('hands over nothing of a transaction that was undone', async () => {
    const wanted = await order('undone')
    await test.store.together('shop-1', async (inside) => {
      await inside.steps.want(wanted)
      return refuse({ code: 'lost-race', at: '', severity: 'stop', facts: {} })
    })
    expect(await relayOnce(outbox(), queue)).toBe(0)
    expect(await queue.isLive(sent('undone', 1))).toBe(false)
  })

  it('hands a row over again that it could not mark, and the queue holds it once', async () => {
    await shop.steps.want(await order('unmarked'))
    const forgetful = { ...outbox(), sent: async () => undefined }
    expect(await relayOnce(forgetful, queue)).toBe(1)
    expect(await relayOnce(outbox(), queue)).toBe(1)
    expect(await relayOnce(outbox(), queue)).toBe(0)
    expect(await workOff((ran) => ran.length > 0)).toEqual(['quote-unmarked-1-1'])
  })

  it('keeps what it could not hand over', async () => {
    await shop.steps.want(await order('later'))
    const away: Queue = { ...queue, add: () => Promise.reject(new Error('no connection')) }
    await expect(relayOnce(outbox(), away)).rejects.toThrow('no connection')
    expect(await relayOnce(outbox(), queue)).toBe(1)
    expect(await workOff((ran) => ran.length > 0)).toEqual(['quote-later-1-1'])
  })
})

describe('the reconciler', () => {
  const wipe = async (): Promise<void> => {
    const bull = new BullQueue(queueName(place()), { connection: { ...place().address } }, createPostgresBackend)
    await bull.obliterate({ force: true })
    await bull.close()
  }

  it('sends every due step again after the whole queue was lost', async () => {
    for (const orderId of ['lost1', 'lost2']) await shop.steps.want(await order(orderId))
    await relayOnce(outbox(), queue)
    await wipe()
    expect(await queue.isLive(sent('lost1', 1))).toBe(false)
    expect(await reconcileOnce(shop, queue, 0)).toBe(2)
    await relayOnce(outbox(), queue)
    const ran = await workOff((all) => all.length >= 2)
    expect(ran.toSorted()).toEqual(['quote-lost1-1-2', 'quote-lost2-1-2'])
    expect(await reconcileOnce(shop, queue, 0)).toBe(0)
  })

  it('leaves alone what the queue holds, what is done and what was given up', async () => {
    await shop.steps.want(await order('held'))
    const givenUp = await order('given-up')
    await shop.steps.want(givenUp)
    await relayOnce(outbox(), queue)
    await shop.steps.giveUp(givenUp, 'the face is gone')
    expect(await reconcileOnce(shop, queue, 0)).toBe(0)
    await workOff((ran) => ran.length >= 2)
  })

  it('reminds its shop once a minute', async () => {
    await remindOnce(shop, queue, 29_000_001)
    await remindOnce(shop, queue, 29_000_001)
    await remindOnce(shop, queue, 29_000_002)
    const ran = await workOff((all) => all.length >= 2)
    expect(ran.toSorted()).toEqual(['remind-shop-1-29000001', 'remind-shop-1-29000002'])
  })

  it('clears the outbox of rows that were handed over long ago, and of no others', async () => {
    await shop.steps.want(await order('old'))
    expect(await outbox().prune(0)).toBeGreaterThan(0)
    expect(await outbox().waiting(10)).toHaveLength(1)
    await relayOnce(outbox(), queue)
    expect([await outbox().prune(3_600), await outbox().prune(0), await outbox().prune(0)]).toEqual([0, 1, 0])
    await workOff((ran) => ran.length >= 1)
  })

  it('leaves the steps of another shop to that shop', async () => {
    const other = await test.store.openShop('shop-2')
    unwrap(await other.orders.add({ orderId: 'theirs', conversationId: null }))
    unwrap(await other.orders.revise({ id: 'theirs', version: 1 }, { document: {}, hash: 'h' }))
    await other.steps.want({ step: 'quote', orderId: 'theirs', revision: 1 })
    expect([await relayOnce(outbox(), queue), await reconcileOnce(shop, queue, 0)]).toEqual([0, 0])
    expect(await test.store.outboxOf('shop-2').waiting(10)).toHaveLength(1)
  })
})
