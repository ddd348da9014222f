import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { openTickets } from '../../src/desk/service/floor/open-tickets.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import { morningSheet } from '../../src/desk/service/morning/morning-sheet.ts'
import { tightJobs } from '../../src/desk/service/plan/tight-jobs.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { openActs, openForms } from '../../src/desk/service/records/ticket-life.ts'
import { momentOf } from '../../src/desk/service/say/say-floor.ts'
import { shoppingNow } from '../../src/desk/service/stock/shopping-now.ts'
import { pilesOf } from '../../src/domain/stock/ledger.ts'
import { making } from '../../src/domain/ticket/made.ts'
import { localMinute, openTestDesk, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import {
  acts,
  lifeNow,
  makeAll,
  makeFirstPieces,
  noor,
  openGates,
  orderOf,
  pim,
  rosa,
  sign,
  ticketOf,
  toProof,
} from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const clockAt = (text: string): TestClock => ({ at: localMinute(text) })
const own = (team: string): string =>
  `3 practice tees that we bring ourselves, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`
const plain = (team: string): string => own(team).replace(' that we bring ourselves', '')
const stoned = (team: string): string =>
  plain(team).replace('white vinyl numbers', 'white vinyl numbers with an SS10 crystal outline in two rows')

const signed = async (desk: WorkerDesk, id: string, words: string): Promise<string> => {
  await toProof(desk, id, words)
  await sign(desk, id)
  return ticketOf(desk, id)
}

const said = async (desk: WorkerDesk, channel: string) =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0)).map(({ body }) => messageFrom(body))

const textsOf = async (desk: WorkerDesk, channel: string): Promise<string> =>
  (await said(desk, channel)).flatMap(({ blocks }) => blocks.flatMap((block) => ('text' in block ? [block.text] : []))).join('\n')

