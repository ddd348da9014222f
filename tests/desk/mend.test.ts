import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { bookOf } from '../../src/desk/service/plan/shop-plan.ts'
import { tightJobs } from '../../src/desk/service/plan/tight-jobs.ts'
import { pressAction, pressAndTell } from '../../src/desk/service/press-action.ts'
import { hearCustomer } from '../../src/desk/service/talk/hear-customer.ts'
import { brokenPromises, verify } from '../../src/domain/schedule/verify/verify.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { localMinute } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { benchWork, evening, monday, noon, owner, placed, planOf, said, shopWith } from '../support/planned-shop.ts'
import { operation } from '../support/scheduling.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const atBench = [['bench-1'], ['person-1']]

/** The button of one fix of the only late job. */
const fixOf = async (desk: WorkerDesk, code: string): Promise<string> => {
  const [late] = (await tightJobs(desk, 'en')).filter(({ kind }) => kind === 'late')
  return late?.fixes.find((fix) => fix.code === code)?.action?.id ?? `no ${code} among ${late?.fixes.map((fix) => fix.code)}`
}

const isLate = async (desk: WorkerDesk): Promise<boolean> => (await tightJobs(desk, 'en')).some(({ kind }) => kind === 'late')

/** The plan that was kept is sound, and every promise of it is kept. */
const isKept = async (desk: WorkerDesk): Promise<void> => {
  const plan = await planOf(desk)
  const book = bookOf(desk, plan, desk.clock.now())
  expect([verify(book, plan.slots), brokenPromises(book, plan.slots)]).toEqual([[], []])
}

const answers = async (desk: WorkerDesk, orderId: string, answer: string): Promise<void> => {
  const incoming = { kind: 'pressed', id: `${orderId}-${answer}`, action: `p:${orderId}:${answer}` } as const
  unwrap(await hearCustomer(desk, `c${orderId.slice(1)}`, { incoming, files: [] }))
}

describe('what mends a late job with one press', () => {
  test('says whether it was done: pressed a second time nothing is there to mend', async () => {
    const waiting = benchWork({ minutes: 60, release: localMinute('2026-11-30T17:00') })
    const desk = await shopWith(opened.store, [placed('otwice', evening, waiting)])
    const action = await fixOf(desk, 'earlier-delivery')
    expect((await pressAndTell(desk, { ...owner, role: 'staff' }, { action })).isDone).toBe(false)
    expect(await pressAndTell(desk, owner, { action })).toMatchObject({
      isDone: true,
      said: expect.stringContaining('in time now'),
    })
    expect(await pressAndTell(desk, owner, { action })).toMatchObject({ isDone: false, said: expect.any(String) })
  })

  test('is the supplier’s earlier delivery, which the plan then counts on', async () => {
    const waiting = benchWork({ minutes: 60, release: localMinute('2026-11-30T17:00') })
    const desk = await shopWith(opened.store, [placed('oone', evening, waiting)])
    expect(await isLate(desk)).toBe(true)
    expect(await pressAction(desk, owner, { action: await fixOf(desk, 'earlier-delivery') })).toContain('in time now')
    const plan = await planOf(desk)
    expect(plan.sold[0]?.operations[0]?.release).toBeLessThanOrEqual(localMinute('2026-11-30T16:30'))
    expect(plan.changes.map(({ reason }) => reason)).toEqual(['earlier-delivery'])
    await isKept(desk)
  })

  test('is another turn: in front of a job that has time', async () => {
    const sold = [
      placed('olong', localMinute('2026-12-04T17:00'), benchWork({ minutes: 240 })),
      placed('oshort', noon, benchWork({ minutes: 60 })),
    ]
    const stations = ['bench-1', 'person-1']
    const slot = { operation: 'weed-1-1', stations, setupMinutes: 0 }
    const first = { ...slot, order: 'olong', start: monday, end: minutes(monday + 240) }
    const second = { ...slot, order: 'oshort', start: localMinute('2026-11-30T12:30'), end: localMinute('2026-11-30T13:30') }
    const desk = await shopWith(opened.store, sold, [first, second])
    expect(await isLate(desk)).toBe(true)
    const [late] = await tightJobs(desk, 'en')
    const code = late?.fixes.some((fix) => fix.code === 'move-up') ? 'move-up' : 'go-before'
    expect(await pressAction(desk, owner, { action: await fixOf(desk, code) })).toContain('in time now')
    expect((await planOf(desk)).changes.map(({ reason }) => reason)).toEqual(['put-first'])
    await isKept(desk)
  })

  test('is working on after closing, where the work alone is longer than the day', async () => {
    const desk = await shopWith(opened.store, [placed('oone', localMinute('2026-11-30T20:00'), benchWork({ minutes: 600 }))])
    expect(await isLate(desk)).toBe(true)
    expect(await pressAction(desk, owner, { action: await fixOf(desk, 'open-longer') })).toContain('in time now')
    expect((await planOf(desk)).extra.map(({ station }) => station)).toEqual(expect.arrayContaining(['bench-1', 'person-1']))
    await isKept(desk)
  })
})

describe('what the customer must agree to', () => {
  const lots = [
    operation('inspect-1', { needs: atBench, minutes: 120, splittable: true }),
    operation('inspect-2', { needs: atBench, minutes: 400, splittable: true }),
  ]

  test('is a collection in two parts: the promise then stands for the rest', async () => {
    const desk = await shopWith(opened.store, [placed('oone', noon, lots)])
    expect(await pressAction(desk, owner, { action: await fixOf(desk, 'split-collection') })).toContain('until they answer')
    expect((await planOf(desk)).sold[0]?.promised).toBe(noon)
    const question = (await said(desk, conversationChannel('cone'))).at(-1)
    expect(question).toMatch(
      /About 1 of the 3 garments can be collected Monday, November 30, 12 pm, the rest .*; tell us which ones you need first\. Is that all right\?/,
    )
    await answers(desk, 'oone', 'split-collection:yes')
    const plan = await planOf(desk)
    expect(plan.sold[0]?.promised).toBeGreaterThan(noon)
    expect(plan.sold[0]?.first).toEqual({ at: noon, garments: 1, of: 3 })
    expect([plan.proposals, plan.changes.map(({ reason }) => reason)]).toEqual([[], ['in-two-parts']])
    expect(await isLate(desk)).toBe(false)
    expect((await said(desk, shopChannel('owner'))).at(-1)).toContain('the customer agreed')
  })

  test('is an order without its stones: a yes is the customer’s own wish for a new proof, and nothing changes before they sign', async () => {
    const stoned = [
      operation('brush-1', { needs: atBench, minutes: 300, splittable: true }),
      operation('inspect-1', { needs: atBench, minutes: 60, splittable: true, after: [{ operation: 'brush-1', lagMinutes: 0 }] }),
    ]
    const desk = await shopWith(opened.store, [placed('oone', noon, stoned)])
    const before = await planOf(desk)
    expect(await pressAction(desk, owner, { action: await fixOf(desk, 'drop-stones') })).toContain('until they answer')
    expect((await said(desk, conversationChannel('cone'))).at(-1)).toContain('Shall we show you a proof without stones?')
    await answers(desk, 'oone', 'drop-stones:yes')
    expect(await said(desk, conversationChannel('cone'))).toContain('No stones, please')
    const plan = await planOf(desk)
    expect([plan.sold, plan.changes, plan.proposals]).toEqual([before.sold, [], []])
  })
})
