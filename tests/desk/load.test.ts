import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { searchBetterPlans } from '../../src/desk/service/plan/better-plan.ts'
import { bookOf } from '../../src/desk/service/plan/shop-plan.ts'
import { tightJobs } from '../../src/desk/service/plan/tight-jobs.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { type PlacedOrder, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { loadMessage } from '../../src/desk/service/shop/load-picture.ts'
import { loadSheet } from '../../src/desk/service/shop/load-sheet.ts'
import { hearCustomer } from '../../src/desk/service/talk/hear-customer.ts'
import { alwaysOpen } from '../../src/domain/calendar/axis.ts'
import { replanFor } from '../../src/domain/schedule/replan/replan.ts'
import { budgetFor } from '../../src/domain/schedule/search/plan.ts'
import { slotsOf } from '../../src/domain/schedule/timeline/slots.ts'
import { atPace, learned, ratesAsSet, reckonedAt, workSeen } from '../../src/domain/schedule/work/learned-rates.ts'
import { minutes } from '../../src/domain/units/units.ts'
import type { SearchPlan } from '../../src/ports/search.ts'
import { localMinute } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { benchWork, evening, noon, owner, placed, planOf, said, shopWith, staff } from '../support/planned-shop.ts'
import { operation } from '../support/scheduling.ts'

let opened: TestStore

beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const shopOf = (sold: readonly PlacedOrder[]): Promise<WorkerDesk> => shopWith(opened.store, sold)

