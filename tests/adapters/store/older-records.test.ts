import pg from 'pg'
import { afterAll, beforeAll, expect, it } from 'vitest'
import type { Address } from '../../../src/adapters/store/address.ts'
import { migrate } from '../../../src/adapters/store/sql/migrate.ts'
import { openStore } from '../../../src/adapters/store/sql/open-store.ts'
import { openTestStore, root, type TestStore, unwrap } from '../../support/embedded.ts'

let test: TestStore
let older: Address
const run = async (address: Address, text: string): Promise<void> => {
  const client = new pg.Client({ ...address, options: '-c search_path=platenpost' })
  await client.connect()
  try {
    await client.query(text)
  } finally {
    await client.end()
  }
}

beforeAll(async () => {
  test = await openTestStore()
  await run(test.embedded.owner, 'create database older')
  older = { ...test.embedded.owner, database: 'older' }
}, 60_000)
afterAll(() => test.close())

it('records of the time before plans were packed and stock was added up by the move say the same afterwards', async () => {
  unwrap(await migrate({ owner: older, role: null, root, upTo: '0007-clock' }))
  await run(
    older,
    `insert into shop (shop_id, house) values ('s', 's');
    insert into plan (shop_id, version, body) values ('s', 4, '{"slots":[{"order":"Ñandú"}]}');
    insert into stock_move (shop_id, item, lot, amount, kind, order_id, at) values
      ('s', 'stone', 'l1', 100, 'seed', null, 1), ('s', 'stone', 'l1', -30, 'reserve', 'o1', 2), ('s', 'stone', 'l1', 10, 'release', 'o1', 3),
      ('s', 'stone', 'l1', -60, 'reserve', 'o2', 4), ('s', 'stone', 'l1', -5, 'count', null, 5), ('s', 'stone', 'l1', 3, 'count', null, 6);
    insert into stock_need (shop_id, order_id, item, amount, due) values ('s', 'o1', 'stone', 20, 7), ('s', 'o2', 'stone', 61, 8)`,
  )
  unwrap(await migrate({ owner: older, role: null, root }))
  const store = unwrap(await openStore({ address: older, time: Date.now }))
  const { plan, stock } = store.shop('s')
  expect(await plan.read()).toEqual({ version: 4, body: { slots: [{ order: 'Ñandú' }] } })
  expect(await stock.sums()).toEqual(new Map([['stone', 18]]))
  expect(await stock.lacking(['stone'])).toEqual([{ orderId: 'o2', item: 'stone', amount: 61, due: 8 }])
  const part = (await stock.ledger({ holders: ['o2'] })).map(({ kind, amount, orderId }) => `${kind} ${amount} ${orderId}`)
  expect(part.toSorted()).toEqual(
    ['count -5 null', 'count 3 null', 'release 10 null', 'reserve -30 null', 'reserve -60 o2', 'seed 100 null'].toSorted(),
  )
  unwrap(await plan.write(4, { slots: [] }))
  expect(await plan.read()).toEqual({ version: 5, body: { slots: [] } })
  await store.close()
})

it('what was moved is never changed or taken out', async () => {
  await test.store.openShop('kept')
  const shop = test.store.shop('kept')
  await run(
    test.embedded.owner,
    `insert into platenpost.stock_move (shop_id, item, amount, kind, at) values ('kept', 'a', 5, 'seed', 1)`,
  )
  for (const change of ['update stock_move set amount = 6', 'delete from stock_move', 'truncate stock_move'])
    await expect(run(test.embedded.owner, change)).rejects.toThrow('only added')
  expect(await shop.stock.sums()).toEqual(new Map([['a', 5]]))
})