describe('gates on the floor', () => {
  test('keep from cutting before the count-in and from the check before the first piece is signed by a second person', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-gates', plain('Gate Geese'))
    expect(await acts(desk, ticket, { act: 'take' })).toBeNull()
    expect(await acts(desk, ticket, { act: 'start' })).toContain('count-in')
    const garment = (await lifeNow(desk, ticket)).gates[0]?.gate.garment ?? ''
    expect(await acts(desk, ticket, { act: 'count-in', values: { garment, missing: 'two' } })).toContain('How many')
    expect(await acts(desk, ticket, { act: 'count-in', values: { garment, missing: '1' } })).toBeNull()
    expect(await textsOf(desk, shopChannel('owner'))).toContain('1 missing at the count-in')
    expect(openActs(await lifeNow(desk, ticket))).not.toContain('start')
    await acts(desk, ticket, { act: 'count-in', values: { garment, missing: '0' } })
    expect(await textsOf(desk, shopChannel('bench'))).toMatch(/Counted in: all here \(Noor/)
    expect(await acts(desk, ticket, { act: 'start' })).toBeNull()
    expect(await acts(desk, ticket, { act: 'checked' })).toContain('first piece')
    expect(openForms(await lifeNow(desk, ticket))).not.toContain('first-piece')
    expect(await acts(desk, ticket, { act: 'first-piece', values: { garment } })).toMatch(
      /^First: Weed; 1 Pre-press, back; .*…\.$/,
    )
    await makeFirstPieces(desk, ticket)
    expect(await acts(desk, ticket, { act: 'tick', values: { step: '1', deed: 'done', lines: '2' } })).toContain(
      'first piece signed',
    )
    expect(await acts(desk, ticket, { act: 'first-piece', values: { garment } })).toBeNull()
    expect(await acts(desk, ticket, { act: 'second-look', values: { garment, result: 'right' } })).toContain('second person')
    expect(await acts(desk, ticket, { act: 'second-look', by: pim, values: { garment, result: 'right' } })).toBeNull()
    await openGates(desk, ticket)
    expect(openActs(await lifeNow(desk, ticket))).not.toContain('checked')
    expect(await acts(desk, ticket, { act: 'checked' })).toMatch(/^First: Weed; 1 Pre-press, back; /)
    for (const step of ['1004', '1005'])
      expect(await acts(desk, ticket, { act: 'tick', values: { step, deed: 'done', lines: '2' } })).toMatch(/^First: Weed; /)
    await makeAll(desk, ticket)
    const before = (await lifeNow(desk, ticket)).ticks
    expect(await acts(desk, ticket, { act: 'checked' })).toBeNull()
    const fresh = (await lifeNow(desk, ticket)).ticks.filter(
      ({ step, line }) => !before.some((one) => one.step === step && one.line === line),
    )
    expect(new Set(fresh.map(({ step }) => step))).toEqual(new Set([1004]))
  })

  test('drops that stand close the ticket; the customer is shown the vinyl that holds, signs, and a new ticket comes', {
    timeout: 120_000,
  }, async () => {
    const clock = clockAt('2026-11-25T09:00')
    const desk = await openTestDesk(opened.store, clock)
    const ticket = await signed(desk, 'c-beaded', own('Beaded Bears').replace('100% cotton', '100% nylon woven'))
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['water-drops', 'test-press'])
    const life = await lifeNow(desk, ticket)
    expect(openForms(life)).toContain('water-drops')
    const garment = life.gates.find(({ gate }) => gate.code === 'water-drops')?.gate.garment ?? ''
    expect(await acts(desk, ticket, { act: 'water-drops', values: { garment, drops: '60 60 55 60 60' } })).toBeNull()
    expect((await lifeNow(desk, ticket)).ticket.state).toBe('closed')
    expect((await orderOf(desk, 'c-beaded')).hold).not.toBeNull()
    const planned = async () => shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
    expect((await planned()).slots.filter(({ order }) => order === orderIdOf('c-beaded'))).toEqual([])
    // Nobody is asked about the hour of what nobody may press.
    clock.at = localMinute('2026-12-10T16:00')
    expect(await tightJobs(desk, 'en')).toEqual([])
    clock.at = localMinute('2026-11-25T09:00')
    await work(desk)
    const talk = await said(desk, conversationChannel('c-beaded'))
    const proofs = talk.filter(({ picture }) => picture !== null)
    expect(proofs.length).toBe(2)
    expect(await textsOf(desk, conversationChannel('c-beaded'))).toContain('Low-temperature vinyl')
    await sign(desk, 'c-beaded')
    const tickets = await desk.store.shop(desk.shopId).tickets.ofOrder(orderIdOf('c-beaded'))
    expect(tickets.map(({ revision, state }) => [revision, state])).toEqual([
      [1, 'replaced'],
      [2, 'open'],
    ])
    const order = await orderOf(desk, 'c-beaded')
    expect([order.state, order.hold]).toEqual(['on-bench', null])
    expect((await planned()).slots.some(({ order: of }) => of === orderIdOf('c-beaded'))).toBe(true)
    const needs = (await desk.store.shop(desk.shopId).stock.needs()).map(({ item }) => item)
    expect(needs).toContain('vinyl-low-temperature-white')
    expect(needs).not.toContain('vinyl-standard-white')
  })
})

