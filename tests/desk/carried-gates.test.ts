import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { localMinute, openTestDesk, says, work } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, openGates, sign, talkOf, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
let desk: WorkerDesk
beforeAll(async () => {
  opened = await openTestStore()
  desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
}, 60_000)
afterAll(() => opened.close())

const words =
  '3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Carried Coots, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'

/** How the count-in of an order stands that was counted in, and then changed by these words and signed again. */
const countInAfter = async (id: string, change: string): Promise<readonly (string | undefined)[]> => {
  await toProof(desk, id, words)
  await sign(desk, id)
  const first = await ticketOf(desk, id)
  await acts(desk, first, { act: 'take' })
  await openGates(desk, first, ['first-piece'])
  expect((await lifeNow(desk, first)).gates.find(({ gate }) => gate.code === 'count-in')?.is).toBe('open')
  await says(desk, id, change)
  if ((await talkOf(desk, id)).asked?.code === 'ask-ages') await says(desk, id, 'all are 13 or older')
  await work(desk)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  expect(ticket).not.toBe(first)
  const { gates, roster } = await lifeNow(desk, ticket)
  const rows = await desk.store.shop(desk.shopId).orders.rows(orderIdOf(id))
  expect(rows).toHaveLength(roster.length)
  return gates.filter(({ gate }) => gate.code === 'count-in').map(({ is }) => is)
}

describe('a count-in after the order was changed', () => {
  test.each([
    ['another number on a garment that was counted', 'change number 9 to 10', 'open'],
    ['one garment fewer', 'take Cid off the list', 'open'],
    ['one player more', 'add 12 Dorsey, adult M', 'closed'],
    ['another size', 'Abel needs an XL', 'closed'],
    ['another colour', 'make the tees black instead of navy', 'closed'],
  ])('%s: %s', { timeout: 60_000 }, async (what, change, is) => {
    expect(await countInAfter(`c-${what.replaceAll(' ', '-')}`, change)).toEqual([is])
  })
})
