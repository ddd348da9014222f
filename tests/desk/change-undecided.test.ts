import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import { lapseHolds } from '../../src/desk/service/quote/lapse-holds.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import type { Language } from '../../src/domain/units/language.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { localMinute, openTestDesk, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { acts, sign, ticketOf } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const english =
  '3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Wavering Wrens, sport is soccer. We need them December 18 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'
const spanish =
  'Soy Carmen Ríos. 3 playeras negras de algodón con números blancos en la espalda. Equipo Halcones, futbol. Para el 18 de diciembre a las 5 de la tarde. Todos son mayores de 13.\n4 Abel M\n7 Bea G\n9 Cid CH'

const textsOf = async (desk: WorkerDesk, channel: string): Promise<string> =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0))
    .flatMap(({ body }) => messageFrom(body).blocks)
    .flatMap((block) => ('text' in block ? [block.text] : []))
    .join('\n')

const signed = async (clock: TestClock, id: string, language: Language) => {
  const desk = await openTestDesk(opened.store, clock)
  const state = startConversation({ id, person: { id, name: null }, language })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
  await says(desk, id, language === 'en' ? english : spanish)
  await work(desk)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  await acts(desk, ticket, { act: 'take' })
  return { desk, ticket }
}

const asks = 'The customer is deciding on a change (revision 2, not signed). Ask before you cut or press what may change.'

test.each<readonly [Language, string, string]>([
  ['en', 'change number 9 to 10', 'Until you sign it we make what you signed before, revision 1.'],
  ['es', 'cambia el número 9 por el 10', 'Hasta que lo firme hacemos lo que firmó antes, la revisión 1.'],
])(
  'a change that waits for its signature is known at the bench, and its customer hears that nothing of it counts yet: %s',
  {
    timeout: 60_000,
  },
  async (language, change, lapsed) => {
    const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
    const id = `c-wavers-${language}`
    const { desk, ticket } = await signed(clock, id, language)
    expect((await pressView(desk, ticket))?.warnings).not.toContain(asks)
    await says(desk, id, change)
    await work(desk)
    expect((await pressView(desk, ticket))?.warnings).toContain(asks)
    expect(await textsOf(desk, shopChannel('bench'))).toContain(asks)
    clock.at = minutes(clock.at + 25 * 60)
    await lapseHolds(desk)
    expect((await pressView(desk, ticket))?.warnings).not.toContain(asks)
    expect(await textsOf(desk, shopChannel('bench'))).not.toContain(asks)
    expect(await textsOf(desk, conversationChannel(id))).toContain(lapsed)
  },
)

test('a change that is signed leaves no such word behind', { timeout: 60_000 }, async () => {
  const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
  const { desk } = await signed(clock, 'c-decides', 'en')
  await says(desk, 'c-decides', 'change number 9 to 10')
  await work(desk)
  await sign(desk, 'c-decides')
  const ticket = await ticketOf(desk, 'c-decides')
  expect((await pressView(desk, ticket))?.title).toContain('r2')
  expect((await pressView(desk, ticket))?.warnings).not.toContain(asks)
  clock.at = minutes(clock.at + 25 * 60)
  await lapseHolds(desk)
  expect(await textsOf(desk, conversationChannel('c-decides'))).not.toContain('is not signed')
})
