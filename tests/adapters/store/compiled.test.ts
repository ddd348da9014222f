import { randomUUID } from 'node:crypto'
import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { compiled, compiledByShape } from '../../../src/adapters/store/sql/compiled.ts'
import { openDatabase, openStatements } from '../../../src/adapters/store/sql/pool.ts'
import type { Database } from '../../../src/adapters/store/sql/tables.ts'
import { openTestStore, type TestStore } from '../../support/embedded.ts'

let test: TestStore
let db: Database
const texts: string[] = []
beforeAll(async () => {
  test = await openTestStore()
  db = openDatabase(openStatements(test.embedded.service, 2), ({ query }) => void texts.push(query.sql))
})
afterAll(async () => {
  await db.destroy()
  await test.close()
})

type Opened = { readonly shopId: string; readonly house: string }

describe('a compiled statement', () => {
  it('is built once, and each run has its own values', async () => {
    let built = 0
    const add = compiled((on: Database, { shopId, house }: Opened) => {
      built += 1
      return on.insertInto('shop').values({ shopId, house }).returning(['shopId', 'house'])
    })
    const shops = [randomUUID(), randomUUID()].map((shopId) => ({ shopId, house: `house of ${shopId}` }))
    texts.length = 0
    for (const shop of shops) expect(await add.first(db, shop)).toEqual(shop)
    expect(built).toBe(1)
    expect(new Set(texts).size).toBe(1)
  })

  it('names a value wherever it stands, in any order, and twice', async () => {
    const read = compiled((on: Database, { shopId, house }: Opened) =>
      on
        .selectFrom('shop')
        .select(['shopId', sql<string>`${house}::text`.as('house'), sql<boolean>`house = ${house}`.as('isSame')])
        .where('shopId', '=', shopId),
    )
    const shopId = randomUUID()
    await db.insertInto('shop').values({ shopId, house: 'mine' }).execute()
    expect(await read.all(db, { shopId, house: 'mine' })).toEqual([{ shopId, house: 'mine', isSame: true }])
    expect(await read.all(db, { shopId, house: 'yours' })).toEqual([{ shopId, house: 'yours', isSame: false }])
    expect(await read.first(db, { shopId: randomUUID(), house: 'mine' })).toBeUndefined()
  })

  it('keeps null, arrays and values that look like parts of a statement as they are', async () => {
    const echo = compiled(
      (on: Database, { shopId, houses }: { readonly shopId: string; readonly houses: readonly string[] | null }) =>
        on.selectNoFrom([sql<string>`${shopId}::text`.as('shopId'), sql<string[] | null>`${houses}::text[]`.as('houses')]),
    )
    for (const houses of [null, [], ['$1', `'; drop table shop`]]) {
      expect(await echo.first(db, { shopId: '$2', houses })).toEqual({ shopId: '$2', houses })
    }
  })

  it('of several shapes has a text for each of them', async () => {
    const change = compiledByShape((on: Database, values: Opened & { readonly ticketNumber: number }, shape) =>
      on
        .updateTable('shop')
        .set({
          ...(shape.includes('house') ? { house: values.house } : {}),
          ...(shape.includes('ticketNumber') ? { ticketNumber: values.ticketNumber } : {}),
        })
        .where('shopId', '=', values.shopId)
        .returning(['house', 'ticketNumber']),
    )
    const shopId = randomUUID()
    await db.insertInto('shop').values({ shopId, house: 'first' }).execute()
    const values = { shopId, house: 'second', ticketNumber: 7 }
    expect(await change(['house']).first(db, values)).toEqual({ house: 'second', ticketNumber: 0 })
    expect(await change(['ticketNumber']).first(db, { ...values, house: 'third' })).toEqual({ house: 'second', ticketNumber: 7 })
    expect(await change(['house', 'ticketNumber']).first(db, { ...values, house: 'fourth' })).toEqual({
      house: 'fourth',
      ticketNumber: 7,
    })
  })
})
