import { randomUUID } from 'node:crypto'
import { type Kysely, sql } from 'kysely'
import type pg from 'pg'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { askingAtOnce } from '../../../src/adapters/store/sql/at-once.ts'
import { openDatabase, openStatements } from '../../../src/adapters/store/sql/pool.ts'
import type { Tables } from '../../../src/adapters/store/sql/tables.ts'
import { ok } from '../../../src/domain/result/result.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'

let test: TestStore
let db: Kysely<Tables>
const written = { times: 0 }

/** Counts how often a connection lets go of what it holds back. */
const count = ({ connection: { stream } }: pg.PoolClient): void => {
  const uncork = stream.uncork.bind(stream)
  stream.uncork = () => {
    uncork()
    if (stream.writableCorked === 0) written.times += 1
  }
}

beforeAll(async () => {
  test = await openTestStore()
  const pool = openStatements(test.embedded.service, 4)
  pool.on('connect', count)
  db = openDatabase(pool, [])
  await sql`select 1`.execute(db)
})
afterAll(async () => {
  await db.destroy()
  await test.close()
})
beforeEach(() => {
  written.times = 0
})

const numbers = [1, 2, 3]
const told = async (one: Kysely<Tables>, number: number): Promise<string> =>
  (await sql<{ said: string }>`select ${number} || ' of ' || pg_backend_pid() as said`.execute(one)).rows[0]?.said ?? ''
const add = (one: Kysely<Tables>, id: string) => sql`insert into shop (shop_id, house) values (${id}, ${id})`.execute(one)
const isThere = async (id: string): Promise<boolean> =>
  (await sql`select from shop where shop_id = ${id}`.execute(db)).rows.length > 0

/** SQLSTATE unique_violation, PostgreSQL's appendix A. */
const twice = { code: '23505' }
const isOfOne = (said: readonly string[]): boolean => new Set(said.map((one) => one.replace(/^\d/, ''))).size === 1

describe('what is asked at once', () => {
  it('inside a transaction leaves in one write, with its beginning', async () => {
    const said = await db
      .transaction()
      .execute((trx) => askingAtOnce(trx, () => Promise.all(numbers.map((number) => told(trx, number)))))
    expect(said.map((one) => one.slice(0, 4))).toEqual(['1 of', '2 of', '3 of'])
    expect(isOfOne(said)).toBe(true)
    expect(written.times).toBe(2)
  })

  it('on one connection without a transaction leaves in one write', async () => {
    const said = await db
      .connection()
      .execute((one) => askingAtOnce(one, () => Promise.all(numbers.map((number) => told(one, number)))))
    expect(isOfOne(said)).toBe(true)
    expect(written.times).toBe(1)
  })

  it('is done in its order, and seen by what is asked after it', async () => {
    const id = randomUUID()
    const seen = await db.transaction().execute((trx) => {
      const many = async () =>
        (await sql<{ many: number }>`select count(*) as many from shop where shop_id = ${id}`.execute(trx)).rows[0]?.many
      return askingAtOnce(trx, () => Promise.all([many(), add(trx, id), many()]))
    })
    expect([seen[0], seen[2]]).toEqual([0, 1])
  })

  it('and fails of one is refused with its cause, and all of it taken back', async () => {
    const id = randomUUID()
    const work = db
      .transaction()
      .execute((trx) => askingAtOnce(trx, () => Promise.all([add(trx, id), add(trx, id), told(trx, 1), told(trx, 2)])))
    await expect(work).rejects.toMatchObject(twice)
    expect(await isThere(id)).toBe(false)
  })

  it.each([0, 1, 5, 10, 20, 40, 80])(
    'and goes on to write %s steps after another of them failed writes nothing',
    async (steps) => {
      const [id, late] = [randomUUID(), randomUUID()]
      await add(db, id)
      const strays: Promise<unknown>[] = []
      const work = db.transaction().execute((trx) => {
        const goesOn = async (failing: Promise<unknown>) => {
          await failing.catch(() => undefined)
          for (let step = 0; step < steps; step += 1) await Promise.resolve()
          await add(trx, late)
        }
        return askingAtOnce(trx, () => {
          const failing = add(trx, id)
          strays.push(goesOn(failing))
          return Promise.all([...strays, failing])
        })
      })
      await expect(work).rejects.toMatchObject(twice)
      await expect(strays[0]).rejects.toThrow()
      expect(await isThere(late)).toBe(false)
    },
  )

  it('after the end of a look is refused: its connection may be in other hands', async () => {
    const strays: Promise<unknown>[] = []
    await db.connection().execute((one) =>
      askingAtOnce(one, async () => {
        strays.push(new Promise(setImmediate).then(() => told(one, 1)))
      }),
    )
    await expect(strays[0]).rejects.toThrow('after the end of its work')
  })
})

describe('the store', () => {
  it('looks at several records at once and keeps shops apart', async () => {
    const [shop, other] = [await test.store.openShop(randomUUID()), await test.store.openShop(randomUUID())]
    const orderId = randomUUID()
    unwrap(await shop.orders.add({ orderId, conversationId: null }))
    const look = (shopId: string) =>
      test.store.look(shopId, (there) =>
        Promise.all([there.orders.read(orderId), there.plan.read(), there.tickets.ofOrder(orderId)]),
      )
    expect(await look(shop.shopId)).toEqual([await shop.orders.read(orderId), { version: 0, body: null }, []])
    expect(await look(other.shopId)).toEqual([null, { version: 0, body: null }, []])
  })

  it('lets what is asked beside the plan see all that was kept before the plan was let go', async () => {
    const shop = await test.store.openShop(randomUUID())
    const orderId = randomUUID()
    unwrap(await shop.orders.add({ orderId, conversationId: null }))
    unwrap(await shop.orders.revise({ id: orderId, version: 1 }, { document: {}, hash: 'h' }))
    const key = { step: 'quote', orderId, revision: 1 } as const
    await shop.steps.want(key)
    const first = await test.store.together(shop.shopId, async (inside) => {
      await inside.plan.hold()
      const waiting = test.store.together(shop.shopId, async (second) =>
        ok(await Promise.all([second.plan.hold(), second.steps.about(key)])),
      )
      await new Promise((resolve) => setTimeout(resolve, 100))
      unwrap(await inside.plan.write(0, { sold: [] }))
      await inside.steps.done(key)
      return ok({ waiting })
    })
    const [plan, about] = unwrap(await unwrap(first).waiting)
    expect(plan).toEqual({ version: 1, body: { sold: [] } })
    expect(about.isDone).toBe(true)
  })
})
