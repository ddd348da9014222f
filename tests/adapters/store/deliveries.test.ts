import { randomUUID } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ok } from '../../../src/domain/result/result.ts'
import type { ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore } from '../../support/embedded.ts'

let test: TestStore
let shop: ShopStore
beforeAll(async () => {
  test = await openTestStore()
})
afterAll(async () => {
  await test.close()
})

/** A shop that has a server, so that what the bot says in its channels is to be delivered. */
const openShopWithServer = async (): Promise<ShopStore> => {
  const opened = await test.store.openShop(randomUUID())
  await opened.server.save({
    guild: randomUUID(),
    name: 'Cedar Flats',
    language: 'en',
    talks: 'direct',
    bench: '1',
    owner: '2',
    orders: '3',
    staffRoles: [],
    ownerRoles: [],
  })
  return opened
}

const saidIn = (one: ShopStore, nonce: string, body: string): Promise<void> =>
  one.messages.say({ channel: 'shop:bench', nonce, by: 'bot', body: { said: body } })
const claimed = async () => (await test.store.platform.deliveries.claim(10, 60)).filter(({ shopId }) => shopId === shop.shopId)

describe('a message that is claimed to be delivered', () => {
  beforeAll(async () => {
    shop = await openShopWithServer()
  })

  it('has the body that the claim is of, though it is written while the claim waits for it', async () => {
    const nonce = randomUUID()
    await saidIn(shop, nonce, 'two of three')
    const claims: ReturnType<typeof claimed>[] = []
    await test.store.together(shop.shopId, async (inside) => {
      await saidIn(inside, nonce, 'on the bench')
      // Looking at it writes it; it is kept only when this transaction ends.
      await inside.messages.of(nonce)
      claims.push(claimed())
      await pause(300)
      return ok(null)
    })
    const [delivery, ...more] = (await claims[0]) ?? []
    expect(more).toEqual([])
    expect(delivery).toMatchObject({ nonce, body: { said: 'on the bench' } })
    if (delivery !== undefined) await test.store.platform.deliveries.done(delivery)
    expect(await claimed()).toEqual([])
  })

  it('waits on when a newer body came after the claim', async () => {
    const nonce = randomUUID()
    await saidIn(shop, nonce, 'first')
    const [first] = await claimed()
    await saidIn(shop, nonce, 'second')
    if (first !== undefined) await test.store.platform.deliveries.done(first)
    expect(await claimed()).toMatchObject([{ nonce, body: { said: 'second' } }])
  })
})
