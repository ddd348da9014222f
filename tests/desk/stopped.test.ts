import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { conversationChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { tellDayBefore } from '../../src/desk/service/morning/tell-day-before.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { loadSheet } from '../../src/desk/service/shop/load-sheet.ts'
import { orderStatus } from '../../src/desk/service/talk/order-status.ts'
import { localMinute, openTestDesk, type TestClock } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, openGates, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words =
  '3 practice tees that we bring ourselves, navy, 100% nylon woven, white vinyl numbers on the back. Team is the Stopped Storks, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'

const heardBy = async (desk: WorkerDesk, id: string): Promise<string> =>
  (await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0))
    .flatMap(({ body }) => messageFrom(body).blocks)
    .flatMap((block) => ('text' in block ? [block.text] : []))
    .join('\n')

describe('work that was stopped at the bench', () => {
  test('is called stopped by the status and by the load, and no promise is said to stand', { timeout: 120_000 }, async () => {
    const clock: TestClock = { at: localMinute('2026-11-25T09:00') }
    const desk = await openTestDesk(opened.store, clock)
    const status = (language: 'en' | 'es') => orderStatus(desk, desk.store.shop(desk.shopId), { id: 'c-stopped', language })
    await toProof(desk, 'c-stopped', words)
    await sign(desk, 'c-stopped')
    const ticket = await ticketOf(desk, 'c-stopped')
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket, ['water-drops', 'test-press'])
    const garment = (await lifeNow(desk, ticket)).gates.find(({ gate }) => gate.code === 'water-drops')?.gate.garment ?? ''
    await acts(desk, ticket, { act: 'water-drops', values: { garment, drops: '20 20 20 20 20' } })
    expect(await status('en')).toMatch(/on the bench; promised for/)
    expect((await loadSheet(desk, 'en')).late.jobs).toEqual([])
    expect(await acts(desk, ticket, { act: 'test-press', values: { garment, result: 'failed' } })).toBeNull()
    expect(await status('en')).toMatch(/^Work on your order is stopped.*The shop will be in touch/)
    expect(await status('es')).toMatch(/^El trabajo en su pedido está detenido/)
    const [job] = (await loadSheet(desk, 'en')).late.jobs
    expect(job?.text).toMatch(/^T0001 Stopped Storks: work is stopped .*promised for Thursday, December 10/)
    clock.at = localMinute('2026-12-09T10:00')
    await tellDayBefore(desk)
    expect(await heardBy(desk, 'c-stopped')).not.toContain('Tomorrow')
    clock.at = localMinute('2026-11-26T09:00')
    expect(await acts(desk, ticket, { act: 'test-press', values: { garment, result: 'held' } })).toBeNull()
    expect(await status('en')).toMatch(/on the bench; promised for/)
  })
})
