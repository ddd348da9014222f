import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { bookOf } from '../../src/desk/service/plan/shop-plan.ts'
import { lapseHolds } from '../../src/desk/service/quote/lapse-holds.ts'
import { quoteOrder } from '../../src/desk/service/quote/quote-order.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { conversationFrom, messageFrom, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { brokenPromises } from '../../src/domain/schedule/verify/verify.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import { runChild } from '../support/child.ts'
import { localMinute, openTestDesk, presses, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, temporaryFolder, unwrap } from '../support/embedded.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 180_000)
afterAll(() => opened.close())

const wednesday = 'Wednesday December 2 at 5 pm'
const wishes = `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer. We need them ${wednesday}. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

/** One person works here, slowly: the shop has room for one of two orders until Wednesday. */
const crowded = (shop: Shop): Shop => ({
  ...shop,
  rates: { ...shop.rates, inspectAndBagEach: 100 },
  garments: shop.garments.map((garment) => ({ ...garment, arrivesInDays: 0 })),
  stations: shop.stations.filter(({ id, kind }) => kind !== 'person' || id === 'person-1'),
})

const talkOf = async (desk: WorkerDesk, id: string) =>
  conversationFrom((await desk.store.shop(desk.shopId).conversations.read(id))?.state)

const toAsked = async (desk: WorkerDesk, id: string): Promise<void> => {
  const state = startConversation({ id, person: { id, name: null }, language: 'en' })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
  await says(desk, id, wishes)
  if ((await talkOf(desk, id)).asked?.code === 'ask-ages') await says(desk, id, 'all are 13 or older')
}

const toProof = async (desk: WorkerDesk, id: string): Promise<void> => {
  await toAsked(desk, id)
  await work(desk)
}

/** What the conversation shows, message by message. */
const told = async (desk: WorkerDesk, id: string | null | undefined): Promise<readonly string[]> =>
  (await desk.store.shop(desk.shopId).messages.after(conversationChannel(id ?? ''), 0)).map(({ body }) =>
    messageFrom(body)
      .blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : []))
      .join(' '),
  )

/** A process of its own that opens the same store, says it is ready, and signs at the given moment. */
const signer = (
  desk: WorkerDesk,
  at: { readonly id: string; readonly action: string; readonly minute: number; readonly gate: string },
) =>
  runChild(`
