import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, makeAll, openGates, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
let desk: WorkerDesk
beforeAll(async () => {
  opened = await openTestStore()
  desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
}, 60_000)
afterAll(() => opened.close())

const words = (team: string, own = ''): string =>
  `3 practice tees${own}, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 18 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

const textsIn = async (channel: string): Promise<readonly string[]> =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0))
    .flatMap(({ body }) => messageFrom(body).blocks)
    .flatMap((block) => ('text' in block ? [block.text] : []))

const onBench = async (id: string, said: string, until: readonly string[]): Promise<string> => {
  await toProof(desk, id, said)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  await acts(desk, ticket, { act: 'take' })
  await openGates(desk, ticket)
  await makeAll(desk, ticket)
  for (const act of until) expect(await acts(desk, ticket, { act })).toBeNull()
  return ticket
}

const spoils = (ticket: string, line: string): Promise<string | null> =>
  acts(desk, ticket, { act: 'spoiled', values: { line, quantity: '1', reason: 'scorched', whose: 'shop' } })

const remakes = async (ticket: string): Promise<void> => {
  const order = (await desk.store.shop(desk.shopId).tickets.read(ticket))?.orderId ?? ''
  const open = (await desk.store.shop(desk.shopId).floor.remakesOf(order)).find(({ doneAt }) => doneAt === null)
  expect(await acts(desk, ticket, { act: 'remade', values: { remake: open?.remakeId ?? '' } })).toBeNull()
}

const wait =
  'Please wait before you come: one piece of your order has to be made again. I will say as soon as all of it is bagged.'
const ready = 'Your order is bagged and ready to be collected.'

describe('a garment that is spoiled', () => {
  test('after its customer heard that all is bagged lets them wait, and hear when all is bagged again', {
    timeout: 60_000,
  }, async () => {
    const ticket = await onBench('c-late', words('Late Larks'), ['checked', 'bagged'])
    const told = async () => (await textsIn(conversationChannel('c-late'))).filter((text) => text === wait || text === ready)
    expect(await told()).toEqual([ready])
    expect(await spoils(ticket, '1')).toBeNull()
    expect(await spoils(ticket, '2')).toBeNull()
    expect(await told()).toEqual([ready, wait])
    await remakes(ticket)
    expect(await told()).toEqual([ready, wait])
    await remakes(ticket)
    expect(await told()).toEqual([ready, wait, ready])
  })

  test('before that is the shop’s own affair', { timeout: 60_000 }, async () => {
    const ticket = await onBench('c-early', words('Early Egrets'), [])
    expect(await spoils(ticket, '1')).toBeNull()
    await remakes(ticket)
    expect(await textsIn(conversationChannel('c-early'))).not.toContain(wait)
    expect((await textsIn(shopChannel('owner'))).at(-1)).toMatch(/#4 Abel M, scorched\. It is made again; worth /)
  })

  test('and was brought by its customer is not said to be made again as if the shop had another', {
    timeout: 60_000,
  }, async () => {
    const ticket = await onBench('c-own', words('Own Owls', ' that we bring ourselves'), [])
    expect(await spoils(ticket, '1')).toBeNull()
    expect((await textsIn(shopChannel('owner'))).at(-1)).toMatch(
      /#4 Abel M, scorched\. The garment is the customer’s own, and the shop has no other: call them/,
    )
  })
})
