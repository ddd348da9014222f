import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { benchText, type Event, oursIn, until, wholeJob } from '../../../support/platform/real-job.ts'
import { openRealGround, openRealShops, type RealGround, type RealShops } from '../../../support/platform/real-shop.ts'
import type { Call } from '../../../support/platform/rest.ts'
import type { Fault } from '../../../support/platform/server.ts'
import { toldTo } from '../../../support/platform/shop-in-server.ts'

let ground: RealGround
beforeAll(async () => {
  ground = await openRealGround()
}, 120_000)
afterAll(() => ground.opened.close())

/** Nothing lost, nothing twice: what the records say stands on the platform once each, and every deed was done once. */
const expectWhole = async (shops: RealShops): Promise<void> => {
  const { ourShop, ours, platform } = shops
  await expect.poll(() => shops.waiting(), { timeout: 30_000, interval: 50 }).toBe(0)
  const [order] = await ourShop.orders.list(['collected'])
  expect(order).toBeDefined()
  const events = (await ourShop.events.ofOrder(order?.orderId ?? '')).map(({ code }) => code)
  const acts = ['take', 'count-in', 'water-drops', 'bleed-test', 'start', 'first-piece', 'second-look', 'ask', 'short']
  const ends = ['spoiled', 'remade', 'checked', 'bagged', 'collected']
  const deeds = ['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'posted', ...acts, ...ends]
  for (const deed of deeds)
    expect(
      events.filter((one) => one === deed),
      deed,
    ).toHaveLength(1)
  const [ticket] = await ourShop.tickets.ofOrder(order?.orderId ?? '')
  const found = (await ourShop.tickets.findings(ticket?.ticketId ?? '')).map(({ code }) => code)
  for (const act of [...acts, ...ends])
    expect(
      found.filter((one) => one === act),
      act,
    ).toHaveLength(1)
  expect(oursIn(shops, ours.bench)).toHaveLength(1)
  expect(oursIn(shops, ours.bench)[0]?.files.map(({ type }) => type)).toEqual(['application/pdf', 'application/zip'])
  expect(benchText(shops).match(/Taken by/g)).toHaveLength(1)
  const said = (await ourShop.messages.after(`conversation:${order?.conversationId}`, 0)).filter(({ by }) => by === 'bot')
  expect(oursIn(shops, platform.directRoom(ours.customer))).toHaveLength(said.length + 1)
  expect(shops.reports).toEqual([])
}

const nothing: Event['play'] = async () => undefined

const play = async (between: Event['play'], prepare: (shops: RealShops) => void): Promise<void> => {
  const shops = await openRealShops(ground)
  try {
    prepare(shops)
    for (const event of wholeJob) {
      await event.play(shops).catch((cause: unknown) => {
        const told = [...shops.platform.world.asked.values()].slice(-3).map((one) => [one.acknowledged, toldTo(one)])
        throw new Error(`${event.name}: ${JSON.stringify(told)} ${shops.reports.map(String).join('; ')}`, { cause })
      })
      await between(shops)
    }
    await expectWhole(shops)
  } finally {
    await shops.close()
  }
}

const faults: readonly Fault[] = [
  { kind: 'drop' },
  { kind: 'apply-then-drop' },
  { kind: 'apply-then-500' },
  { kind: 'fail-500' },
  { kind: 'too-many', retryAfter: 0.05 },
  { kind: 'too-many', retryAfter: 0.05, global: true },
  { kind: 'stall' },
  { kind: 'apply-then-stall' },
]
const isLong = process.env['LONG'] !== undefined
/** The calls that meet a fault by default: seeded, spread over the job, each with the next kind of fault. */
const sampled = 6

describe('the whole job on the platform with the desk over the store', () => {
  it('is played from the order to the bag in the customer’s hands', async () => {
    await play(nothing, () => undefined)
  }, 120_000)

  it('is played with the bot and its deliveries started anew between any two events', async () => {
    await play(
      (shops) => shops.restart(),
      () => undefined,
    )
  }, 120_000)

  for (const code of isLong ? [undefined, 1000, 1001, 4000, 4001, 4002, 4003, 4005, 4007, 4008, 4009] : [undefined, 4000]) {
    it(
      `is played with the gateway's line ${code === undefined ? 'cut' : `closed with ${code}`} between any two events`,
      async () => {
        await play(
          async ({ platform }) => {
            const before = platform.gateway.sessions()
            platform.gateway.close(code)
            await until(() => platform.gateway.sessions()).toBe(before)
          },
          () => undefined,
        )
      },
      isLong ? 600_000 : 120_000,
    )
  }

  it(
    `is played with ${isLong ? 'every fault at every call' : `a fault at ${sampled} of its calls`}`,
    async () => {
      let calls = 0
      const count = (_call: Call): boolean => {
        calls += 1
        return false
      }
      await play(nothing, ({ platform }) => void platform.fail(count, { kind: 'drop' }))
      expect(calls).toBeGreaterThan(20)
      const places = isLong
        ? Array.from({ length: calls }, (_, at) => at)
        : Array.from({ length: sampled }, (_, at) => Math.floor(((at + 0.5) * calls) / sampled))
      for (const [index, at] of places.entries()) {
        for (const fault of isLong ? faults : [faults[index % faults.length] ?? { kind: 'drop' as const }]) {
          let seen = -1
          const matches = (_call: Call): boolean => {
            seen += 1
            return seen === at
          }
          await play(nothing, ({ platform }) => void platform.fail(matches, fault))
        }
      }
    },
    isLong ? 7_200_000 : 300_000,
  )
})
