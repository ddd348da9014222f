import { randomUUID } from 'node:crypto'
import { sql } from 'kysely'
import pg from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { openDatabase, openStatements } from '../../../src/adapters/store/sql/pool.ts'
import type { Database } from '../../../src/adapters/store/sql/tables.ts'
import { steered, unawaited } from '../../../src/adapters/store/sql/unawaited.ts'
import { ok } from '../../../src/domain/result/result.ts'
import { openTestStore, type TestStore } from '../../support/embedded.ts'

let test: TestStore
let db: Database
let pool: pg.Pool
beforeAll(async () => {
  test = await openTestStore()
})
afterAll(async () => {
  await test.close()
})
beforeEach(() => {
  pool = openStatements(test.embedded.service, 2)
  db = openDatabase(pool, [])
})
afterEach(async () => {
  await db.destroy()
})

const opened = (shopId: string) => sql`insert into shop (shop_id, house) values (${shopId}, 'house') ${unawaited}`
const readBack = async (shopId: string): Promise<number> => {
  const { rows } = await sql<{ many: number }>`select count(*) as many from shop where shop_id = ${shopId}`.execute(db)
  return Number(rows[0]?.many)
}
const shopId = (): string => `shop-${randomUUID()}`

/** SQLSTATE unique_violation, PostgreSQL's appendix A. */
const twice = { code: '23505' }

describe('a statement that nobody waits for', () => {
  it('is done in order, before the next one, and kept with its transaction', async () => {
    const id = shopId()
    const seen = await db.transaction().execute(async (trx) => {
      await opened(id).execute(trx)
      return (await sql`select from shop where shop_id = ${id}`.execute(trx)).rows.length
    })
    expect(seen).toBe(1)
    expect(await readBack(id)).toBe(1)
  })

  it('that fails refuses the next one with its own cause', async () => {
    const id = shopId()
    await opened(id).execute(db)
    const work = db.transaction().execute(async (trx) => {
      await opened(id).execute(trx)
      await sql`select 1`.execute(trx)
    })
    await expect(work).rejects.toMatchObject(twice)
  })

  it('that fails last of all refuses the commit, and nothing is kept', async () => {
    const [id, other] = [shopId(), shopId()]
    await opened(id).execute(db)
    const work = db.transaction().execute(async (trx) => {
      await opened(other).execute(trx)
      await opened(id).execute(trx)
    })
    await expect(work).rejects.toMatchObject(twice)
    expect(await readBack(other)).toBe(0)
  })

  it('leaves its connection in order: the next transaction on it knows nothing of the failure', async () => {
    const [id, other] = [shopId(), shopId()]
    await opened(id).execute(db)
    for (let time = 0; time < 4; time += 1)
      await expect(db.transaction().execute((trx) => opened(id).execute(trx))).rejects.toMatchObject(twice)
    await db.transaction().execute((trx) => opened(other).execute(trx))
    expect(await readBack(other)).toBe(1)
  })

  it('is taken back with a transaction that is given up', async () => {
    const id = shopId()
    const work = db.transaction().execute(async (trx) => {
      await opened(id).execute(trx)
      throw new Error('given up')
    })
    await expect(work).rejects.toThrow('given up')
    expect(await readBack(id)).toBe(0)
  })

  it('is waited for where there is no transaction', async () => {
    const id = shopId()
    await opened(id).execute(db)
    await expect(opened(id).execute(db)).rejects.toMatchObject(twice)
  })

  it('on a connection that breaks is an error of the transaction, not of the process', async () => {
    const id = shopId()
    const owner = new pg.Client(test.embedded.owner)
    await owner.connect()
    const work = db.transaction().execute(async (trx) => {
      const { rows } = await sql<{ pid: number }>`select pg_backend_pid() as pid`.execute(trx)
      await owner.query('select pg_terminate_backend($1)', [rows[0]?.pid])
      await opened(id).execute(trx)
      await opened(id).execute(trx)
    })
    await expect(work).rejects.toThrow()
    await owner.end()
    expect(await readBack(id)).toBe(0)
  })
})

describe('two transactions that take the same two locks in another order', () => {
  it('both end: the deadlock of a lock that nobody waited for is known as one, and its transaction tried again', async () => {
    const shop = await test.store.openShop(shopId())
    const channels = ['shop:bench', 'shop:orders']
    const both = (order: readonly string[]) =>
      test.store.together(shop.shopId, async (inside) => {
        for (const channel of order) {
          await inside.messages.say({ channel, nonce: randomUUID(), by: 'bot', body: {} })
          // The lock is taken with this question, and held while the other one takes its first.
          await inside.messages.of('nothing')
        }
        return ok(null)
      })
    const all = await Promise.all(Array.from({ length: 2 }, (_, at) => both(at % 2 === 0 ? channels : channels.toReversed())))
    expect(all.every((one) => one.ok)).toBe(true)
    const kept = await Promise.all(channels.map((channel) => shop.messages.after(channel, 0)))
    expect(kept.map((messages) => messages.length)).toEqual([2, 2])
  })
})

describe('a connection', () => {
  const nothing: pg.QueryResult = { command: '', rowCount: 0, oid: 0, fields: [], rows: [] }
  const late = `notify /* unawaited */`

  const connection = () => {
    const sent: string[] = []
    const run = async (text: string): Promise<pg.QueryResult> => {
      sent.push(text)
      await new Promise(setImmediate)
      if (text.startsWith('fails')) throw new Error(text)
      return nothing
    }
    const query = steered(run, { cork: () => void sent.push('<hold'), uncork: () => void sent.push('send>') })
    return { sent, query: (text: string) => query(text, []) }
  }

  it('sends the beginning of a transaction and what nobody waits for together with the next statement', async () => {
    const { sent, query } = connection()
    for (const text of [late, 'begin', late, 'select 1', 'select 2', late, 'commit', 'select 3']) await query(text)
    expect(sent).toEqual([
      ...['<hold', late, 'send>'],
      ...['<hold', 'begin', late, 'select 1', 'send>'],
      ...['<hold', 'select 2', 'send>'],
      ...['<hold', late, 'commit', 'send>'],
      ...['<hold', 'select 3', 'send>'],
    ])
  })

  it('sends what is asked at once together, in its order, however many steps lead to each', async () => {
    const { sent, query } = connection()
    await query('begin')
    const later = async (steps: number, text: string) => {
      for (let step = 0; step < steps; step += 1) await Promise.resolve()
      return query(text)
    }
    await Promise.all([later(0, 'select 1'), later(9, 'select 3'), later(4, 'select 2')])
    await query('commit')
    expect(sent).toEqual([...['<hold', 'begin', 'select 1', 'select 2', 'select 3', 'send>'], ...['<hold', 'commit', 'send>']])
  })

  it('tells each of those that were asked at once what failed first, and the next transaction nothing of it', async () => {
    const { query } = connection()
    await query('begin')
    const asked = await Promise.allSettled([query('select 1'), query('fails first'), query('fails of it')])
    expect(asked.map((one) => (one.status === 'rejected' ? String(one.reason) : 'kept'))).toEqual([
      ...['kept', 'Error: fails first', 'Error: fails first'],
    ])
    await query('rollback').catch(() => undefined)
    await query('begin')
    await expect(query('fails anew')).rejects.toThrow('fails anew')
  })
})
