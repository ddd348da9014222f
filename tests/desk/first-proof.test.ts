import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, orderFrom } from '../../src/desk/service/records/records.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { talkOf, toProof } from '../support/floor.ts'

let opened: TestStore
let desk: WorkerDesk
beforeAll(async () => {
  opened = await openTestStore()
  desk = await openTestDesk(opened.store, { at: localMinute('2026-11-30T09:00') })
}, 60_000)
afterAll(() => opened.close())

const ending = 'Everybody is 13 or older. We are the Mesa Hawks, soccer. December 17 at 5 pm. My name is Imke Dahl.'
const roster = '4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'

const textOf = async (id: string): Promise<string> =>
  (await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0))
    .map(({ body }) => messageFrom(body))
    .flatMap(({ blocks }) => blocks.flatMap((block) => ('text' in block ? [block.text] : [])))
    .join('\n')

const orders: readonly (readonly [string, string])[] = [
  ['numbers and names', `3 black cotton tees with white numbers on the back and names above them. ${ending}\n${roster}`],
  ['a front before a back', `3 black cotton tees with white numbers on the front and on the back. ${ending}\n${roster}`],
  [
    'home before away',
    `3 players, each a home jersey in white and an away jersey in navy, mesh polyester, red numbers front and back. ${ending}\n${roster}`,
  ],
  [
    'a text before a number',
    `3 black cotton tees, white text “HAWKS” on the front and white numbers on the back. ${ending}\n${roster}`,
  ],
]

test.each(orders)('an order told in one message is worked out once and shown once: %s', async (what, words) => {
  const id = `c-${what.replaceAll(' ', '-')}`
  await toProof(desk, id, words)
  expect((await talkOf(desk, id)).shown?.revision).toBe(1)
  const text = await textOf(id)
  expect(text).toContain('Revision 1: ')
  expect(text).not.toContain('has changed since')
})

test('what was said first stays first in what is read back and made', async () => {
  await toProof(desk, 'c-first', orders[2]?.[1] ?? '')
  const revision = await desk.store.shop(desk.shopId).orders.revision(orderIdOf('c-first'), 1)
  const { garments, roster: rows } = orderFrom(revision?.document)
  expect(garments.map(({ id }) => id)).toEqual(['home', 'away'])
  expect(rows.map(({ garment }) => garment)).toEqual(['home', 'home', 'home', 'away', 'away', 'away'])
})
