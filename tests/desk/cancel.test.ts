import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, shopChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { messageFrom, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { cancelOrder } from '../../src/desk/service/talk/cancel-order.ts'
import { pilesOf } from '../../src/domain/stock/ledger.ts'
import { localMinute, openTestDesk, says, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { acts, makeAll, noor, openGates, orderOf, rosa, sign, talkOf, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wishes = (team: string): string =>
  `3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

const openDesk = (): Promise<WorkerDesk> => openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })

const said = async (desk: WorkerDesk, channel: string) =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0)).map(({ body }) => {
    const { blocks, actions } = messageFrom(body)
    return { text: blocks.flatMap((block) => ('text' in block ? [block.text] : [])).join('\n'), actions }
  })

const cancels = async (desk: WorkerDesk, id: string): Promise<void> => {
  await says(desk, id, 'please cancel the order')
  await says(desk, id, 'yes')
}

const ticketState = async (desk: WorkerDesk, ticketId: string) =>
  (await desk.store.shop(desk.shopId).tickets.read(ticketId))?.state

const vinyl = async (desk: WorkerDesk) => pilesOf(await desk.store.shop(desk.shopId).stock.ledger()).get('vinyl-standard-white')

describe('an order that is cancelled', () => {
  test('is called back from the bench: its message has no actions, and whoever took it is told', {
    timeout: 120_000,
  }, async () => {
    const desk = await openDesk()
    await toProof(desk, 'c-back', wishes('Back Badgers'))
    await sign(desk, 'c-back')
    const ticket = await ticketOf(desk, 'c-back')
    await acts(desk, ticket, { act: 'take' })
    await cancels(desk, 'c-back')
    expect(await ticketState(desk, ticket)).toBe('cancelled')
    const bench = await said(desk, shopChannel('bench'))
    expect(bench.map(({ text }) => text)).toEqual([
      expect.stringContaining('Cancelled. Do not cut or press'),
      expect.stringContaining('Noor, please stop'),
    ])
    expect(bench.flatMap(({ actions }) => actions)).toEqual([])
    expect(await acts(desk, ticket, { act: 'start' })).toContain('no longer open')
    await cancels(desk, 'c-back')
    const events = await desk.store.shop(desk.shopId).events.ofOrder(orderIdOf('c-back'))
    expect(events.filter(({ code }) => code === 'cancelled')).toHaveLength(1)
  })

  test('on which work has begun is ended by the owner alone; what was used stays used, the rest is free', {
    timeout: 120_000,
  }, async () => {
    const desk = await openDesk()
    const before = await vinyl(desk)
    await toProof(desk, 'c-begun', wishes('Begun Bitterns'))
    await sign(desk, 'c-begun')
    const ticket = await ticketOf(desk, 'c-begun')
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['first-piece'])
    await acts(desk, ticket, { act: 'start' })
    await cancels(desk, 'c-begun')
    expect((await orderOf(desk, 'c-begun')).state).toBe('on-bench')
    const asked = (await said(desk, shopChannel('owner'))).at(-1)
    expect(asked?.text).toContain('3 of 3 lines')
    const action = asked?.actions[0]?.id ?? ''
    expect(await pressAction(desk, noor, { action })).toContain('owner')
    expect(await ticketState(desk, ticket)).toBe('open')
    expect(await pressAction(desk, rosa, { action })).toBeNull()
    expect(await ticketState(desk, ticket)).toBe('cancelled')
    expect((await said(desk, conversationChannel('c-begun'))).at(-1)?.text).toContain('Your order is cancelled')
    expect(shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body).sold).toEqual([])
    const after = await vinyl(desk)
    expect(after?.used).toBeGreaterThan(0)
    expect(after?.reserved).toBe(0)
    expect((after?.free ?? 0) + (after?.used ?? 0)).toBe(before?.free)
    expect(await pressAction(desk, rosa, { action })).toContain('no longer open')
    const told = (await said(desk, shopChannel('owner'))).length
    await cancels(desk, 'c-begun')
    expect((await said(desk, shopChannel('owner'))).length).toBe(told)
    expect((await said(desk, conversationChannel('c-begun'))).at(-1)?.text).toContain('cancelled')
  })

  test('while its ticket is being printed never reaches the bench', { timeout: 120_000 }, async () => {
    const desk = await openDesk()
    await toProof(desk, 'c-print', wishes('Print Pelicans'))
    const conversation = await talkOf(desk, 'c-print')
    const orderId = orderIdOf('c-print')
    const cancelsThen: WorkerDesk['press']['printer']['print'] = async (paper) => {
      unwrap(await desk.store.together(desk.shopId, (shop) => cancelOrder(desk, shop, { conversation, orderId, saidId: 's1' })))
      return desk.press.printer.print(paper)
    }
    const printing = { ...desk, press: { ...desk.press, printer: { ...desk.press.printer, print: cancelsThen } } }
    await sign(printing, 'c-print')
    await work(printing)
    expect(await ticketState(desk, await ticketOf(desk, 'c-print'))).toBe('cancelled')
    expect(await said(desk, shopChannel('bench'))).toEqual([])
    expect((await orderOf(desk, 'c-print')).state).toBe('cancelled')
  })

  test('after it was handed over is not cancelled', { timeout: 120_000 }, async () => {
    const desk = await openDesk()
    await toProof(desk, 'c-over', wishes('Over Otters'))
    await sign(desk, 'c-over')
    const ticket = await ticketOf(desk, 'c-over')
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket)
    await acts(desk, ticket, { act: 'start' })
    await makeAll(desk, ticket)
    for (const act of ['checked', 'bagged', 'collected']) await acts(desk, ticket, { act })
    await cancels(desk, 'c-over')
    expect((await said(desk, conversationChannel('c-over'))).at(-1)?.text).toContain('handed over already')
    expect((await orderOf(desk, 'c-over')).state).toBe('collected')
  })
})
