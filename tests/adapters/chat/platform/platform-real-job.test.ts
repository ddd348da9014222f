import { describe, expect, it } from 'vitest'
import { openLightGrounds, openRealGround, type RealGround } from '../../../support/platform/ground.ts'
import { benchText, type Event, oursIn, until, wholeJob } from '../../../support/platform/real-job.ts'
import { openRealShops, type RealShops } from '../../../support/platform/real-shop.ts'
import type { Fault } from '../../../support/platform/server.ts'
import { toldTo } from '../../../support/platform/shop-in-server.ts'
import { type Count, countsText, faultAt, playTrials, type Trial, troubleBetween } from '../../../support/platform/trials.ts'

const isLong = process.env['LONG'] !== undefined

/** Nothing lost, nothing twice: what the records say stands on the platform once each, and every deed was done once. */
const expectWhole = async (shops: RealShops): Promise<void> => {
  const { ourShop, ours, platform } = shops
  await expect.poll(() => shops.waiting(), { timeout: isLong ? 600_000 : 30_000, interval: 50 }).toBe(0)
  const [order] = await ourShop.orders.list(['collected'])
  expect(order).toBeDefined()
  const events = (await ourShop.events.ofOrder(order?.orderId ?? '')).map(({ code }) => code)
  const acts = ['take', 'count-in', 'water-drops', 'bleed-test', 'start', 'first-piece', 'second-look', 'ask', 'short']
  const ends = ['spoiled', 'remade', 'checked', 'bagged', 'collected', 'complaint']
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
  // A message in hand waits no longer, though its call may be made again before it stands there.
  await until(() => oursIn(shops, platform.directRoom(ours.customer)).length).toBe(said.length + 1)
  expect(shops.reports).toEqual([])
}

const playOn = async (ground: RealGround, trial: Trial, after: (shops: RealShops) => void): Promise<void> => {
  const shops = await openRealShops(ground)
  try {
    trial.prepare(shops)
    for (const event of wholeJob) {
      await event.play(shops).catch((cause: unknown) => {
        const told = [...shops.platform.world.asked.values()].slice(-3).map((one) => [one.acknowledged, toldTo(one)])
        throw new Error(`${event.name}: ${JSON.stringify(told)} ${shops.reports.map(String).join('; ')}`, { cause })
      })
      await trial.between(shops)
    }
    await expectWhole(shops)
  } finally {
    after(shops)
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

/** Closes the line and waits for the new one: what happens on the platform in between is lost to a session that has ended. */
const closeLine =
  (code: number | undefined): Event['play'] =>
  async ({ platform: { gateway } }) => {
    const opened = (): number => gateway.resumed() + gateway.identified()
    const before = opened()
    gateway.close(code)
    await until(opened).toBeGreaterThan(before)
  }
const codes = isLong ? [undefined, 1000, 1001, 4000, 4001, 4002, 4003, 4005, 4007, 4008, 4009] : [undefined, 4000]

/** A play's faults are so many calls apart, so that each is over before the next comes. */
const apart = 8
/** In every round each fault meets another eighth of the calls; in all rounds together every fault meets every call. */
const round = (at: number): readonly Trial[] => faults.map((fault, index) => faultAt(fault, (index + at) % apart, apart))
const rounds = isLong ? apart : 1

const trials: readonly Trial[] = [
  troubleBetween('restart between any two events', (shops) => shops.restart()),
  ...Array.from({ length: rounds }, (_, at) => round(at)).flat(),
  ...codes.map((code) =>
    troubleBetween(`line ${code === undefined ? 'cut' : `closed with ${code}`} between any two`, closeLine(code)),
  ),
]

/** The long form takes its time: what it has counted so far is said after every play. */
const tell = (counts: ReadonlyMap<string, Count>): void => {
  if (isLong) process.stdout.write(`${countsText(counts)}\n\n`)
}

describe('the whole job on the platform with the desk over the store', () => {
  it('is played from the order to the bag in the customer’s hands', async () => {
    const ground = await openRealGround()
    try {
      await playOn(
        ground,
        troubleBetween('none', async () => undefined),
        () => undefined,
      )
    } finally {
      await ground.close()
    }
  }, 120_000)

  it(
    `is played with ${isLong ? 'every fault at every call' : 'each fault at an eighth of the calls'}, restarts and closed lines`,
    async () => {
      const { grounds, close } = await openLightGrounds(3)
      const counts = await playTrials(grounds, trials, { play: playOn, tell })
      await close()
      expect([...counts].flatMap(([kind, { failures }]) => failures.map((failure) => `${kind}: ${failure}`))).toEqual([])
      for (const [kind, { plays, once }] of counts) expect(once, kind).toBe(plays)
      for (const { kind } of faults) expect(counts.get(kind)?.met, kind).toBeGreaterThan(isLong ? 50 : 5)
    },
    isLong ? 7_200_000 : 300_000,
  )
})
