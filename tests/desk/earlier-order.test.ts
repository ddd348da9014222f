import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { startTalk } from '../../src/desk/service/talk/start-talk.ts'
import { localMinute, openTestDesk, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { messagesOf, signShown, talkOf, talkToProof } from '../support/talks.ts'

let opened: TestStore
const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes =
  '4 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S\n12 Dot, adult M'

const owner = { id: 'owner', name: 'Owner', role: 'owner' } as const
const staff = { id: 'm1', name: 'Staff', role: 'staff' } as const

const signedOrder = async (desk: WorkerDesk, id: string) => {
  await talkToProof(desk, id, wishes)
  await signShown(desk, id)
  await work(desk)
}

const newTalk = (desk: WorkerDesk, id: string, language: 'en' | 'es' = 'en') =>
  startTalk(desk, desk.store.shop(desk.shopId), { id, language })

const heard = async (desk: WorkerDesk, id: string): Promise<string> =>
  JSON.stringify((await messagesOf(desk, id)).map(({ blocks }) => blocks))

const numbersOf = async (desk: WorkerDesk, id: string) =>
  Object.values((await talkOf(desk, id)).draft.rows).map(({ number, size }) => `${number} ${size}`)

const ownersButtons = async (desk: WorkerDesk): Promise<readonly string[]> => {
  const stored = await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0)
  return stored.flatMap(({ body }) => messageFrom(body).actions.map(({ id }) => id)).filter((id) => id.includes(':release-'))
}

/** The address of a conversation's page, as its customer has it. */
const pageOf = async (desk: WorkerDesk, id: string): Promise<string> => {
  const token = desk.ids.secret()
  const shop = desk.store.shop(desk.shopId)
  await shop.keys.add({ hash: desk.ids.hash(token), kind: 'customer', holder: id, until: null })
  return `https://counter.example/c/${token}`
}

describe('an earlier order', { timeout: 180_000 }, () => {
  test('is not shown to who only knows the team, until the owner hands it over', async () => {
    const desk = await openTestDesk(opened.store, clock)
    await signedOrder(desk, 'c-first')
    await newTalk(desk, 'c-other')
    await says(desk, 'c-other', 'Lantern Hill Lynx, same as last year without the seniors')
    expect(await heard(desk, 'c-other')).not.toMatch(/Abel|Bea|Cid|Dot/)
    expect((await talkOf(desk, 'c-other')).draft.from).toBeUndefined()
    const [button = ''] = await ownersButtons(desk)
    await pressAction(desk, staff, { action: button })
    expect((await talkOf(desk, 'c-other')).draft.from).toBeUndefined()
    await pressAction(desk, owner, { action: button })
    await pressAction(desk, owner, { action: button })
    expect((await talkOf(desk, 'c-other')).draft.from).toEqual({ order: orderIdOf('c-first'), revision: 1 })
    expect(await heard(desk, 'c-other')).toMatch(/seniors/)
    expect(await heard(desk, 'c-other')).toMatch(/size as last time/)
  })

  test('comes to whoever pastes its address; seniors leave, sizes and newcomers are said, and it is signed with where it is from', async () => {
    const desk = await openTestDesk(opened.store, clock)
    await signedOrder(desk, 'c-mine')
    await newTalk(desk, 'c-again')
    await says(desk, 'c-again', `same as last season without the seniors ${await pageOf(desk, 'c-mine')}`)
    expect(await numbersOf(desk, 'c-again')).toEqual(['4 M', '7 L', '9 S', '12 M'])
    await says(desk, 'c-again', '4 and Cid')
    expect(await numbersOf(desk, 'c-again')).toEqual(['7 L', '12 M'])
    await says(desk, 'c-again', 'Bea is an adult XL now')
    await says(desk, 'c-again', 'add Ida 18 adult S')
    expect(await numbersOf(desk, 'c-again')).toEqual(['7 XL', '12 M', '18 S'])
    const before = await talkOf(desk, 'c-again')
    expect([before.draft.day, before.draft.ages, before.draft.orders]).toEqual([undefined, undefined, undefined])
    await says(desk, 'c-again', 'December 18 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.')
    await work(desk)
    await signShown(desk, 'c-again')
    const revisions = await desk.store.shop(desk.shopId).orders.revisions(orderIdOf('c-again'))
    expect(revisions.at(-1)?.document).toMatchObject({ from: { order: orderIdOf('c-mine'), revision: 1 } })
  })

  test('gives back one lost piece alone, in Spanish too', async () => {
    const desk = await openTestDesk(opened.store, clock)
    await signedOrder(desk, 'c-lost')
    await newTalk(desk, 'c-piece', 'es')
    await says(desk, 'c-piece', `Mi hija perdió su playera, la 7 de Bea. Queremos otra igual. ${await pageOf(desk, 'c-lost')}`)
    expect(await numbersOf(desk, 'c-piece')).toEqual(['7 L'])
    expect(await heard(desk, 'c-piece')).toMatch(/para una pieza/)
  })

  test('is not mixed into the talk of a signed order', async () => {
    const desk = await openTestDesk(opened.store, clock)
    await signedOrder(desk, 'c-signed')
    const before = await talkOf(desk, 'c-signed')
    await says(desk, 'c-signed', 'Bea lost her jersey, can we get just that one again')
    expect((await talkOf(desk, 'c-signed')).draft).toEqual(before.draft)
    expect(await heard(desk, 'c-signed')).toMatch(/start a new order/)
  })
})
