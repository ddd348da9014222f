import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { localMinute, openTestDesk, says, type TestClock, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { messagesOf, signShown, talkOf, talkToProof, wordsIn } from '../support/talks.ts'

let opened: TestStore
const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes =
  '3 practice tees, navy, 100% cotton, white vinyl numbers on the back with one row of ss10 crystal stones around. Team is the Lantern Hill Lynx, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'

const last = async (desk: Parameters<typeof messagesOf>[0], id: string) => (await messagesOf(desk, id)).at(-1)

describe('after the proof', () => {
  test('the price comes with its parts, and they add up', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    await talkToProof(desk, 'c-parts', wishes)
    const proof = (await messagesOf(desk, 'c-parts')).find((message) => message.picture !== null)
    const sums = (proof?.blocks ?? []).flatMap((block) => (block.kind === 'fields' ? [block.fields] : [])).at(-1) ?? []
    const cents = sums.map(({ value }) => Math.round(Number(value.replace(/[^0-9.-]/g, '')) * 100))
    expect(sums.length).toBeGreaterThan(3)
    expect(cents.slice(0, -1).reduce((sum, one) => sum + one, 0)).toBe(cents.at(-1))
  })

  test('another make is priced beside the present one, and nothing changes until it is chosen', {
    timeout: 120_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    await talkToProof(desk, 'c-variant', wishes)
    const before = await talkOf(desk, 'c-variant')
    for (const round of [1, 2]) {
      await says(desk, 'c-variant', 'how much without the stones?')
      await work(desk, 2)
      const told = await last(desk, 'c-variant')
      const [other = 0, present = 0] = [...wordsIn(told).matchAll(/\$(\d+\.\d\d)/g)].map((match) => Number(match[1]))
      expect(other).toBeLessThan(present)
      expect(Math.round(present * 100)).toBe(before.priced)
      expect(told?.choice?.options.map(({ value }) => value)).toEqual(['take-variant', 'keep-order'])
      const after = await talkOf(desk, 'c-variant')
      expect([after.draft, after.shown]).toEqual([before.draft, before.shown])
      expect(after.variant?.number).toBe(round)
    }
    await says(desk, 'c-variant', 'yes')
    await work(desk)
    const chosen = await talkOf(desk, 'c-variant')
    expect(chosen.shown?.revision).toBe(2)
    expect(chosen.priced).toBeLessThan(before.priced ?? 0)
  })

  test('a late change costs nothing before the cut, a piece after it, a garment after the press', {
    timeout: 180_000,
  }, async () => {
    const desk = await openTestDesk(opened.store, clock)
    const { orders } = desk.store.shop(desk.shopId)
    await talkToProof(desk, 'c-late', wishes)
    await signShown(desk, 'c-late')
    await work(desk)
    await orders.setRows(orderIdOf('c-late'), [
      { line: 1, state: 'not-cut' },
      { line: 2, state: 'cut' },
      { line: 3, state: 'pressed' },
    ])
    const signed = (await talkOf(desk, 'c-late')).priced ?? 0
    const proofAfter = async (words: string) => {
      await says(desk, 'c-late', words)
      await work(desk)
      const messages = await messagesOf(desk, 'c-late')
      return wordsIn(messages.findLast((message) => message.picture !== null))
    }
    expect(await proofAfter('change the 4 to 14')).not.toMatch(/already|Made again/)
    const cut = await proofAfter('change the 7 to 17')
    expect(cut).toMatch(/Bea is already cut: a new piece of vinyl adds \$/)
    expect(cut).toMatch(/Made again after a late change: \$/)
    const pressed = await proofAfter('change the 9 to 19')
    expect(pressed).toMatch(/Cid is already pressed: a new garment adds \$/)
    const { shown, signed: stillSigned, priced } = await talkOf(desk, 'c-late')
    expect([shown?.revision, stillSigned?.revision]).toEqual([4, 1])
    expect(priced).toBeGreaterThan(signed)
    expect(unwrap({ ok: true, value: await orders.read(orderIdOf('c-late')) })?.revision).toBe(4)
  })
})