describe('ticks', () => {
  test('cover a step for chosen garments, are handed back without a word, and one of two has a step', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-ticks', plain('Tick Terns'))
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['first-piece'])
    const tick = (by: typeof noor, deed: string, step: string, lines = '') =>
      acts(desk, ticket, { act: 'tick', by, values: { step, deed, lines } })
    const both = await Promise.all([tick(noor, 'take', '1001', '1'), tick(pim, 'take', '1001', '1')])
    expect(both.filter((one) => one === null).length).toBe(1)
    const shop = desk.store.shop(desk.shopId)
    const vinyl = async () => pilesOf(await shop.stock.ledger()).get('vinyl-standard-white')?.used ?? 0
    expect(await tick(both[0] === null ? noor : pim, 'done', '1001', '1')).toBeNull()
    const once = await vinyl()
    expect(once).toBeGreaterThan(0)
    expect((await shop.orders.rows(orderIdOf('c-ticks'))).find(({ line }) => line === 1)?.state).toBe('cut')
    expect(await tick(noor, 'back', '1001', '1')).toBeNull()
    expect((await shop.orders.rows(orderIdOf('c-ticks'))).find(({ line }) => line === 1)?.state).toBe('not-cut')
    await tick(noor, 'done', '1001', '1')
    expect(await vinyl()).toBe(once)
    await tick(noor, 'done', '1001')
    const { ticks } = await lifeNow(desk, ticket)
    expect(ticks.filter(({ step, state }) => step === 1001 && state === 'done').length).toBe(3)
    const plan = shopPlanFrom((await shop.plan.read()).body)
    const cut = plan.sold.flatMap(({ operations }) => operations).filter(({ id }) => id.startsWith('cut-vinyl'))
    expect(cut.every(({ done }) => done !== null)).toBe(true)
  })

  test('pause and hand a ticket on; a press that is uneven this morning is not used', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-pause', plain('Pause Pipits'))
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['first-piece'])
    await acts(desk, ticket, { act: 'start' })
    expect(await acts(desk, ticket, { act: 'pause' })).toBeNull()
    expect(openForms(await lifeNow(desk, ticket))).not.toContain('tick')
    expect(await acts(desk, ticket, { act: 'resume' })).toBeNull()
    for (const press of ['press-1', 'press-2']) {
      const values = { press, set: '300', readings: '300, 330, 300, 301, 299' }
      expect(await pressAction(desk, noor, { action: 's:press-check', values })).toBeNull()
    }
    const step = (await lifeNow(desk, ticket)).ticket.body
    expect(step).not.toBeNull()
    expect(await acts(desk, ticket, { act: 'tick', values: { step: '1', deed: 'done', lines: '1' } })).toContain('not fit')
    const good = { press: 'press-1', set: '300', readings: '285 286 285 285 286' }
    await pressAction(desk, noor, { action: 's:press-check', values: good })
    expect(await textsOf(desk, shopChannel('bench'))).toContain('press 1 today: +14.6 °F on every set point')
  })
})

describe('stock on the floor', () => {
  test('stones counted short by 40 stand on the shopping list, and a promise moves only when the owner agrees', {
    timeout: 120_000,
  }, async () => {
    const clock = clockAt('2026-12-07T09:00')
    const desk = await openTestDesk(opened.store, clock, (shop) => ({
      ...shop,
      stock: { ...shop.stock, supply: { ...shop.stock.supply, stoneDays: 6 } },
    }))
    const ticket = await signed(desk, 'c-short', stoned('Short Shrikes'))
    const shop = desk.store.shop(desk.shopId)
    const need = (await shop.stock.needs()).find(({ item }) => item === 'stone-ss10-crystal')?.amount ?? 0
    const lot = (await shop.stock.lots()).find(({ item }) => item === 'stone-ss10-crystal')?.lot ?? ''
    const promised = () => shop.plan.read().then(({ body }) => shopPlanFrom(body).sold[0]?.promised)
    const before = await promised()
    const hours = async () =>
      (await said(desk, shopChannel('bench'))).flatMap(({ blocks }) =>
        blocks.flatMap((block) => (block.kind === 'list' && block.title?.startsWith('Promised') === true ? [block.title] : [])),
      )
    expect(await hours()).toEqual(['Promised Thursday, December 10, 5 pm, as wanted'])
    const values = { item: 'stone-ss10-crystal', lot, amount: String(need - 40) }
    expect(await pressAction(desk, noor, { action: 's:counted', values })).toBeNull()
    const errand = (await shoppingNow(desk)).find(({ item }) => item === 'stone-ss10-crystal')
    expect(errand).toMatchObject({ missing: 40, packs: [1], orders: [orderIdOf('c-short')] })
    const note = (await said(desk, shopChannel('owner'))).find(({ actions }) => actions.length > 0)
    const move = note?.actions.find(({ id }) => /:promise-\d+:/.test(id))?.id ?? ''
    expect(move).not.toBe('')
    expect(await promised()).toBe(before)
    expect(await pressAction(desk, noor, { action: move })).toContain('Only the owner')
    expect(await promised()).toBe(before)
    expect(await pressAction(desk, rosa, { action: move })).toBeNull()
    expect(await promised()).toBeGreaterThan(before ?? 0)
    const moved = momentOf(desk, (await promised()) ?? 0)
    expect(await hours()).toEqual([`Promised ${moved} · wanted Thursday, December 10, 5 pm`])
    expect((await pressView(desk, ticket))?.needed).toBe((await hours())[0])
    expect((await openTickets(desk, shop)).map((one) => one.hours)).toEqual(await hours())
    expect(await textsOf(desk, conversationChannel('c-short'))).toContain('We have to move your order')
    expect(ticket).not.toBe('')
  })
})

