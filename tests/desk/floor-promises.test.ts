import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { tellDayBefore } from '../../src/desk/service/morning/tell-day-before.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { openActs } from '../../src/desk/service/records/ticket-life.ts'
import { localMinute, openTestDesk, type TestClock } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, makeAll, noor, openGates, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 180_000)
afterAll(() => opened.close())

const patience = { timeout: 300_000 }
const clockAt = (text: string): TestClock => ({ at: localMinute(text) })
const tees = (team: string, rest = 'white vinyl numbers on the back'): string =>
  `4 practice tees, navy, 100% cotton, ${rest}. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\nnumber,name,size,quantity\n4,Abel,M,1\n7,Bea,L,2\n9,Cid,S,1`

const signed = async (desk: WorkerDesk, id: string, words: string): Promise<string> => {
  await toProof(desk, id, words)
  await sign(desk, id)
  return ticketOf(desk, id)
}

const planNow = async (desk: WorkerDesk) => shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
const said = async (desk: WorkerDesk, channel: string) =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0)).map(({ body }) => messageFrom(body))
const textsOf = async (desk: WorkerDesk, channel: string): Promise<readonly string[]> =>
  (await said(desk, channel)).flatMap(({ blocks }) => blocks.flatMap((block) => ('text' in block ? [block.text] : [])))

const begun = async (desk: WorkerDesk, id: string, words: string): Promise<string> => {
  const ticket = await signed(desk, id, words)
  await acts(desk, ticket, { act: 'take' })
  await openGates(desk, ticket, ['first-piece'])
  await acts(desk, ticket, { act: 'start' })
  await openGates(desk, ticket)
  return ticket
}

const spoils = (desk: WorkerDesk, ticket: string, line: string) =>
  acts(desk, ticket, { act: 'spoiled', values: { line, quantity: '1', reason: 'scorched', whose: 'shop', photo: '' } })

const stonedTees = 'white vinyl numbers with an SS10 crystal outline in two rows on the back'

describe('stock that was late', () => {
  test('and comes early lets the work begin as early as it could without it', patience, async () => {
    const clock = clockAt('2026-11-25T09:00')
    const desk = await openTestDesk(opened.store, clock, (shop) => ({
      ...shop,
      stock: { ...shop.stock, supply: { ...shop.stock.supply, stoneDays: 6 } },
    }))
    await signed(desk, 'c-early', tees('Early Egrets', stonedTees))
    const shop = desk.store.shop(desk.shopId)
    const need = (await shop.stock.needs()).find(({ item }) => item === 'stone-ss10-crystal')?.amount ?? 0
    const lot = (await shop.stock.lots()).find(({ item }) => item === 'stone-ss10-crystal')?.lot ?? ''
    const brushing = async () =>
      (await planNow(desk)).sold.flatMap(({ operations }) => operations).find(({ id }) => id.startsWith('brush-'))?.release ?? 0
    const before = await brushing()
    const counted = { item: 'stone-ss10-crystal', lot, amount: String(need - 40) }
    expect(await pressAction(desk, noor, { action: 's:counted', values: counted })).toBeNull()
    expect(await brushing()).toBe(localMinute('2026-12-01T09:00'))
    const received = { item: 'stone-ss10-crystal', lot, amount: '144' }
    expect(await pressAction(desk, noor, { action: 's:received', values: received })).toBeNull()
    expect(await brushing()).toBe(before)
    expect((await planNow(desk)).sold.every(({ waits }) => waits === undefined)).toBe(true)
  })
})

