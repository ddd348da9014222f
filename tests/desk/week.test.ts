import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { minutes } from '../../src/domain/units/units.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { noor, pim, rosa } from '../support/floor.ts'
import { deskHands } from '../support/week/hands.ts'
import { aloud, summaryOf, tableOf } from '../support/week/report.ts'
import { runWeek } from '../support/week/run-week.ts'
import { wishesOf } from '../support/week/wishes.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const crew = {
  owner: rosa,
  staff: [noor, pim, { id: 'm-ada', name: 'Ada', role: 'staff' }, { id: 'm-kit', name: 'Kit', role: 'staff' }],
} as const
const isLong = process.env['LONG'] === 'week-desk'
const seeds = (process.env['WEEK_SEED'] ?? '1,2,3').split(',').map(Number)
const weeks = isLong ? seeds.map((seed) => ({ seed, orders: 60 })) : [{ seed: 1, orders: 7 }]
const from = localMinute('2026-11-30T07:00')

describe('a week in the shop, on the real desk and store with a clock of its own', () => {
  test.each(weeks)(
    'ends with $orders orders collected or explained and no promise broken without a word (seed $seed)',
    {
      timeout: 3_600_000,
    },
    async ({ seed, orders }) => {
      const clock = { at: minutes(from) }
      const desk = await openTestDesk(opened.store, clock)
      const wishes = wishesOf({ seed, orders, from, zone: desk.zone })
      const ran = await runWeek({ hands: deskHands(desk, clock), crew, wishes, from, mostDays: 16, tell: aloud })
      const summary = await summaryOf(desk, ran, from)
      process.stdout.write(`${tableOf(summary, seed)}\n`)
      expect(summary.unexplained).toEqual([])
      expect(summary.brokenWithoutWord).toEqual([])
      expect(summary.gapsInLogs).toEqual([])
      expect(summary.stockWrong).toEqual([])
      expect(summary.remakesOpen).toBe(0)
      expect(summary.mornings).toBeGreaterThanOrEqual(Math.floor((ran.until - from) / 1_440))
    },
  )
})
