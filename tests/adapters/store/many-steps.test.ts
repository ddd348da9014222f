import { randomUUID } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'

const before = 4_000

let test: TestStore
let shop: ShopStore
let owner: pg.Client
beforeAll(async () => {
  test = await openTestStore()
  shop = await test.store.openShop('shop-1')
  owner = new pg.Client(test.embedded.owner)
  await owner.connect()
})
afterAll(async () => {
  await owner.end()
  await test.close()
})

/** Rows of steps that were read one after another so far, and not by their key (PostgreSQL, `pg_stat_user_tables`). */
const readThrough = async (): Promise<number> => {
  await owner.query(`select pg_stat_force_next_flush()`)
  const { rows } = await owner.query<{ read: string }>(
    `select seq_tup_read as read from pg_stat_user_tables where schemaname = 'platenpost' and relname = 'step'`,
  )
  return Number(rows[0]?.read)
}

const orderOf = async (id: string): Promise<string> => {
  unwrap(await shop.orders.add({ orderId: id, conversationId: null }))
  unwrap(await shop.orders.revise({ id, version: 1 }, { document: {}, hash: 'h' }))
  return id
}

describe('a shop with the steps of a thousand orders', () => {
  it('looks a step up by its key when it is done', async () => {
    const model = await orderOf(randomUUID())
    await owner.query(
      `insert into platenpost."order" (shop_id, order_id, state, revision)
         select shop_id, order_id || n, state, revision from platenpost."order", generate_series(1, $1::int) n`,
      [before / 4],
    )
    await owner.query(
      `insert into platenpost.order_revision (shop_id, order_id, revision, document, hash)
         select shop_id, order_id || n, revision, document, hash from platenpost.order_revision, generate_series(1, $1::int) n`,
      [before / 4],
    )
    await owner.query(
      `insert into platenpost.step (shop_id, step, order_id, revision, state)
         select shop_id, step, order_id, revision, 'done' from platenpost.order_revision,
           unnest('{quote,plan,ticket,post}'::text[]) step where order_id <> $1`,
      [model],
    )
    await owner.query('analyze')
    const from = await readThrough()
    const orders: string[] = []
    for (let nth = 0; nth < 10; nth += 1) {
      const orderId = await orderOf(randomUUID())
      orders.push(orderId)
      await shop.steps.want({ step: 'quote', orderId, revision: 1 })
      await shop.steps.done({ step: 'quote', orderId, revision: 1 })
    }
    // A process of the server hands in what it counted with the first work it does a second later.
    await pause(1_500)
    const states: string[] = []
    for (const orderId of orders) states.push(...(await shop.steps.ofOrder(orderId)).map(({ state }) => state))
    expect(states).toEqual(orders.map(() => 'done'))
    expect((await readThrough()) - from).toBeLessThan(before)
  })
})