describe('a spoiled garment', () => {
  test('is written down, made again with stock and plan of its own, and bagged before the promise', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-scorched', plain('Scorch Storks'))
    const shop = desk.store.shop(desk.shopId)
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket)
    await acts(desk, ticket, { act: 'start' })
    const wanted = async () => (await shop.stock.needs()).filter(({ item }) => item.startsWith('garment:cotton-tee:navy:men:L'))
    const before = (await wanted())[0]?.amount ?? 0
    const values = { line: '2', quantity: '1', reason: 'scorched', whose: 'shop', photo: '' }
    expect(await acts(desk, ticket, { act: 'spoiled', values })).toBeNull()
    expect((await wanted())[0]?.amount).toBe(before + 1)
    const [remake] = await shop.floor.remakesOf(orderIdOf('c-scorched'))
    expect(remake).toMatchObject({ line: 2, quantity: 1, reason: 'scorched', whose: 'shop', doneAt: null })
    expect(remake?.cost).toBeGreaterThan(0)
    const plan = shopPlanFrom((await shop.plan.read()).body)
    const promised = plan.sold[0]?.promised ?? 0
    const again = plan.slots.filter(({ operation }) => operation.startsWith('remake-'))
    expect(again.length).toBeGreaterThan(2)
    expect(Math.max(...again.map(({ end }) => end))).toBeLessThanOrEqual(promised)
    expect(await textsOf(desk, shopChannel('owner'))).toContain('scorched')
    expect(openActs(await lifeNow(desk, ticket))).not.toContain('checked')
    expect(await acts(desk, ticket, { act: 'remade', values: { remake: remake?.remakeId ?? '' } })).toBeNull()
    await makeAll(desk, ticket)
    for (const act of ['checked', 'bagged', 'collected']) expect(await acts(desk, ticket, { act })).toBeNull()
    const piles = pilesOf(await shop.stock.ledger())
    expect(piles.get('garment:cotton-tee:navy:men:L')).toMatchObject({ used: 2, reserved: 0 })
    expect((await shop.stock.needs()).length).toBe(0)
    expect((await shop.stock.templates()).length).toBe(0)
  })
})

describe('a late change', () => {
  test('says what to throw away, waits for the holder’s “seen”, and keeps what was made', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const first = await signed(desk, 'c-late', plain('Late Larks'))
    await acts(desk, first, { act: 'take' })
    await openGates(desk, first, ['first-piece'])
    await acts(desk, first, { act: 'start' })
    const shop = desk.store.shop(desk.shopId)
    const used = async () => pilesOf(await shop.stock.ledger()).get('vinyl-standard-white')?.used ?? 0
    const cut = await used()
    await says(desk, 'c-late', 'change number 9 to 10')
    await work(desk)
    await sign(desk, 'c-late')
    const ticket = await ticketOf(desk, 'c-late')
    expect(ticket).not.toBe(first)
    const rows = await shop.orders.rows(orderIdOf('c-late'))
    expect(rows.map(({ line, state }) => [line, state])).toEqual([
      [1, 'cut'],
      [2, 'cut'],
      [3, 'not-cut'],
    ])
    expect((await shop.stock.needs()).find(({ item }) => item === 'vinyl-standard-white')?.amount ?? 0).toBeLessThan(cut)
    await acts(desk, ticket, { act: 'take' })
    expect(openActs(await lifeNow(desk, ticket))).toEqual(['seen', 'hand-on'])
    expect(await acts(desk, ticket, { act: 'tick', values: { step: '1001', deed: 'done' } })).toContain('Seen')
    expect(await acts(desk, ticket, { act: 'seen' })).toBeNull()
    expect(await textsOf(desk, shopChannel('bench'))).toContain('Throw away')
    expect((await lifeNow(desk, ticket)).gates.find(({ gate }) => gate.code === 'count-in')?.is).toBe('open')
  })
})

