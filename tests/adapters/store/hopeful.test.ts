import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ok } from '../../../src/domain/result/result.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import type { ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'

let test: TestStore
let shop: ShopStore
beforeAll(async () => {
  test = await openTestStore()
  shop = await test.store.openShop('shop-1')
})
afterAll(async () => {
  await test.close()
})

/** An order of version 1, its talk and its ticket. */
const order = async (): Promise<string> => {
  const id = randomUUID()
  unwrap(await shop.conversations.add(id, { said: 0 }))
  unwrap(await shop.orders.add({ orderId: id, conversationId: id }))
  return id
}
const versionOf = async (id: string): Promise<number> => (await shop.orders.read(id))?.version ?? 0

describe('a change whose answer its transaction does not wait for', () => {
  it('is seen by what comes after it there, and kept', async () => {
    const id = await order()
    const seen = await test.store.together('shop-1', async (inside) => {
      const changed = unwrap(await inside.orders.change({ id, version: 1 }, { state: 'quoted' }))
      unwrap(await inside.conversations.save({ id, version: 1 }, { said: 1 }))
      unwrap(await inside.orders.change(changed, { state: 'planned' }))
      return ok([await inside.orders.read(id), await inside.conversations.read(id)])
    })
    expect(unwrap(seen)).toMatchObject([
      { state: 'planned', version: 3 },
      { state: { said: 1 }, version: 2 },
    ])
    expect(await shop.orders.read(id)).toMatchObject({ state: 'planned', version: 3 })
  })

  it('that met another version lets all of it be done once more, from what is there then', async () => {
    const id = await order()
    const tries: number[] = []
    const done = await test.store.together('shop-1', async (inside) => {
      const version = (await inside.orders.read(id))?.version ?? 0
      tries.push(version)
      if (tries.length === 1) unwrap(await shop.orders.change({ id, version: 1 }, { state: 'quoted' }))
      return inside.orders.change({ id, version }, { state: 'planned' })
    })
    expect(unwrap(done)).toEqual({ id, version: 3 })
    expect(tries).toEqual([1, 2])
    expect(await shop.orders.read(id)).toMatchObject({ state: 'planned', version: 3 })
  })

  it('of a version that is gone for good is refused as ever, and says what was found', async () => {
    const id = await order()
    unwrap(await shop.orders.change({ id, version: 1 }, { state: 'quoted' }))
    const late = (name: string, change: (inside: ShopStore) => ReturnType<ShopStore['orders']['change']>) =>
      test.store.together('shop-1', async (inside) => {
        await inside.stock.move([{ item: name, amount: 1, kind: 'seed', orderId: null, at: minutes(0) }])
        return change(inside)
      })
    const facts = { what: 'order', id, expected: 1, found: 2 }
    expect(await late('a', (inside) => inside.orders.change({ id, version: 1 }, { state: 'planned' }))).toMatchObject({
      problems: [{ code: 'store-version-changed', facts }],
    })
    expect(await late('b', (inside) => inside.orders.change({ id: 'nobody', version: 1 }, {}))).toMatchObject({
      problems: [{ code: 'store-missing', facts: { what: 'order', id: 'nobody' } }],
    })
    expect(await late('c', (inside) => inside.conversations.save({ id, version: 7 }, {}))).toMatchObject({
      problems: [{ code: 'store-version-changed', facts: { what: 'conversation', id, expected: 7, found: 1 } }],
    })
    expect([...(await shop.stock.sums()).keys()]).toEqual([])
  })

  it('raises the version by one for each of many at once, and none of them is lost', async () => {
    const id = await order()
    const raise = async (): Promise<boolean> => {
      const raised = await test.store.together('shop-1', async (inside) =>
        inside.orders.change({ id, version: (await inside.orders.read(id))?.version ?? 0 }, { state: 'quoted' }),
      )
      return raised.ok || raise()
    }
    expect(await Promise.all(Array.from({ length: 6 }, raise))).toEqual(Array.from({ length: 6 }, () => true))
    expect(await versionOf(id)).toBe(7)
  })
})
