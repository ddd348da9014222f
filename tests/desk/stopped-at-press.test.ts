import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { openTickets } from '../../src/desk/service/floor/open-tickets.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import { morningSheet } from '../../src/desk/service/morning/morning-sheet.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { openActs } from '../../src/desk/service/records/ticket-life.ts'
import { localMinute, openTestDesk, says, work } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, makeAll, openGates, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const mesh =
  '3 navy mesh polyester jerseys, white vinyl numbers on the back. Team is the Halted Herons, sport is soccer. We need them December 18 at 5 pm. My name is Imke Dahl, Jo Brandt picks up. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'
const tees = mesh.replace('navy mesh polyester jerseys', 'practice tees, navy, 100% cotton')

const onBench = async (id: string, words: string): Promise<{ readonly desk: WorkerDesk; readonly ticket: string }> => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  await toProof(desk, id, words)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  await acts(desk, ticket, { act: 'take' })
  return { desk, ticket }
}

const onBenchMessage = async (desk: WorkerDesk): Promise<string> =>
  (await desk.store.shop(desk.shopId).messages.after(shopChannel('bench'), 0))
    .slice(-1)
    .flatMap(({ body }) => messageFrom(body).blocks)
    .flatMap((block) => ('text' in block ? [block.text] : []))
    .join('\n')

const linesOf = async (desk: WorkerDesk, section: string): Promise<string> =>
  (await morningSheet(desk, 'en')).sections
    .filter(({ code }) => code === section)
    .flatMap(({ lines }) => lines.map(({ text, todo }) => `${text} → ${todo}`))
    .join('\n')

describe('a test that failed', () => {
  test('stops cutting as well as pressing, stands on top at the press, and is no line of the press list', {
    timeout: 60_000,
  }, async () => {
    const { desk, ticket } = await onBench('c-halted', mesh)
    await openGates(desk, ticket, ['test-press', 'bleed-test', 'first-piece'])
    expect(await linesOf(desk, 'press-list')).toContain('Halted Herons')
    expect(openActs(await lifeNow(desk, ticket))).toContain('start')
    const garment = (await lifeNow(desk, ticket)).gates.find(({ gate }) => gate.code === 'test-press')?.gate.garment ?? ''
    const find = (result: string) => acts(desk, ticket, { act: 'test-press', values: { garment, result } })
    expect(await find('failed')).toBeNull()
    const cut = (await lifeNow(desk, ticket)).steps.find(({ kind }) => kind === 'cut')?.no
    const tick = () => acts(desk, ticket, { act: 'tick', values: { step: String(cut), deed: 'done', lines: '1' } })
    expect(await tick()).toBe('First: test press.')
    expect(openActs(await lifeNow(desk, ticket))).not.toContain('start')
    expect((await pressView(desk, ticket))?.warnings[0]).toBe(
      'STOPPED (test press): nothing is cut or pressed before the owner decides.',
    )
    expect((await openTickets(desk, desk.store.shop(desk.shopId)))[0]?.waits).toContain('test press: FAILED')
    expect(await onBenchMessage(desk)).toContain('STOPPED (test press): nothing is cut or pressed before the owner decides.')
    expect(await linesOf(desk, 'press-list')).toBe('')
    expect(await linesOf(desk, 'waiting')).toMatch(
      /Halted Herons: stopped at the bench \(test press\) → decide it, then call the customer/,
    )
    expect(await find('held')).toBeNull()
    expect(await tick()).toBeNull()
    expect((await pressView(desk, ticket))?.warnings.join()).not.toContain('STOPPED')
    expect(await linesOf(desk, 'press-list')).toContain('Halted Herons')
  })
})

describe('a step that waits for something to be found out', () => {
  test('says so where it is done, and no more once that was found', { timeout: 60_000 }, async () => {
    const { desk, ticket } = await onBench('c-waits', mesh)
    const cautionOf = async (title: RegExp) =>
      (await pressView(desk, ticket))?.steps.find((step) => title.test(step.title))?.cautions[0]
    expect(await cautionOf(/^Cut/)).toBe('First: count-in.')
    expect(await cautionOf(/PRESS, back/)).toBe('First: count-in, test press, bleed test.')
    expect(await cautionOf(/^Weed/)).toBeUndefined()
    await openGates(desk, ticket, ['test-press', 'bleed-test', 'first-piece'])
    expect(await cautionOf(/^Cut/)).toBeUndefined()
    expect(await cautionOf(/PRESS, back/)).toBe('First: test press, bleed test.')
    await openGates(desk, ticket, ['first-piece'])
    expect(await cautionOf(/PRESS, back/)).not.toContain('First:')
  })
})

describe('a paper that nobody works from any more', () => {
  test('leads to a page that says which ticket replaced it, and offers no step', { timeout: 60_000 }, async () => {
    const { desk, ticket } = await onBench('c-old', tees)
    expect((await pressView(desk, ticket))?.steps.length).toBeGreaterThan(5)
    await says(desk, 'c-old', 'change number 9 to 10')
    await work(desk)
    await sign(desk, 'c-old')
    const view = await pressView(desk, ticket)
    expect(view?.warnings).toEqual(['Replaced by T0002 r2. Do not cut or press from this ticket; throw its paper away.'])
    expect([view?.steps, view?.acts, view?.forms, view?.tick]).toEqual([[], [], [], null])
  })

  test('says so of an order that was cancelled, and of drops that stand', { timeout: 60_000 }, async () => {
    const { desk, ticket } = await onBench('c-off', tees)
    await says(desk, 'c-off', 'please cancel the order')
    await says(desk, 'c-off', 'yes')
    await work(desk)
    expect((await pressView(desk, ticket))?.warnings).toEqual(['This order was cancelled. Do not cut or press from this ticket.'])
    const coated = await onBench('c-drops', tees.replace('100% cotton', '100% nylon woven'))
    await openGates(coated.desk, coated.ticket, ['water-drops', 'test-press'])
    const gate = (await lifeNow(coated.desk, coated.ticket)).gates.find((one) => one.gate.code === 'water-drops')?.gate
    await acts(coated.desk, coated.ticket, {
      act: 'water-drops',
      values: { garment: gate?.garment ?? '', drops: '60 60 60 60 60' },
    })
    expect((await pressView(coated.desk, coated.ticket))?.warnings).toEqual([
      'This ticket is closed. Do not cut or press from it; its customer is asked.',
    ])
  })

  test('a bagged one names who may collect and speaks of no press', { timeout: 60_000 }, async () => {
    const { desk, ticket } = await onBench('c-hand', tees)
    expect((await pressView(desk, ticket))?.warnings).toEqual(['press 1 was not probed today'])
    expect(await onBenchMessage(desk)).toContain('press 1 was not probed today')
    await openGates(desk, ticket)
    await makeAll(desk, ticket)
    for (const act of ['checked', 'bagged']) expect(await acts(desk, ticket, { act })).toBeNull()
    expect((await pressView(desk, ticket))?.warnings).toEqual(['Hand over to Jo Brandt'])
    expect(await onBenchMessage(desk)).not.toContain('was not probed')
  })
})
