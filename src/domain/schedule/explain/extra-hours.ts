import { axisFrom, intervalsOf, lastOpen } from '../../calendar/axis.ts'
import { type Minutes, minutes } from '../../units/units.ts'
import type { Station } from '../book/operation.ts'
import type { Crew } from '../work/job-facts.ts'

/** Time that the owner opens a station for beyond its hours, in epoch minutes. */
export type ExtraHours = { readonly station: string; readonly from: Minutes; readonly to: Minutes }

/** The stations with their extra hours. */
export const withExtra = (stations: readonly Station[], extra: readonly ExtraHours[]): readonly Station[] =>
  stations.map((station) => {
    const own = extra.filter((one) => one.station === station.id)
    if (own.length === 0) return station
    const intervals = own.map(({ from, to }) => ({ start: from, end: to }))
    return { ...station, axis: axisFrom([...intervalsOf(station.axis), ...intervals]) }
  })

/** Nobody stays longer than this after hours. */
const mostADay = 180
const quarter = 15
/** Half a day before closing time nobody works: the last open minute before it is the working day before. */
const halfDay = 720

/** Whoever stays has somebody who does what the station is for, and the other way round. */
const withHands = (crew: Crew, id: string): readonly string[] => {
  const station = crew.find((one) => one.id === id)
  if (station === undefined || station.kind === 'person') return [id]
  const { kind } = station
  const hand = crew.find((one) => one.kind === 'person' && (one.does === undefined || one.does.some((place) => place === kind)))
  return hand === undefined ? [id] : [id, hand.id]
}

/**
 * Extra hours of a station and somebody to work there, after the shop closes: so many minutes (rounded up to quarters), on the day of
 * `by` and the days before it, none longer than three hours, none before `now`. `shop` is the time in which anybody works.
 */
export const extraHours = (
  stations: readonly Station[],
  crew: Crew,
  need: { readonly station: string; readonly minutes: number; readonly by: number; readonly now: number },
): readonly ExtraHours[] => {
  const shop = axisFrom(stations.flatMap((station) => intervalsOf(station.axis)))
  const extra: ExtraHours[] = []
  let left = Math.ceil(need.minutes / quarter) * quarter
  let closes = lastOpen(shop, need.by + halfDay)
  while (left > 0 && closes >= need.now) {
    const length = Math.min(left, mostADay)
    for (const station of withHands(crew, need.station)) {
      extra.push({ station, from: minutes(closes), to: minutes(closes + length) })
    }
    left -= length
    closes = lastOpen(shop, closes - halfDay)
  }
  return left > 0 ? [] : extra
}
