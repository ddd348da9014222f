import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { simulatedClock } from '../../src/adapters/machine/machine.ts'
import { keptAnchor } from '../../src/adapters/store/sql/anchor.ts'
import { writeLocal } from '../../src/domain/calendar/local-time.ts'
import { zoneOf } from '../../src/domain/calendar/zone.ts'
import { openClock } from '../../src/wiring/open-clock.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'

const zone = unwrap(zoneOf('America/Chicago'))
const monday = { start: '2031-06-02T06:30', speed: 90 }

describe('a simulated clock', () => {
  const anchor = { real: 1_000_000, simulated: 60_000_000, speed: 60 }
  const machine = { at: 1_000_000 }
  const clock = simulatedClock(anchor, () => machine.at)

  it('runs as many times faster as it is told, from its anchor on, whoever reads it', () => {
    expect([clock.milliseconds(), clock.now()]).toEqual([60_000_000, 1_000])
    machine.at += 1_000
    expect([clock.milliseconds(), clock.now(), clock.real()]).toEqual([60_060_000, 1_001, 16])
    expect(simulatedClock(anchor, () => machine.at).milliseconds()).toBe(clock.milliseconds())
  })

  it('says how long the machine waits for a minute of it', () => {
    expect(clock.lasting(60_000)).toBe(1_000)
  })
})

describe('the clock of a place', () => {
  let test: TestStore
  beforeAll(async () => {
    test = await openTestStore()
  }, 60_000)
  afterAll(() => test.close())
  const open = (clock: typeof monday | null) => openClock({ clock }, test.embedded.service, zone)
  const refused = (set: string | null, theirs: string | null) => ({
    ok: false,
    problems: [{ code: 'clock-not-theirs', at: '', severity: 'stop', facts: { set, theirs } }],
  })

  it('is taken once, by the first of all who begin at once, and is the same for everybody afterwards', async () => {
    const clocks = (await Promise.all([open(monday), open(monday), open(monday)])).map(unwrap)
    await test.store.openShop('shop-1')
    const later = unwrap(await open(monday))
    const read = [...clocks, later].map((clock) => clock.milliseconds())
    expect(Math.max(...read) - Math.min(...read)).toBeLessThan(90 * 1_000)
    expect(writeLocal(zone, later.now())).toMatch(/^2031-06-02T0[67]:\d\d$/)
    const rows = unwrap(await keptAnchor(test.embedded.service, null))
    expect(rows).toMatchObject({ speed: 90 })
  })

  it('refuses whoever comes with another one, or with none', async () => {
    expect(await open(null)).toEqual(refused(null, '2031-06-02T06:30x90'))
    expect(await open({ ...monday, speed: 60 })).toEqual(refused('2031-06-02T06:30x60', '2031-06-02T06:30x90'))
    expect(await open({ ...monday, start: '2031-06-03T06:30' })).toEqual(refused('2031-06-03T06:30x90', '2031-06-02T06:30x90'))
  })

  it('refuses a start that is no minute', async () => {
    expect((await open({ ...monday, start: '2031-02-30T06:30' })).ok).toBe(false)
  })

  it('is the machine’s for good where a shop was opened without one', async () => {
    const other = await openTestStore()
    try {
      const openThere = (clock: typeof monday | null) => openClock({ clock }, other.embedded.service, zone)
      await other.store.openShop('shop-1')
      expect(await openThere(monday)).toEqual(refused('2031-06-02T06:30x90', null))
      const clock = unwrap(await openThere(null))
      expect(Math.abs(clock.milliseconds() - Date.now())).toBeLessThan(60_000)
    } finally {
      await other.close()
    }
  })
})
