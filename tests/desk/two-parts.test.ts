import { afterAll, beforeAll, expect, test } from 'vitest'
import { shopChannel } from '../../src/desk/service/desk.ts'
import { changePlan } from '../../src/desk/service/floor/mark-work.ts'
import { openTickets } from '../../src/desk/service/floor/open-tickets.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import { morningSheet } from '../../src/desk/service/morning/morning-sheet.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { orderStatus } from '../../src/desk/service/talk/order-status.ts'
import { ok } from '../../src/domain/result/result.ts'
import { localMinute, openTestDesk, type TestClock } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words = (team: string, day: string): string =>
  `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December ${day} at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

test('the first of two parts that a customer agreed to stands at the bench, on the morning sheet and in the status', {
  timeout: 60_000,
}, async () => {
  const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
  const desk = await openTestDesk(opened.store, clock)
  const shop = desk.store.shop(desk.shopId)
  for (const [id, team, day] of [
    ['c-parts', 'Parted Pipits', '18'],
    ['c-whole', 'Whole Wrens', '11'],
  ] as const) {
    await toProof(desk, id, words(team, day))
    await sign(desk, id)
  }
  const ticket = await ticketOf(desk, 'c-parts')
  const status = (language: 'en' | 'es') => orderStatus(desk, shop, { id: 'c-parts', language })
  const first = { at: localMinute('2026-12-04T12:00'), garments: 2, of: 3 }
  expect((await openTickets(desk, shop)).map(({ label }) => label)).toEqual(['T0002 Whole Wrens', 'T0001 Parted Pipits'])
  await desk.store.together(desk.shopId, async (records) => {
    await changePlan(records, (plan) => ({
      ...plan,
      sold: plan.sold.map((one) => (one.id === orderIdOf('c-parts') ? { ...one, first } : one)),
    }))
    return ok(null)
  })
  const hours = 'FIRST PART Friday, December 4, 12 pm: 2 of 3 garments; ask which · Promised Friday, December 18, 5 pm, as wanted'
  expect((await openTickets(desk, shop)).map(({ hours: said }) => said)[0]).toBe(hours)
  expect((await pressView(desk, ticket))?.needed).toBe(hours)
  await acts(desk, ticket, { act: 'take' })
  const bench = (await shop.messages.after(shopChannel('bench'), 0)).map(({ body }) => JSON.stringify(messageFrom(body)))
  expect(bench.join('\n')).toContain(hours)
  expect(await status('en')).toContain('You collect about 2 of the 3 garments before: Friday, December 4, 12 pm.')
  expect(await status('es')).toContain('Unas 2 de las 3 prendas las recoge antes: viernes 4 de diciembre, 12 p. m.')
  const leaving = async () =>
    (await morningSheet(desk, 'en')).sections.find(({ code }) => code === 'leaving')?.lines.map(({ text }) => text)
  expect(await leaving()).toEqual([])
  clock.at = localMinute('2026-12-03T07:00')
  expect(await leaving()).toEqual(['T0001 Parted Pipits: 2 garments, promised Friday, December 4'])
  clock.at = localMinute('2026-12-05T07:00')
  expect(await status('en')).not.toContain('before')
  expect((await openTickets(desk, shop)).map(({ label }) => label)[0]).toBe('T0002 Whole Wrens')
})
