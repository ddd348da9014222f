import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { readLocal } from '../../src/domain/calendar/local-time.ts'
import { zoneOf } from '../../src/domain/calendar/zone.ts'
import { temporaryFolder, unwrap } from '../support/embedded.ts'
import { type OpenService, runProgram, startService } from '../support/service.ts'
import { arrive, type Customer, giveAges, orderOf } from '../support/service-customer.ts'
import { openRecords, type Records } from '../support/service-watch.ts'
import { until } from '../support/until.ts'

const folder = temporaryFolder()
const data = join(folder.path, 'data')
/** Two minutes before the owner's morning sheet is due, a day of the shop in two and a half minutes. */
const CLOCK = '2031-06-02T06:58x600'
const start = unwrap(readLocal(unwrap(zoneOf('America/Chicago')), '2031-06-02T06:58')).at * 60_000
const words = `Hi, coach Dana Whitlow here, Tidal Wave, girls volleyball. I need 2 navy mesh jerseys, white numbers on the back,
6 inch, just regular vinyl, no names on them. Need them Friday June 27 by 5pm. I'll pick up.
4 Lindqvist M
9 Banerjee L`

let service: OpenService
let records: Records
let customer: Customer
let anchor: { readonly real: number; readonly simulated: number }
const simulated = (real: number): number => anchor.simulated + (real - anchor.real) * 600
const minuteOf = (milliseconds: number): number => Math.floor(milliseconds / 60_000)

/** What a program of the place says that is not given its clock. */
const refused = async (program: string, settings: { readonly [name: string]: string }, ...more: readonly string[]) => {
  const run = runProgram(program, { DATA: data, COUNTER_PORT: '0', ...settings }, ...more)
  return { code: await run.ended, said: run.said() }
}

beforeAll(async () => {
  service = await startService(data, { CLOCK })
  records = await openRecords(data)
  const [row] = await records.rows('select real, simulated from platenpost.simulated_clock')
  anchor = { real: Number(row?.['real']), simulated: Number(row?.['simulated']) }
}, 60_000)
afterAll(async () => {
  await records?.close()
  await service?.signal('SIGTERM')
  folder.remove()
}, 60_000)

describe('a place on a simulated clock', () => {
  it('began at the minute it was told', () => expect(anchor.simulated).toBe(start))

  it('has one time for the service and its worker', { timeout: 120_000 }, async () => {
    const before = minuteOf(simulated(Date.now()))
    customer = await arrive(service.address, words)
    await giveAges(customer)
    const orderId = await orderOf(records, customer)
    const events = await until(
      'the order is asked for and quoted',
      async () => {
        const rows = await records.rows(
          'select code, by, at from platenpost.event where order_id = $1 order by event_id',
          orderId,
        )
        return rows.some(({ code }) => code === 'quoted') ? rows : undefined
      },
      100_000,
    )
    const after = minuteOf(simulated(Date.now()))
    const told = events.map(({ at }) => Number(at))
    expect(events.map(({ code, by }) => `${code} by ${by}`)).toEqual(['asked by customer', 'quoted by desk'])
    expect([before, ...told, after]).toEqual([before, ...told, after].toSorted((one, other) => one - other))
    const messages = await records.rows('select at from platenpost.message where channel <> $1', 'shop:owner')
    const said = messages.map(({ at }) => minuteOf(Number(at)))
    expect(Math.min(...said)).toBeGreaterThanOrEqual(before)
    expect(Math.max(...said)).toBeLessThanOrEqual(after)
  })

  it('has its morning when its own clock says so, and not a day of the machine later', { timeout: 60_000 }, async () => {
    const [sheet] = await until('the morning sheet is posted', async () => {
      const rows = await records.rows('select at from platenpost.message where nonce = $1', 'morning-2031-06-02')
      return rows.length > 0 ? rows : undefined
    })
    const at = minuteOf(Number(sheet?.['at'])) - minuteOf(start)
    expect(at).toBeGreaterThanOrEqual(2)
    expect(at).toBeLessThan(5 * 60)
  })

  it('goes on where it is after a restart, refuses who brings no clock or another, and lets in who brings it', {
    timeout: 120_000,
  }, async () => {
    const theirs = `stop: These records live on the simulated clock they were made with. Set CLOCK=${CLOCK} for the service, every worker and every command.\n`
    expect((await refused('src/main.js', { CLOCK: '2031-06-02T06:58x0' })).said).toContain(
      'CLOCK=2031-06-02T06:58x0 is no clock.',
    )
    expect(await refused('workers/main.js', {})).toEqual({ code: 1, said: theirs })
    expect(await refused('src/cli/forget.js', {}, '--due')).toMatchObject({
      code: 1,
      said: expect.stringContaining(`CLOCK=${CLOCK}`),
    })
    expect(await refused('src/cli/forget.js', { CLOCK }, '--due')).toEqual({ code: 0, said: 'Nobody is due to be forgotten.\n' })
    await records.close()
    await service.signal('SIGTERM')
    expect(await refused('src/main.js', {})).toEqual({ code: 1, said: theirs })
    expect(await refused('src/main.js', { CLOCK: '2031-06-02T06:58x60' })).toEqual({ code: 1, said: theirs })
    service = await startService(data, { CLOCK })
    records = await openRecords(data)
    const [row] = await records.rows('select real, simulated from platenpost.simulated_clock')
    expect(row).toEqual({ real: String(anchor.real), simulated: String(anchor.simulated) })
  })
})