describe('a job that the plan brings late', () => {
  test('is told with its causes, in both languages, and with what would mend it', async () => {
    const desk = await shopOf([placed('oone', noon, benchWork())])
    const [job] = await tightJobs(desk, 'en')
    expect(job).toMatchObject({ orderId: 'oone', kind: 'late', revision: 1 })
    expect(job?.text).toMatch(/^Team oone will be late by .*; promised Monday, November 30, 12 pm\.$/)
    expect(job?.causes.join(' ')).toContain('weeding')
    expect(job?.fixes.at(-1)).toMatchObject({ code: 'move-promise', action: { id: 'o:oone:mend-move-promise:1' } })
    const [spanish] = await tightJobs(desk, 'es')
    expect(spanish?.text).toContain('tarde')
    expect(spanish?.causes.join(' ')).toContain('pelado')
  })

  test('comes in time by extra hours that the owner adds with one press, and by nobody else’s', async () => {
    const sold = ['oone', 'otwo', 'osix'].map((id) => placed(id, localMinute('2026-11-30T20:30'), benchWork({ minutes: 200 })))
    const desk = await shopOf(sold)
    const late = await tightJobs(desk, 'en')
    const extra = late.flatMap(({ fixes }) => fixes).find(({ code, action }) => code === 'extra-minutes' && action !== null)
    const action = extra?.action?.id ?? ''
    expect(await pressAction(desk, staff, { action: action })).toBe('Only the owner can do that.')
    expect((await planOf(desk)).extra).toEqual([])
    expect(await pressAction(desk, owner, { action: action })).toMatch(
      /^Team o\w+ is in time now; every other promise is kept\.$/,
    )
    const plan = await planOf(desk)
    expect(plan.extra.map(({ station }) => station)).toEqual(expect.arrayContaining(['bench-1', 'person-1']))
    expect(plan.changes.at(-1)).toMatchObject({ reason: 'extra-hours' })
    expect((await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late').length).toBeLessThan(late.length)
    expect(await pressAction(desk, owner, { action: action })).toContain('no longer applies')
  })

  test('is asked of the customer, and its promise moves only when they agree', async () => {
    const desk = await shopOf([placed('oone', noon, benchWork())])
    const answer = await pressAction(desk, owner, { action: 'o:oone:mend-move-promise:1' })
    expect(answer).toContain('The promise stays as it is until they answer')
    expect((await planOf(desk)).sold[0]?.promised).toBe(noon)
    const asked = await said(desk, conversationChannel('cone'))
    expect(asked.at(-1)).toContain('cannot be ready when we promised')
    const press = (id: string, action: string) =>
      hearCustomer(desk, 'cone', { incoming: { kind: 'pressed', id, action }, files: [] })
    unwrap(await press('yes-1', 'p:oone:move-promise:yes'))
    unwrap(await press('yes-1', 'p:oone:move-promise:yes'))
    const plan = await planOf(desk)
    expect(plan.sold[0]?.promised).toBeGreaterThan(noon)
    expect([plan.proposals, plan.changes.map(({ reason }) => reason)]).toEqual([[], ['promise-moved']])
    expect((await said(desk, shopChannel('owner'))).at(-1)).toContain('the customer agreed')
    expect((await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late')).toEqual([])
    unwrap(await press('yes-2', 'p:oone:move-promise:yes'))
    expect((await said(desk, conversationChannel('cone'))).at(-1)).toBe('That question is no longer open.')
  })

  test('keeps its promise when the customer says no, or somebody else answers', async () => {
    const desk = await shopOf([placed('oone', noon, benchWork()), placed('otwo', evening, [])])
    await pressAction(desk, owner, { action: 'o:oone:mend-move-promise:1' })
    const incoming = { kind: 'pressed', id: 'other', action: 'p:oone:move-promise:yes' } as const
    unwrap(await hearCustomer(desk, 'ctwo', { incoming, files: [] }))
    expect((await planOf(desk)).sold[0]?.promised).toBe(noon)
    const no = { kind: 'pressed', id: 'no-1', action: 'p:oone:move-promise:no' } as const
    unwrap(await hearCustomer(desk, 'cone', { incoming: no, files: [] }))
    expect((await planOf(desk)).sold[0]?.promised).toBe(noon)
    expect((await said(desk, shopChannel('owner'))).at(-1)).toContain('Call them')
  })
})

describe('the load of the shop', () => {
  test('is a sheet of tables, the same figures as a picture, and a message with a PNG', async () => {
    const desk = await shopOf([placed('oone', evening, benchWork())])
    const sheet = await loadSheet(desk, 'en')
    expect(sheet.due.rows.map(({ name }) => name)).toEqual(expect.arrayContaining(['benches', 'people']))
    expect(sheet.picture).toContain('benches')
    const message = await loadMessage(desk, 'en')
    const file = await desk.store.shop(desk.shopId).files.read(shopChannel('owner'), message.picture?.file ?? '')
    expect([...(file?.bytes.subarray(1, 4) ?? [])]).toEqual([0x50, 0x4e, 0x47])
    expect(message.picture?.alt).toBe(sheet.pictureAlt)
  })

  test('says first what no order of work could mend, and of an idle shop that it is idle', async () => {
    const crowd = ['oone', 'otwo', 'osix', 'oten', 'oace'].map((id) => placed(id, evening, benchWork()))
    const [busy, idle] = [await shopOf(crowd), await shopOf([])]
    expect((await loadSheet(busy, 'en')).lead).toMatch(
      /^Too much is due by Mon 11\/30: 1\d\d % of what the benches can do until then\./,
    )
    expect((await loadSheet(idle, 'es')).lead).toBe('No hay nada planeado: todos los puestos están libres.')
    expect((await loadSheet(idle, 'en')).stations.head.length).toBeGreaterThan(6)
  })

  test('shows how long work takes here, and lets the owner freeze it', async () => {
    const desk = await shopOf([])
    const before = await loadSheet(desk, 'en')
    expect(before.rates.rates.map(({ text }) => text)).toEqual(Array(2).fill('as the shop set it; nothing seen yet'))
    expect(await pressAction(desk, staff, { action: 'r:at-the-press:freeze' })).toBe('Only the owner can do that.')
    await pressAction(desk, owner, { action: 'r:at-the-press:freeze' })
    expect((await planOf(desk)).pace['at-the-press'].frozen).toBe(true)
    await pressAction(desk, owner, { action: 'r:at-the-press:thaw' })
    expect((await planOf(desk)).pace['at-the-press'].frozen).toBe(false)
  })
})

describe('a search beside the work', () => {
  const here: SearchPlan = async ({ book, slots, seed, seconds }) =>
    slotsOf(unwrap(replanFor(book, slots, { seed, budget: budgetFor(seconds), stop: () => false })).lines)

  /** Two jobs in the wrong order: the long one that has time lies in front of the short one that has none. */
  const wrongWay = async (): Promise<WorkerDesk> => {
    const desk = await shopOf([
      placed('olong', localMinute('2026-12-04T17:00'), benchWork({ minutes: 240 })),
      placed('oshort', localMinute('2026-11-30T12:00'), benchWork({ minutes: 60 })),
    ])
    const shop = desk.store.shop(desk.shopId)
    const read = await shop.plan.read()
    const plan = shopPlanFrom(read.body)
    const slot = { operation: 'weed-1-1', stations: ['bench-1', 'person-1'], setupMinutes: 0 }
    const long = unwrap(replanFor({ ...(await bookNow(desk)), orders: plan.sold.slice(0, 1) }, [], effort))
    const first = slotsOf(long.lines)
    const end = Math.max(...first.map((one) => one.end))
    const second = { ...slot, order: 'oshort', start: minutes(end), end: minutes(end + 60) }
    unwrap(await shop.plan.write(read.version, { ...plan, slots: [...first, second] }))
    return desk
  }
  const effort = { seed: 1, budget: budgetFor(0.1), stop: () => false }
  const bookNow = async (desk: WorkerDesk) => bookOf(desk, await planOf(desk), desk.clock.now())

  test('replaces the plan by a better one, checked, with its reason, and then lets it be', async () => {
    const desk = await wrongWay()
    const better = searchBetterPlans(here)
    expect((await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late').map(({ orderId }) => orderId)).toEqual(['oshort'])
    expect(await better(desk)).toBe('replaced')
    expect((await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late')).toEqual([])
    expect((await planOf(desk)).changes.map(({ reason }) => reason)).toEqual(['search'])
    expect(await better(desk)).toBe('nobody-late')
  })

  test('leaves a plan alone that was changed meanwhile, and one that it cannot better', async () => {
    const desk = await wrongWay()
    const shop = desk.store.shop(desk.shopId)
    const meanwhile: SearchPlan = async (task) => {
      const read = await shop.plan.read()
      unwrap(await shop.plan.write(read.version, read.body))
      return here(task)
    }
    expect(await searchBetterPlans(meanwhile)(desk)).toBe('overtaken')
    const broken: SearchPlan = async ({ slots }) => slots.slice(1)
    expect(await searchBetterPlans(broken)(desk)).toBe('none-better')
    expect((await planOf(desk)).changes).toEqual([])
  })
})

describe('the pace of the shop', () => {
  test('is measured by the shop’s own rates, so that an order planned at the learned pace does not unlearn it', () => {
    const happened = [
      { code: 'start', at: 0 },
      { code: 'first-piece', at: 140 },
      { code: 'checked', at: 215 },
    ]
    const at = (pace: typeof ratesAsSet) => {
      const { 'before-the-press': before, 'at-the-press': press } = reckonedAt(pace)
      const operations = [operation('weed-1-1', { minutes: before }), operation('press-1-1', { minutes: press / 2 })]
      return { operations, reckoned: reckonedAt(pace) }
    }
    const pace = Array.from({ length: 300 }).reduce<typeof ratesAsSet>(
      (all) => learned(all, workSeen(happened, at(all), alwaysOpen)),
      ratesAsSet,
    )
    expect(pace['before-the-press'].minutes).toBeCloseTo(140, 0)
    expect(pace['at-the-press'].minutes).toBeCloseTo(150, 0)
  })

  test('is learned from a ticket and used for the next promise', async () => {
    const operations = [operation('weed-1-1', { minutes: 100 }), operation('press-1-1', { minutes: 50 })]
    const at = (code: string, minute: number) => ({ code, at: minute })
    const happened = [
      at('take', 0),
      at('start', 10),
      at('hand-on', 60),
      at('take', 100),
      at('first-piece', 190),
      at('checked', 265),
    ]
    const seen = workSeen(happened, { operations }, alwaysOpen)
    expect(seen).toEqual([
      { stage: 'before-the-press', plannedMinutes: 100, tookMinutes: 140 },
      { stage: 'at-the-press', plannedMinutes: 50, tookMinutes: 75 },
    ])
    const pace = Array.from({ length: 200 }).reduce<typeof ratesAsSet>((all) => learned(all, seen), ratesAsSet)
    expect(pace['before-the-press'].minutes).toBeCloseTo(140, 0)
    const desk = await shopOf([])
    const { rates } = desk.workshop.shop
    expect(atPace(rates, pace).weed.numberEach).toBeCloseTo(rates.weed.numberEach * 1.4, 1)
    expect(atPace(rates, pace).brush.usualPerMinute).toBeLessThan(rates.brush.usualPerMinute)
    expect(
      workSeen(
        happened.filter(({ code }) => code !== 'first-piece'),
        { operations },
        alwaysOpen,
      ),
    ).toEqual([])
  })
})