describe('one press for all that is to be cut', () => {
  test('says so in its words, and what was pressed for an earlier revision stays pressed', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const first = await signed(desk, 'c-pressed', plain('Pressed Plovers'))
    await acts(desk, first, { act: 'take' })
    await openGates(desk, first, ['first-piece'])
    for (const step of (await lifeNow(desk, first)).steps.filter(({ kind }) => making.includes(kind)))
      await acts(desk, first, { act: 'tick', values: { step: `${step.no}`, deed: 'done', lines: '1' } })
    await says(desk, 'c-pressed', 'change number 9 to 10')
    await work(desk)
    await sign(desk, 'c-pressed')
    const ticket = await ticketOf(desk, 'c-pressed')
    const rows = async () =>
      (await desk.store.shop(desk.shopId).orders.rows(orderIdOf('c-pressed'))).map(({ line, state }) => [line, state])
    const kept = [
      [1, 'pressed'],
      [2, 'not-cut'],
      [3, 'not-cut'],
    ]
    expect(await rows()).toEqual(kept)
    await acts(desk, ticket, { act: 'take' })
    await acts(desk, ticket, { act: 'seen' })
    await openGates(desk, ticket, ['first-piece'])
    const [message] = (await desk.store.shop(desk.shopId).messages.after('shop:bench', 0)).slice(-1)
    expect(messageFrom(message?.body).actions.find(({ id }) => id.includes(':start:'))?.label).toBe('All is cut')
    expect(await acts(desk, ticket, { act: 'start' })).toBeNull()
    expect(await rows()).toEqual([
      [1, 'pressed'],
      [2, 'cut'],
      [3, 'cut'],
    ])
    expect(await textsOf(desk, shopChannel('bench'))).toContain('All is cut, says Noor')
  })

  test('does not say that all is cut where one step was begun for one garment', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-begun', plain('Begun Bitterns'))
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['first-piece'])
    await acts(desk, ticket, { act: 'tick', values: { step: '1001', deed: 'done', lines: '1' } })
    const texts = await textsOf(desk, shopChannel('bench'))
    expect(texts).toContain('Started by Noor')
    expect(texts.slice(texts.indexOf('Begun Bitterns'))).not.toContain('All is cut, says')
  })
})

