import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { changePlan, withBegun, withDone } from '../../src/desk/service/floor/mark-work.ts'
import { replanShop } from '../../src/desk/service/plan/replan-shop.ts'
import { bookOf } from '../../src/desk/service/plan/shop-plan.ts'
import { tightJobs } from '../../src/desk/service/plan/tight-jobs.ts'
import { verify } from '../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { localMinute, testClock } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { benchWork, evening, monday, placed, planOf, shopWith } from '../support/planned-shop.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wednesday = localMinute('2026-12-02T17:00')

const planAt = async (desk: WorkerDesk, now: number): Promise<WorkerDesk> => {
  const later = { ...desk, clock: testClock(() => minutes(now)) }
  unwrap(await later.store.together(later.shopId, (shop) => replanShop(later, shop)))
  const plan = await planOf(later)
  expect(verify(bookOf(later, plan, minutes(now)), plan.slots)).toEqual([])
  return later
}

const slotOf = async (desk: WorkerDesk, order: string) => (await planOf(desk)).slots.find((slot) => slot.order === order)

describe('what really happened', () => {
  test('stays where it is when it has begun: the others are planned around it', async () => {
    const [at, now] = [monday + 60, monday + 90]
    const begun = placed('obegun', wednesday, benchWork({ minutes: 120, started: minutes(at), on: ['bench-1', 'person-1'] }))
    const next = placed('onext', evening, benchWork({ minutes: 60 }))
    const desk = await planAt(await shopWith(opened.store, [begun, next]), now)
    expect(await slotOf(desk, 'obegun')).toMatchObject({ start: at, end: at + 120, stations: ['bench-1', 'person-1'] })
    expect((await slotOf(desk, 'onext'))?.start).toBeGreaterThanOrEqual(at + 120)
  })

  test('begins by the tick of whoever starts it, where it was planned, and is not begun twice', async () => {
    const desk = await planAt(await shopWith(opened.store, [placed('oticked', wednesday, benchWork({ minutes: 120 }))]), monday)
    const before = await slotOf(desk, 'oticked')
    const tick = (at: number) =>
      desk.store.together(desk.shopId, async (shop) => {
        await changePlan(shop, (plan) => withBegun(plan, 'oticked', { kinds: ['weed', 'press'], at: minutes(at) }))
        return { ok: true, value: null }
      })
    await tick(monday + 20)
    const { version } = await desk.store.shop(desk.shopId).plan.read()
    await tick(monday + 50)
    expect((await desk.store.shop(desk.shopId).plan.read()).version).toBe(version)
    const later = await planAt(desk, monday + 60)
    expect(await slotOf(later, 'oticked')).toMatchObject({ start: monday + 20, stations: before?.stations })
  })

  test('gives its hours to others when it is over before its time', async () => {
    const first = placed('ofirst', evening, benchWork({ minutes: 240 }))
    const second = placed('osecond', wednesday, benchWork({ minutes: 60 }))
    const desk = await planAt(await shopWith(opened.store, [first, second]), monday)
    const now = monday + 30
    await desk.store.together(desk.shopId, async (shop) => {
      await changePlan(shop, (plan) => withDone(plan, 'ofirst', { isOver: () => true, at: minutes(now) }))
      return { ok: true, value: null }
    })
    const later = await planAt(desk, now)
    expect(await slotOf(later, 'ofirst')).toBeUndefined()
    const third = placed('othird', localMinute('2026-11-30T10:00'), benchWork({ minutes: 90 }))
    await later.store.together(later.shopId, async (shop) => {
      await changePlan(shop, (plan) => ({ ...plan, sold: [...plan.sold, third] }))
      return { ok: true, value: null }
    })
    await planAt(later, now)
    expect((await slotOf(later, 'othird'))?.end).toBeLessThanOrEqual(localMinute('2026-11-30T10:00'))
  })

  test('is told as late when its hour went by and nobody began it', async () => {
    const desk = await planAt(
      await shopWith(opened.store, [placed('oone', minutes(monday + 180), benchWork({ minutes: 120 }))]),
      monday,
    )
    expect((await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late')).toEqual([])
    const now = minutes(monday + 120)
    const later = { ...desk, clock: testClock(() => now) }
    expect(
      (await tightJobs(later, 'en')).filter(({ kind }) => kind === 'late').map(({ orderId, minutes: by }) => [orderId, by]),
    ).toEqual([['oone', 60]])
  })
})