describe('a remake', () => {
  test(
    'that ends after the promise with all stock in hand is asked about at once, and again when one more does',
    patience,
    async () => {
      const clock = clockAt('2026-11-25T09:00')
      const desk = await openTestDesk(opened.store, clock)
      const ticket = await begun(desk, 'c-tight', tees('Tight Teals'))
      const { needBy } = (await planNow(desk)).sold[0] ?? { needBy: clock.at }
      clock.at = localMinute('2026-12-10T16:45')
      expect(clock.at).toBeLessThan(needBy)
      expect(await spoils(desk, ticket, '1')).toBeNull()
      const questions = async () =>
        (await said(desk, shopChannel('owner'))).filter(({ actions }) => actions.some(({ id }) => /:promise-\d+:/.test(id)))
      const first = await questions()
      expect(first).toHaveLength(1)
      expect((await textsOf(desk, shopChannel('owner'))).join('\n')).toContain('#4 Abel M is made again')
      expect(await spoils(desk, ticket, '3')).toBeNull()
      expect((await questions()).length).toBeGreaterThan(1)
      expect((await planNow(desk)).sold[0]?.promised ?? needBy).toBe(needBy)
    },
  )

  test(
    'of every garment of a line, one after the other, takes the line’s ticks back until the last is bagged',
    patience,
    async () => {
      const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
      const ticket = await begun(desk, 'c-parts', tees('Part Plovers'))
      const shop = desk.store.shop(desk.shopId)
      const orderId = orderIdOf('c-parts')
      const states = async () =>
        new Set((await lifeNow(desk, ticket)).ticks.filter(({ line }) => line === 2).map(({ state }) => state))
      expect((await lifeNow(desk, ticket)).ticks.length).toBeGreaterThan(0)
      await spoils(desk, ticket, '2')
      expect(await states()).not.toContain('spoiled')
      await spoils(desk, ticket, '2')
      expect(await states()).toEqual(new Set(['spoiled']))
      const remakes = await shop.floor.remakesOf(orderId)
      expect(remakes.map(({ line, quantity }) => [line, quantity])).toEqual([
        [2, 1],
        [2, 1],
      ])
      const row = async () => (await shop.orders.rows(orderId)).find(({ line }) => line === 2)?.state
      await acts(desk, ticket, { act: 'remade', values: { remake: remakes[0]?.remakeId ?? '' } })
      expect([await row(), openActs(await lifeNow(desk, ticket)).includes('checked')]).toEqual(['not-cut', false])
      await acts(desk, ticket, { act: 'remade', values: { remake: remakes[1]?.remakeId ?? '' } })
      await makeAll(desk, ticket)
      expect([await row(), openActs(await lifeNow(desk, ticket)).includes('checked')]).toEqual(['bagged', true])
    },
  )

  test('of one garment of two leaves the good one’s ticks where they are', patience, async () => {
    const desk = await openTestDesk(opened.store, clockAt('2026-11-25T09:00'))
    const ticket = await begun(desk, 'c-half', tees('Half Herons'))
    const shop = desk.store.shop(desk.shopId)
    const row = async () => (await shop.orders.rows(orderIdOf('c-half'))).find(({ line }) => line === 2)?.state
    await spoils(desk, ticket, '2')
    const [remake] = await shop.floor.remakesOf(orderIdOf('c-half'))
    await acts(desk, ticket, { act: 'remade', values: { remake: remake?.remakeId ?? '' } })
    expect(await row()).toBe('cut')
  })
})

describe('the day before a promise', () => {
  test(
    'its customer hears once that it stands, in the day, and nothing of a promise that will not be kept',
    patience,
    async () => {
      const clock = clockAt('2026-11-25T09:00')
      const desk = await openTestDesk(opened.store, clock)
      await begun(desk, 'c-eve', tees('Eve Eiders'))
      const told = async () => (await textsOf(desk, conversationChannel('c-eve'))).filter((text) => text.includes('tomorrow'))
      for (const at of ['2026-12-08T10:00', '2026-12-09T06:00']) {
        clock.at = localMinute(at)
        await tellDayBefore(desk)
        expect(await told()).toEqual([])
      }
      clock.at = localMinute('2026-12-09T10:00')
      await tellDayBefore(desk)
      clock.at = localMinute('2026-12-09T10:01')
      await tellDayBefore(desk)
      expect(await told()).toEqual([expect.stringMatching(/on time for tomorrow, Thursday, December 10, 5 pm/)])
    },
  )
})