describe('what comes back from the wash', () => {
  test('is written down by staff with row, days, washes, drying and kind, and the owner sees how it was made', {
    timeout: 120_000,
  }, async () => {
    const clock = clockAt('2026-11-25T09:00')
    const desk = await openTestDesk(opened.store, clock)
    const ticket = await signed(desk, 'c-washed', plain('Washed Wrens'))
    const values = { line: '2', kind: 'lift', washes: '3', drying: 'laundry-dryer', photo: '' }
    await acts(desk, ticket, { act: 'take' })
    expect(await acts(desk, ticket, { act: 'complaint', values })).not.toBeNull()
    await openGates(desk, ticket)
    await makeAll(desk, ticket)
    for (const act of ['checked', 'bagged', 'collected']) expect(await acts(desk, ticket, { act })).toBeNull()
    clock.at = localMinute('2026-12-04T10:00')
    expect(openForms(await lifeNow(desk, ticket))).toEqual(['complaint'])
    expect(await acts(desk, ticket, { act: 'complaint', values: { ...values, washes: 'some' } })).toContain('Washes')
    expect(await acts(desk, ticket, { act: 'complaint', values: { ...values, line: '9' } })).toContain('Player')
    expect(await acts(desk, ticket, { act: 'complaint', by: pim, values })).toBeNull()
    const found = (await lifeNow(desk, ticket)).findings.filter(({ code }) => code === 'complaint')
    expect(found).toMatchObject([
      { by: 'Pim', facts: { line: 2, kind: 'lift', days: 9, washes: 3, drying: 'laundry-dryer', photo: null } },
    ])
    const told = await textsOf(desk, shopChannel('owner'))
    expect(told).toMatch(/T0001: complaint about #7 Bea L: lifts or peels/)
    expect(told).toMatch(/9 days after the hand-over, washed 3 times/)
    expect(told).toMatch(/Pressed: \d+ °F, \d+ s, press 1, by Noor/)
    expect(told).toMatch(/First piece signed by Pim/)
    expect(await textsOf(desk, shopChannel('bench'))).toMatch(/Complaint: #7 Bea L · lifts or peels \(Pim/)
  })
})

describe('who has what', () => {
  test('stands on the press list and on the morning sheet, where nobody is told to take what somebody has', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await signed(desk, 'c-has', plain('Held Hawks'))
    const shop = desk.store.shop(desk.shopId)
    const todo = async () =>
      (await morningSheet(desk, 'en')).sections.find(({ code }) => code === 'press-list')?.lines.map((line) => line.todo)
    expect(await todo()).toEqual(['take it at the press'])
    expect(await openTickets(desk, shop)).toMatchObject([{ stage: 'free', by: null, waits: ['count-in', 'first piece signed'] }])
    await acts(desk, ticket, { act: 'take' })
    expect(await todo()).toEqual(['Noor has it; ask how far it is'])
    expect(await openTickets(desk, shop)).toMatchObject([{ stage: 'held', by: 'Noor' }])
    const looks = async () => (await pressView(desk, ticket))?.acts.map(({ id, weight }) => [id.split(':')[2], weight])
    expect(await looks()).toEqual([['hand-on', 'plain']])
    await openGates(desk, ticket, ['first-piece'])
    expect(await looks()).toEqual([
      ['start', 'main'],
      ['hand-on', 'plain'],
    ])
  })
})

describe('work that is over', () => {
  test('is planned for nobody again: the proof when it is signed, each gate when it is open, a bleed test when it is pressed', {
    timeout: 120_000,
  }, async () => {
    const clock = clockAt('2026-11-25T09:00')
    const desk = await openTestDesk(opened.store, clock)
    const red = own('Over Owls').replace('navy, 100% cotton', 'red, 100% polyester')
    const ticket = await signed(desk, 'c-over', red)
    const plan = async () => shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
    const open = async () =>
      (await plan()).sold.flatMap(({ operations }) => operations.filter(({ done }) => done === null).map(({ id }) => id))
    expect(await open()).toEqual(expect.arrayContaining(['count-in', 'water-drops', 'bleed-test', 'first-piece']))
    expect(await open()).not.toContain('proof')
    await acts(desk, ticket, { act: 'take' })
    const garment = (await lifeNow(desk, ticket)).gates[0]?.gate.garment ?? ''
    await acts(desk, ticket, { act: 'count-in', values: { garment, missing: '1' } })
    expect(await open()).toContain('count-in')
    await acts(desk, ticket, { act: 'count-in', values: { garment, missing: '0' } })
    const clean = { act: 'bleed-test', values: { garment, result: 'clean', signedBy: '' } } as const
    expect(await acts(desk, ticket, clean)).toMatch(/^First write down that a piece was pressed/)
    await acts(desk, ticket, { act: 'bleed-test', values: { garment, result: 'pressed', signedBy: '' } })
    expect(await acts(desk, ticket, clean)).toMatch(/^The wait is not over: look again Thursday, November 26, 9 am/)
    expect((await lifeNow(desk, ticket)).findings.filter(({ code }) => code === 'bleed-test')).toHaveLength(1)
    const pressed = clock.at
    await openGates(desk, ticket, ['bleed-test', 'first-piece', 'second-look'])
    expect(await open()).not.toEqual(expect.arrayContaining(['count-in']))
    expect(await open()).not.toEqual(expect.arrayContaining(['water-drops']))
    const bleed = (await plan()).sold[0]?.operations.find(({ id }) => id === 'bleed-test')
    expect(bleed?.done).toBe(pressed)
    clock.at = localMinute('2026-11-27T09:00')
    expect(await acts(desk, ticket, clean)).toBeNull()
    await makeFirstPieces(desk, ticket)
    await acts(desk, ticket, { act: 'first-piece', values: { garment } })
    expect(await open()).toContain('first-piece')
    await acts(desk, ticket, { act: 'second-look', by: pim, values: { garment, result: 'right' } })
    expect(await open()).not.toContain('first-piece')
    expect((await plan()).slots.map(({ operation }) => operation)).not.toEqual(expect.arrayContaining(['count-in']))
  })
})
