import { readFileSync } from 'node:fs'
import { type Axis, axisFrom, finish, intervalsOf, lastOpen } from '../../src/domain/calendar/axis.ts'
import { hoursSchema } from '../../src/domain/calendar/hours.ts'
import { readLocal } from '../../src/domain/calendar/local-time.ts'
import { type Zone, zoneOf } from '../../src/domain/calendar/zone.ts'
import type { Book, BookOrder, Operation, Station } from '../../src/domain/schedule/book/operation.ts'
import { stationsOf, stationsSchema } from '../../src/domain/schedule/book/station-records.ts'
import { below, type Random, randomFrom } from '../../src/domain/schedule/search/random.ts'
import type { JobFacts } from '../../src/domain/schedule/work/job-facts.ts'
import { operationsOf } from '../../src/domain/schedule/work/operations-of.ts'
import { ratesSchema } from '../../src/domain/schedule/work/rates.ts'
import { type Minutes, minutes } from '../../src/domain/units/units.ts'

const starter = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../templates/shop/${name}.json`, import.meta.url), 'utf8'))

/** From the source tree, or from the build, which lies one folder deeper. */
const read = (name: string): unknown => {
  try {
    return JSON.parse(readFileSync(new URL(`../../templates/shop/${name}.json`, import.meta.url), 'utf8'))
  } catch {
    return starter(name)
  }
}

const value = <T>(result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
  return result.value
}

/** The starter shop from Monday 3 August 2026, eight in the morning, for 900 days. */
export type StarterShop = {
  readonly zone: Zone
  readonly now: Minutes
  readonly stations: readonly Station[]
  readonly open: Axis
}

const hours = hoursSchema.parse(read('hours'))
const crew = stationsSchema.parse(read('stations'))
const rates = ratesSchema.parse(read('rates'))

export const starterShop = (): StarterShop => {
  const zone = value(zoneOf(hours.zone))
  const now = value(readLocal(zone, '2026-08-03T08:00')).at
  const stations = stationsOf(zone, hours, crew, { from: now - 1_440, to: now + 900 * 1_440 })
  return { zone, now, stations, open: axisFrom(stations.flatMap((station) => intervalsOf(station.axis))) }
}

export const jobFacts = (over: Partial<JobFacts> = {}): JobFacts => ({
  garments: 12,
  styles: 1,
  ownGarments: true,
  garmentsArrive: null,
  materialsArrive: null,
  vinyl: [{ colour: 'white', names: 12, numbers: 24, marks: 0, glitter: false, over: false }],
  templates: [],
  stones: { small: 0, usual: 0 },
  tapes: 0,
  sides: [{ side: 'back', family: 't160', garments: 12, plainPlaces: 2, twoColourPlaces: 0, stoned: false }],
  proof: 'none',
  waterDrops: false,
  testPress: false,
  bleedTest: false,
  coupon: false,
  ...over,
})

export const operationsFor = (facts: JobFacts): readonly Operation[] => operationsOf(facts, rates, crew)

const pick = <T>(random: Random, list: readonly [T, ...T[]]): T => list[below(random, list.length)] ?? list[0]

/** A team order as they come: a handful to two dozen garments, a quarter of them with stones, some waiting for garments. */
export const randomFacts = (random: Random, now: number): JobFacts => {
  const garments = 1 + below(random, 4) * below(random, 6) + below(random, 6)
  const stoned = below(random, 4) === 0
  const names = below(random, 2) === 0
  const family = pick(random, ['t160', 't150', 't145', 't130'])
  const vinyl = { colour: pick(random, ['white', 'black', 'gold', 'red', 'navy']), numbers: 2 * garments, marks: 0 }
  const side = { family, garments, twoColourPlaces: 0, stoned }
  return jobFacts({
    garments,
    garmentsArrive: below(random, 3) === 0 ? minutes(now + below(random, 6) * 1_440) : null,
    vinyl: [{ ...vinyl, names: names ? garments : 0, glitter: stoned, over: false }],
    templates: stoned ? Array.from({ length: 3 + below(random, 5) }, () => ({ holes: 300 })) : [],
    stones: { small: 0, usual: stoned ? garments * 600 : 0 },
    tapes: stoned ? garments * 2 : 0,
    sides: [
      { ...side, side: 'front', plainPlaces: 1 },
      { ...side, side: 'back', plainPlaces: names ? 2 : 1 },
    ],
    waterDrops: below(random, 2) === 0,
    bleedTest: below(random, 4) === 0,
  })
}

export const randomOrder = (
  shop: StarterShop,
  random: Random,
  due: { readonly id: string; readonly within: number },
): BookOrder => {
  const operations = operationsFor(randomFacts(random, shop.now))
  const needBy = lastOpen(shop.open, finish(shop.open, shop.now, 900 + below(random, Math.max(1, due.within))))
  return { id: due.id, needBy: minutes(needBy), promised: null, weight: pick(random, [1, 1, 1, 2, 3, 5]), operations }
}

/** A book of open orders due within `within` open minutes. */
export const shopBook = (orders: number, seed: number, within: number): { readonly shop: StarterShop; readonly book: Book } => {
  const shop = starterShop()
  const random = randomFrom(seed)
  const list = Array.from({ length: orders }, (_, index) => randomOrder(shop, random, { id: `order-${index}`, within }))
  return { shop, book: { now: shop.now, stations: shop.stations, orders: list } }
}

/** Open minutes in which a shop with about `hands` people at work does all of a book. */
export const minutesOfWork = (book: Book, hands: number): number =>
  Math.round(book.orders.flatMap((order) => order.operations).reduce((sum, one) => sum + one.minutes, 0) / hands)
