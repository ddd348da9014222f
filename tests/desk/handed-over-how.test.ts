import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel } from '../../src/desk/service/desk.ts'
import { tellDayBefore } from '../../src/desk/service/morning/tell-day-before.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { localMinute, openTestDesk, type TestClock } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, makeAll, openGates, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words = (how: string): string =>
  `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Handed Hawks, sport is soccer. We need them December 10 at 5 pm. ${how} My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

test.each([
  ['collect', 'I pick them up.', 'bagged and ready to be collected', 'bagged and waits for you'],
  [
    'field',
    'Please bring them to the field.',
    'bagged; we bring it to the field',
    'bring it to the field as promised for tomorrow',
  ],
  ['post', 'Please mail them to us.', 'bagged and goes into the mail', 'goes into the mail, as promised for tomorrow'],
])(
  'who has it handed over so is told so when it is bagged and the day before: %s',
  { timeout: 60_000 },
  async (way, how, ready, before) => {
    const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
    const desk = await openTestDesk(opened.store, clock)
    const id = `c-${way}`
    await toProof(desk, id, words(how))
    await sign(desk, id)
    const ticket = await ticketOf(desk, id)
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket)
    await makeAll(desk, ticket)
    for (const act of ['checked', 'bagged']) expect(await acts(desk, ticket, { act })).toBeNull()
    clock.at = localMinute('2026-12-09T10:00')
    await tellDayBefore(desk)
    const said = await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0)
    const texts = said.flatMap(({ body }) => messageFrom(body).blocks.flatMap((block) => ('text' in block ? [block.text] : [])))
    expect(texts.slice(-2)).toEqual([expect.stringContaining(ready), expect.stringContaining(before)])
  },
)
