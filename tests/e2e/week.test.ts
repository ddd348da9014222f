import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { readConfig } from '../../src/config.ts'
import type { Desk } from '../../src/desk/service/desk.ts'
import { addressFor, openDesk } from '../../src/wiring/open-place.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { localMinute } from '../support/desk.ts'
import { root, temporaryFolder, unwrap } from '../support/embedded.ts'
import { freePort, type OpenService, startService } from '../support/service.ts'
import { workerOf } from '../support/service-watch.ts'
import { counterHands, signInCrew } from '../support/week/counter-hands.ts'
import { aloud, summaryOf, tableOf } from '../support/week/report.ts'
import { runWeek } from '../support/week/run-week.ts'
import { wishesOf } from '../support/week/wishes.ts'

const start = '2026-11-30T07:00'
const from = localMinute(start)
/** A week and what is left of it in about a quarter of an hour. */
const speed = Number(process.env['WEEK_SPEED'] ?? '900')
const seed = Number(process.env['WEEK_SEED'] ?? '1')
const orders = Number(process.env['WEEK_ORDERS'] ?? '60')
const CLOCK = `${start}x${speed}`
/**
 * Three in the hours of each person of the shop's records: the counter lets a member do forty things a minute of the machine's clock,
 * which is no limit to anybody, but was one to four invented people whose day passes in a minute and a half.
 */
const colleagues = ['Noor', 'Pim', 'Ada', 'Kit', 'Uma', 'Finn', 'Lou', 'Jun', 'Ida', 'Max', 'Eva', 'Ben']

let folder: ReturnType<typeof temporaryFolder>
let data: string
let service: OpenService
let desk: Desk
let port: string
beforeAll(async () => {
  folder = temporaryFolder()
  data = join(folder.path, 'data')
  port = await freePort()
  service = await startService(data, { CLOCK, COUNTER_PORT: port })
  const config = { ...unwrap(readConfig(root)), data, clock: { start, speed } }
  desk = unwrap(await openDesk(config, openWorkshop(root, config.shop), unwrap(await addressFor(config))))
}, 120_000)
afterAll(async () => {
  await desk?.store.close()
  await service?.signal('SIGTERM')
  folder?.remove()
}, 120_000)

/** First the worker is killed, then the service itself; what was killed comes back. */
const killer = () => {
  let deaths = 0
  return async (): Promise<void> => {
    deaths += 1
    if (deaths === 1) {
      process.kill(await workerOf(service.pid), 'SIGKILL')
      return
    }
    await service.signal('SIGKILL')
    service = await startService(data, { CLOCK, COUNTER_PORT: port })
  }
}

describe.runIf(process.env['LONG'] === 'week')(
  'a week in the shop, through the running service on a clock that runs fast',
  () => {
    test(`ends with ${orders} orders collected or explained and no promise broken without a word (seed ${seed})`, {
      timeout: 3_600_000,
    }, async () => {
      const { crew, cookieFor } = await signInCrew({ address: service.address, ownerLink: service.ownerLink, desk }, colleagues)
      const wishes = wishesOf({ seed, orders, from, zone: desk.zone })
      const hands = counterHands({ address: service.address, desk, cookieFor, die: killer() })
      const ran = await runWeek({ hands, crew, wishes, from, mostDays: 16, tell: aloud })
      const summary = await summaryOf(desk, ran, from)
      process.stdout.write(`${tableOf(summary, seed)}\n`)
      expect(summary.unexplained).toEqual([])
      expect(summary.brokenWithoutWord).toEqual([])
      expect(summary.gapsInLogs).toEqual([])
      expect(summary.stockWrong).toEqual([])
      expect(summary.remakesOpen).toBe(0)
      expect(summary.mornings).toBeGreaterThanOrEqual(Math.floor((ran.until - from) / 1_440))
    })
  },
)