const { existsSync } = await import('node:fs')
const { openStore } = await import(built + '/src/adapters/store/sql/open-store.js')
const { openWorkshop } = await import(built + '/src/wiring/open-workshop.js')
const { machineIds } = await import(built + '/src/adapters/machine/machine.js')
const { hearCustomer } = await import(built + '/src/desk/service/talk/hear-customer.js')
const { zoneOf } = await import(built + '/src/domain/calendar/zone.js')
const at = ${JSON.stringify(at)}
const opened = await openStore({ address: ${JSON.stringify(opened.embedded.service)}, time: Date.now })
const workshop = (await openWorkshop(${JSON.stringify(process.cwd())}, undefined)).value
const { shop } = workshop
const crowded = {
  ...shop,
  rates: { ...shop.rates, inspectAndBagEach: 100 },
  garments: shop.garments.map((garment) => ({ ...garment, arrivesInDays: 0 })),
  stations: shop.stations.filter(({ id, kind }) => kind !== 'person' || id === 'person-1'),
}
const desk = {
  shopId: ${JSON.stringify(desk.shopId)},
  zone: zoneOf(shop.profile.zone).value,
  store: opened.value,
  workshop: { ...workshop, shop: crowded },
  clock: { now: () => at.minute, milliseconds: () => at.minute * 60_000, real: () => at.minute },
  ids: machineIds,
}
console.log('ready')
while (!existsSync(at.gate)) await new Promise((resolve) => setTimeout(resolve, 2))
const incoming = { kind: 'pressed', id: 'sign-' + at.id, action: at.action }
const heard = await hearCustomer(desk, at.id, { incoming, files: [] })
console.log(heard.ok ? 'heard' : JSON.stringify(heard.problems))
await opened.value.close()
`)

test('of two customers who sign for the last place in two processes one gets it, the other a later date and a question', {
  timeout: 180_000,
}, async () => {
  const time: TestClock = { at: localMinute('2026-11-30T08:00') }
  const desk = await openTestDesk(opened.store, time, crowded)
  await toProof(desk, 'c-first')
  time.at = localMinute('2026-12-02T08:00')
  await lapseHolds(desk)
  await toProof(desk, 'c-second')
  time.at = localMinute('2026-12-04T07:00')
  await lapseHolds(desk)
  time.at = localMinute('2026-12-02T08:00')
  const folder = temporaryFolder()
  const gate = join(folder.path, 'gate')
  const signers = await Promise.all(
    ['c-first', 'c-second'].map(async (id) => {
      const { shown } = await talkOf(desk, id)
      const action = `c:sign-off:${shown?.revision ?? 0}:${shown?.hash ?? ''}`
      return signer(desk, { id, action, minute: time.at, gate })
    }),
  )
  await Promise.all(signers.map((one) => one.says('ready')))
  writeFileSync(gate, '')
  await Promise.all(signers.map((one) => one.says('heard')))
  folder.remove()
  await work(desk)
  const shop = desk.store.shop(desk.shopId)
  const orders = await Promise.all(['c-first', 'c-second'].map((id) => shop.orders.read(orderIdOf(id))))
  const [sold] = orders.filter((order) => order?.state === 'on-bench')
  const [asked] = orders.filter((order) => order?.state === 'quoted')
  expect([sold?.revision, asked?.revision]).toEqual([1, 2])
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const promisedTo = (id: string | undefined) => [...plan.sold, ...plan.held].find((one) => one.id === id)?.promised ?? 0
  expect(promisedTo(asked?.orderId)).toBeGreaterThan(promisedTo(sold?.orderId))
  const { shown, signed } = await talkOf(desk, asked?.conversationId ?? '')
  expect([shown?.revision, signed]).toEqual([2, null])
  const thanks = expect.stringContaining('is signed and goes to the bench')
  expect(await told(desk, sold?.conversationId)).toContainEqual(thanks)
  const heard = await told(desk, asked?.conversationId)
  expect(heard).not.toContainEqual(thanks)
  const lost = heard.findIndex((text) => text.startsWith('That time was taken while you decided.'))
  const proof = heard.findIndex((text) => text.includes('That is later than you need it. The soonest is Thursday, December 3'))
  expect([lost > 0, proof > lost, heard[proof]?.includes('Does that still help you?')]).toEqual([true, true, true])
})

const quoteAll = (desk: WorkerDesk, ids: readonly string[]): Promise<unknown> =>
  Promise.all(
    ids.map((id) => quoteOrder(desk, { step: 'quote', shopId: desk.shopId, orderId: orderIdOf(id), revision: 1, attempt: 1 })),
  )

test('two proofs worked out at the same moment do not both hold the last place', { timeout: 120_000 }, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-12-02T08:00') }, crowded)
  const ids = ['c-left', 'c-right']
  for (const id of ids) await toAsked(desk, id)
  await quoteAll(desk, ids)
  const { held } = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
  const hours = held.map(({ promised }) => promised ?? 0).toSorted()
  expect(hours[0]).toBe(localMinute('2026-12-02T17:00'))
  expect(hours[1]).toBeGreaterThan(localMinute('2026-12-02T17:00'))
  for (const id of ids) {
    const { shown } = await talkOf(desk, id)
    await presses(desk, id, `c:sign-off:${shown?.revision ?? 0}:${shown?.hash ?? ''}`)
  }
  const { sold } = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
  expect(sold.map(({ promised }) => promised ?? 0).toSorted()).toEqual(hours)
  await work(desk)
  const plan = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
  expect(brokenPromises(bookOf(desk, plan, desk.clock.now()), plan.slots)).toEqual([])
})

test('a hold is no promise that work sold meanwhile can be pushed aside for', { timeout: 120_000 }, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-12-02T08:00') }, crowded)
  await toAsked(desk, 'c-held')
  await quoteAll(desk, ['c-held'])
  const shop = desk.store.shop(desk.shopId)
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const rival = plan.held.map((held) => ({ ...held, id: 'o-rival' }))
  expect((await shop.plan.write(read.version, { ...plan, sold: [...plan.sold, ...rival] })).ok).toBe(true)
  const { shown } = await talkOf(desk, 'c-held')
  await presses(desk, 'c-held', `c:sign-off:${shown?.revision ?? 0}:${shown?.hash ?? ''}`)
  const after = shopPlanFrom((await shop.plan.read()).body)
  expect(after.sold.map(({ id }) => id)).toEqual(['o-rival'])
  expect((await talkOf(desk, 'c-held')).signed).toBeNull()
})
