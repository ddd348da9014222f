import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { orderStates } from '../../src/ports/work-records.ts'
import { localMinute, type TestClock } from '../support/desk.ts'
import { openTestStore, root, type TestStore } from '../support/embedded.ts'
import { noor, pim, rosa } from '../support/floor.ts'
import { type FloorCounter, openFloorCounter } from '../support/floor-counter.ts'
import { needs } from '../support/needs.ts'
import { axeFindings } from '../support/page-axe.ts'
import { browserNames, type OpenBrowser, openBrowser } from '../support/page-browser.ts'
import { deskHands } from '../support/week/hands.ts'
import { runWeek } from '../support/week/run-week.ts'
import { wishesOf } from '../support/week/wishes.ts'

const start = '2026-11-30T07:00'
const from = localMinute(start)
const folder = join(root, '.pictures', 'floor')
const widths = [390, 820, 1440] as const

type Scene = {
  readonly name: string
  readonly orders: number
  /** Days of the shop that go by before the pictures are made. */
  readonly days: number
  /** Everybody comes in so large a part of the usual time. */
  readonly within: number
  readonly staff: readonly (typeof noor)[]
}
const scenes: readonly Scene[] = [
  { name: 'empty', orders: 0, days: 0, within: 1, staff: [] },
  { name: 'normal', orders: 14, days: 1.15, within: 1, staff: [noor, pim] },
  { name: 'overloaded', orders: 45, days: 1.2, within: 0.2, staff: [noor] },
]

/** Lets the shop's days go by as the scene has it. */
const layOut = async (desk: WorkerDesk, clock: TestClock, { orders, days, within, staff }: Scene): Promise<void> => {
  const wishes = wishesOf({ seed: 5, orders, from, zone: desk.zone }).map((wish) => ({
    ...wish,
    arrives: minutes(from + Math.floor((wish.arrives - from) * within)),
  }))
  await runWeek({ hands: deskHands(desk, clock), crew: { owner: rosa, staff }, wishes, from, mostDays: days })
}

/** Every page of staff and owner, with the ticket whose work has gone furthest. */
const pagesOf = async ({ desk }: FloorCounter): Promise<readonly (readonly [string, string])[]> => {
  const shop = desk.store.shop(desk.shopId)
  const tickets = await shop.tickets.list(['open'])
  const states = new Map((await shop.orders.list(orderStates)).map(({ orderId, state }) => [orderId, state]))
  const begun = tickets.find(({ orderId }) => states.get(orderId) === 'on-bench') ?? tickets[0]
  const rooms = ['morning', 'load', 'bench', 'press', 'shelf', 'people'].map((name) => [name, `/${name}`] as const)
  return begun === undefined ? rooms : [...rooms, ['ticket', `/press/${begun.ticketId}`]]
}

const shoot = async (page: Page, { name, width }: { readonly name: string; readonly width: number }): Promise<number> => {
  await page.evaluate('Promise.all(document.getAnimations().map((animation) => animation.finished)).then(() => 0)')
  await page.screenshot({ path: join(folder, `${name}-${width}.png`), fullPage: true })
  await page.screenshot({ path: join(folder, `${name}-${width}-first.png`) })
  return Number(await page.evaluate('document.documentElement.scrollHeight'))
}

describe.runIf(process.env['LONG'] === 'pictures' && needs(...browserNames))('pictures of the floor', () => {
  let opened: TestStore
  let browser: OpenBrowser
  beforeAll(async () => {
    mkdirSync(folder, { recursive: true })
    ;[opened, browser] = await Promise.all([openTestStore(), openBrowser()])
  }, 180_000)
  afterAll(async () => {
    await browser?.close()
    await opened?.close()
  })

  it.each(scenes)(
    'every page of staff and owner is free of violations and fits its width: $name',
    {
      timeout: 3_600_000,
    },
    async (scene) => {
      const counter = await openFloorCounter({
        opened,
        browser,
        at: start,
        before: (desk, clock) => layOut(desk, clock, scene),
      })
      try {
        const page = await counter.owner()
        for (const [name, path] of await pagesOf(counter)) {
          for (const width of widths) {
            await page.setViewportSize({ width, height: width === 390 ? 844 : width === 820 ? 1180 : 900 })
            await page.goto(counter.address + path)
            const height = await shoot(page, { name: `${scene.name}-${name}`, width })
            process.stdout.write(`${scene.name} ${name} at ${width}: ${height} px high\n`)
            const sideways: unknown = await page.evaluate('document.documentElement.scrollWidth - window.innerWidth')
            expect({ path, width, found: await axeFindings(page), sideways }).toEqual({ path, width, found: [], sideways: 0 })
          }
        }
        expect(counter.bugs).toEqual([])
      } finally {
        await counter.close()
      }
    },
  )
})
