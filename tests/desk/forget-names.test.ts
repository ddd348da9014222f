import { afterAll, beforeAll, expect, test } from 'vitest'
import { shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { morningMessage } from '../../src/desk/service/morning/morning-message.ts'
import { morningSheet } from '../../src/desk/service/morning/morning-sheet.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageWith } from '../../src/desk/service/say/say-message.ts'
import { forgetOrder } from '../../src/desk/service/talk/forget-order.ts'
import { localMinute, openTestDesk, says } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { sign, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes = (team: string): string =>
  `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

const owners = async (desk: WorkerDesk): Promise<string> =>
  JSON.stringify(await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0))

test('a forgotten order leaves no name in the sheets and warnings of the owner, and other orders keep theirs', {
  timeout: 120_000,
}, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  for (const [id, team] of [
    ['c-gone', 'Gone Grebes'],
    ['c-stays', 'Staying Stilts'],
  ] as const) {
    await toProof(desk, id, wishes(team))
    await sign(desk, id)
  }
  const { messages } = desk.store.shop(desk.shopId)
  const channel = shopChannel('owner')
  await messages.put({ channel, nonce: 'sheet', by: 'bot', body: morningMessage(desk, await morningSheet(desk, 'en'), 'en') })
  const items = [
    'T0001 Gone Grebes: #4 Abel M is late',
    'T0002 Staying Stilts: #4 Abel M is late',
    'Gone Grebesville is nobody of theirs',
  ]
  await messages.put({
    channel,
    nonce: 'load',
    by: 'bot',
    body: messageWith('en', { blocks: [{ kind: 'list', title: null, items }] }),
  })
  expect(await owners(desk)).toContain('Gone Grebes')
  await says(desk, 'c-gone', 'please cancel the order')
  await says(desk, 'c-gone', 'yes')
  unwrap(await forgetOrder(desk, orderIdOf('c-gone')))
  const left = await owners(desk)
  expect(left).not.toMatch(/Gone Grebes\b/)
  expect(left).toContain('T0001 –: #4 – M is late')
  expect(left).toContain('T0002 Staying Stilts: #4 Abel M is late')
  expect(left).toContain('Gone Grebesville')
})
