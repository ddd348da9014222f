import { afterAll, beforeAll, expect, test } from 'vitest'
import { shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, orderFrom } from '../../src/desk/service/records/records.ts'
import { hearCustomer } from '../../src/desk/service/talk/hear-customer.ts'
import { localMinute, openTestDesk, presses, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { openTalk, signShown, talkOf, talkToProof, wordsIn } from '../support/talks.ts'

let opened: TestStore
const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes =
  '2 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L'

/** Another process of the same shop on the same store, with nothing in its memory. */
const restarted = async (desk: WorkerDesk): Promise<WorkerDesk> => ({
  ...(await openTestDesk(opened.store, clock)),
  shopId: desk.shopId,
})

const signedOrder = async (desk: WorkerDesk, id: string) => {
  const revisions = await desk.store.shop(desk.shopId).orders.revisions(orderIdOf(id))
  return revisions.filter((one) => one.signed !== null)
}

test('two devices at once and a restart between: all is kept, and an old proof signs nothing', { timeout: 120_000 }, async () => {
  const desk = await openTestDesk(opened.store, clock)
  await talkToProof(desk, 'c-two', wishes)
  const old = (await talkOf(desk, 'c-two')).shown
  await Promise.all([says(desk, 'c-two', 'make the 4 an XL'), says(desk, 'c-two', 'make the 7 a small')])
  const again = await restarted(desk)
  await presses(again, 'c-two', `c:sign-off:${old?.revision}:${old?.hash}`)
  expect(await signedOrder(again, 'c-two')).toEqual([])
  await work(again)
  const twice = { incoming: { kind: 'said', id: 'same-delivery', text: 'add Cid 9 adult S', files: [] }, files: [] } as const
  for (const at of [desk, again, desk]) unwrap(await hearCustomer(at, 'c-two', twice))
  await work(again)
  await signShown(again, 'c-two')
  const [signed, ...others] = await signedOrder(desk, 'c-two')
  expect(others).toEqual([])
  expect(orderFrom(signed?.document).roster.map(({ number, name, size }) => [number, name, size])).toEqual([
    ['4', 'Abel', 'XL'],
    ['7', 'Bea', 'S'],
    ['9', 'Cid', 'S'],
  ])
})

test('who asks for a lost jersey again is told that a person looks it up, and the owner gets the order it was on', {
  timeout: 120_000,
}, async () => {
  const desk = await openTestDesk(opened.store, clock)
  await talkToProof(desk, 'c-first', wishes)
  await signShown(desk, 'c-first')
  await openTalk(desk, 'c-lost')
  await says(desk, 'c-lost', "We lost number 7's jersey, can you make another? Team is the Lantern Hill Lynx")
  const notes = await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0)
  const told = notes.map(({ body }) => wordsIn(messageFrom(body))).find((words) => words.includes("number 7's jersey"))
  expect(told).toContain(`${orderIdOf('c-first')} revision 1`)
  await openTalk(desk, 'c-unknown')
  await says(desk, 'c-unknown', 'same as last year, team is the Nobody Knows')
  const all = (await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0)).map(({ body }) =>
    wordsIn(messageFrom(body)),
  )
  expect(all.find((words) => words.includes('Nobody Knows'))).toContain('No signed order of this team')
})
