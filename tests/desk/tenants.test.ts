import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type Tenants, tenantsOf } from '../../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import type { Language } from '../../src/domain/units/language.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'

const statements: string[] = []
let opened: TestStore
let house: WorkerDesk
beforeAll(async () => {
  opened = await openTestStore((text) => statements.push(text))
}, 60_000)
afterAll(() => opened.close())

const time = { now: 0 }
let tenants: Tenants<WorkerDesk>
beforeEach(async () => {
  house = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  time.now = 0
  tenants = tenantsOf(house, { milliseconds: 5_000, now: () => time.now })
})

const save = async (shopId: string, name: string, language: Language = 'en'): Promise<void> => {
  const { server } = await opened.store.openShop(shopId, house.shopId)
  await server.save({
    ...{ guild: `guild of ${shopId}`, name, language, talks: 'direct' },
    ...{ bench: null, owner: null, orders: null, staffRoles: [], ownerRoles: [] },
  })
}

const nameOf = async (shopId: string): Promise<string> => (await tenants(shopId)).workshop.shop.profile.name
const languageOf = async (shopId: string) => (await tenants(shopId)).workshop.shop.profile.languages[0]
const looks = async (work: () => Promise<unknown>): Promise<number> => {
  statements.length = 0
  await work()
  return statements.length
}

describe('the desk of a shop', () => {
  it('is looked up once in a while, and the same as long as nothing changed', async () => {
    const shopId = house.ids.fresh('shop')
    await save(shopId, 'Birch Hollow Prints')
    const first = await tenants(shopId)
    time.now = 4_999
    expect(await looks(async () => expect(await tenants(shopId)).toBe(first))).toBe(0)
    time.now = 5_000
    expect(await looks(async () => expect(await tenants(shopId)).toBe(first))).toBe(1)
    time.now = 9_999
    expect(await looks(() => tenants(shopId))).toBe(0)
  })

  it('has a new name and language after that while at the latest', async () => {
    const shopId = house.ids.fresh('shop')
    await save(shopId, 'Birch Hollow Prints')
    expect([await nameOf(shopId), await languageOf(shopId)]).toEqual(['Birch Hollow Prints', 'en'])
    time.now = 1_000
    await save(shopId, 'Alder Hollow Prints', 'es')
    time.now = 5_000
    expect([await nameOf(shopId), await languageOf(shopId)]).toEqual(['Alder Hollow Prints', 'es'])
  })

  it('is looked for each time while its server is not there', async () => {
    const shopId = house.ids.fresh('shop')
    expect((await tenants(shopId)).shopId).toBe(shopId)
    expect(await looks(() => tenants(shopId))).toBe(1)
    await save(shopId, 'Birch Hollow Prints')
    expect(await nameOf(shopId)).toBe('Birch Hollow Prints')
  })

  it('of the house is the house’s own, and its server’s after that while', async () => {
    expect(await tenants(house.shopId)).toBe(house)
    expect(await looks(() => tenants(house.shopId))).toBe(0)
    await save(house.shopId, 'ours', 'es')
    expect(await looks(() => tenants(house.shopId))).toBe(0)
    time.now = 5_000
    expect(await languageOf(house.shopId)).toBe('es')
    expect(await nameOf(house.shopId)).toBe(house.workshop.shop.profile.name)
  })

  it('is another one for each shop', async () => {
    const [one, other] = [house.ids.fresh('shop'), house.ids.fresh('shop')]
    await save(one, 'Birch Hollow Prints')
    await save(other, 'Alder Hollow Prints', 'es')
    for (const _ of ['looked up', 'known'])
      expect([await nameOf(one), await nameOf(other), await languageOf(one), await languageOf(other)]).toEqual([
        ...['Birch Hollow Prints', 'Alder Hollow Prints', 'en', 'es'],
      ])
  })

  it('is looked up each time where nobody said for how long it is trusted', async () => {
    const shopId = house.ids.fresh('shop')
    const asked = tenantsOf(house)
    await save(shopId, 'Birch Hollow Prints')
    const first = await asked(shopId)
    expect(await looks(async () => expect(await asked(shopId)).toBe(first))).toBe(1)
    await save(shopId, 'Alder Hollow Prints')
    expect((await asked(shopId)).workshop.shop.profile.name).toBe('Alder Hollow Prints')
  })
})
