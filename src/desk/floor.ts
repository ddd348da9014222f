import { readLocal } from '../domain/calendar/local-time.ts'
import type { Zone } from '../domain/calendar/zone.ts'
import { zoneOf } from '../domain/calendar/zone.ts'
import type { Problem, Result } from '../domain/result/result.ts'
import type { Operation } from '../domain/schedule/book/operation.ts'
import { stationsOf } from '../domain/schedule/book/station-records.ts'
import { emptyFloor, type Floor } from '../domain/schedule/reserve/floor.ts'
import type { JobFacts } from '../domain/schedule/work/job-facts.ts'
import { operationsOf } from '../domain/schedule/work/operations-of.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { type Minutes, minutes } from '../domain/units/units.ts'

/** How far past the wanted hour the calendar is compiled, so that an honest later date can be found. */
const horizonMinutes = 120 * 1_440

export type ShopTime = { readonly zone: Zone; readonly now: Minutes }

/** The shop's zone and the present minute in it. */
export const shopTime = (shop: Shop, now: string): Result<ShopTime> => {
  const zone = zoneOf(shop.profile.zone)
  if (!zone.ok) return zone
  const at = readLocal(zone.value, now)
  return at.ok ? { ok: true, value: { zone: zone.value, now: at.value.at } } : at
}

/** Gives the floor on which something wanted by then is promised. */
export type AskFloor = (shop: Shop, time: ShopTime, needBy: Minutes) => Result<Floor, Problem>

/** A floor with nothing booked, from the shop's hours and stations. */
export const emptyShopFloor: AskFloor = (shop, time, needBy) => {
  const range = { from: minutes(time.now - 1_440), to: minutes(Math.max(time.now, needBy) + horizonMinutes) }
  const stations = stationsOf(time.zone, shop.hours, shop.stations, range)
  return emptyFloor(stations, time.now)
}

/** The work of an order as operations of the shop's stations. */
export const operationsFor = (shop: Shop, facts: JobFacts): readonly Operation[] => operationsOf(facts, shop.rates, shop.stations)
