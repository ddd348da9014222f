import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import type { Language } from '../../src/domain/units/language.ts'
import { minutes } from '../../src/domain/units/units.ts'
import type { Member } from '../../src/ports/counter-desk.ts'
import { localMinute, openTestDesk, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { acts, lifeNow, noor, openGates, rosa, sign, talkOf, ticketOf } from '../support/floor.ts'

let opened: TestStore
let desk: WorkerDesk
const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
beforeAll(async () => {
  opened = await openTestStore()
  desk = await openTestDesk(opened.store, clock)
}, 60_000)
afterAll(() => opened.close())

const ending = 'Team is the Told Terns, sport is soccer. We need them December 18 at 5 pm. My name is Imke Dahl.'
const grown = `${ending} Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L`
const mesh = `2 navy mesh polyester jerseys, white vinyl numbers on the back. ${grown}`
const hoods = `2 black hoodies, 100% cotton, white vinyl numbers on the back. ${ending} Both are 8 years old.\n4 Abel, youth M\n7 Bea, youth L`
const espanol =
  '2 jerseys de malla azul marino de poliéster, números blancos de vinilo en la espalda. Equipo Halcones, futbol. Para el 18 de diciembre a las 5 de la tarde. Soy Carmen Ríos. Todos son mayores de 13.\n4 Abel M\n7 Bea G'

const ticketFor = async (id: string, words: string, language: Language = 'en'): Promise<string> => {
  const state = startConversation({ id, person: { id, name: null }, language })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
  await says(desk, id, words)
  if ((await talkOf(desk, id)).asked?.code === 'ask-ages') await says(desk, id, 'both are 8')
  await work(desk)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  await acts(desk, ticket, { act: 'take' })
  await openGates(desk, ticket, ['test-press', 'bleed-test', 'strings', 'first-piece', 'second-look'])
  return ticket
}

/** What the customer hears of it, since the bench began. */
const heard = async (id: string): Promise<readonly string[]> => {
  const said = await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0)
  const texts = said.flatMap(({ body }) => messageFrom(body).blocks.flatMap((block) => ('text' in block ? [block.text] : [])))
  return texts.filter((text) => /stopped|press nothing|prensamos nada|detuvo/.test(text))
}

type Finding = { readonly act: string; readonly result: string; readonly by?: Member }
const find = async (ticket: string, { act, result, by = noor }: Finding): Promise<string | null> => {
  const gate = (await lifeNow(desk, ticket)).gates.find((one) => one.gate.code === act)?.gate
  return acts(desk, ticket, { act, by, values: { garment: gate?.garment ?? '', result } })
}

describe('a customer whose order a test stops', () => {
  type Case = {
    readonly id: string
    readonly words: string
    readonly language: Language
    readonly act: string
    readonly stop: RegExp
    readonly on: RegExp
  }
  const cases: readonly Case[] = [
    {
      id: 'c-failed',
      words: mesh,
      language: 'en',
      act: 'test-press',
      stop: /^Before the run we pressed a test for your order \(navy mesh jersey\): it did not hold/,
      on: /\(navy mesh jersey\) is settled/,
    },
    {
      id: 'c-failed-es',
      words: espanol,
      language: 'es',
      act: 'test-press',
      stop: /^Antes de empezar prensamos una prueba para su pedido \(.*marino\): no agarró/,
      on: /marino\) está resuelto/,
    },
    {
      id: 'c-strings',
      words: hoods,
      language: 'en',
      act: 'strings',
      stop: /^Your order \(black .*hoodie\) has strings at hood or neck/,
      on: /hoodie\) is settled/,
    },
  ]
  const results: { readonly [act: string]: readonly [bad: string, good: string] } = {
    'test-press': ['failed', 'held'],
    strings: ['strings', 'no-strings'],
  }
  test.each(cases)(
    'hears it when it is written down, once, and again when the work goes on: $id',
    { timeout: 60_000 },
    async (one) => {
      const { id, act, stop, on } = one
      const ticket = await ticketFor(id, one.words, one.language)
      const by = act === 'strings' ? rosa : noor
      const [bad, good] = results[act] ?? ['', '']
      expect(await heard(id)).toEqual([])
      expect(await find(ticket, { act, result: bad, by })).toBeNull()
      expect(await heard(id)).toEqual([expect.stringMatching(stop)])
      expect(await find(ticket, { act, result: bad, by })).toBeNull()
      expect(await heard(id)).toHaveLength(1)
      expect(await find(ticket, { act, result: good, by })).toBeNull()
      expect(await heard(id)).toEqual([expect.stringMatching(stop), expect.stringMatching(on)])
    },
  )

  test('hears of dye that came through; only another piece that waited lets the work go on', { timeout: 60_000 }, async () => {
    const ticket = await ticketFor('c-bled', mesh)
    expect(await find(ticket, { act: 'test-press', result: 'held' })).toBeNull()
    expect(await heard('c-bled')).toEqual([])
    expect(await find(ticket, { act: 'bleed-test', result: 'pressed' })).toBeNull()
    clock.at = minutes(clock.at + 1_440)
    expect(await find(ticket, { act: 'bleed-test', result: 'bled' })).toBeNull()
    expect(await heard('c-bled')).toEqual([expect.stringMatching(/\(navy mesh jersey\): the cloth’s dye came through/)])
    const skip = { garment: 'jersey', result: 'skipped', signedBy: 'Coach' }
    const gate = (await lifeNow(desk, ticket)).gates.find((one) => one.gate.code === 'bleed-test')?.gate
    expect(await acts(desk, ticket, { act: 'bleed-test', values: { ...skip, garment: gate?.garment ?? '' } })).toContain(
      'came through',
    )
    expect(await find(ticket, { act: 'bleed-test', result: 'clean' })).toContain('came through')
    expect(await find(ticket, { act: 'bleed-test', result: 'pressed' })).toBeNull()
    clock.at = minutes(clock.at + 60)
    expect(await find(ticket, { act: 'bleed-test', result: 'clean' })).toContain('look again')
    clock.at = minutes(clock.at + 1_440)
    expect(await find(ticket, { act: 'bleed-test', result: 'clean' })).toBeNull()
    expect(await heard('c-bled')).toEqual([expect.stringContaining('came through'), expect.stringContaining('is settled')])
  })

  test('hears nothing of a test that held, of stock or of a count', { timeout: 60_000 }, async () => {
    const ticket = await ticketFor('c-held', mesh)
    expect(await find(ticket, { act: 'test-press', result: 'held' })).toBeNull()
    expect(await acts(desk, ticket, { act: 'short', values: { subject: 'white vinyl' } })).toBeNull()
    expect(await heard('c-held')).toEqual([])
    const owner = (await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0)).length
    expect(owner).toBeGreaterThan(0)
  })
})
