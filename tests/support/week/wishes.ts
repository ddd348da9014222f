import { writeLocal } from '../../../src/domain/calendar/local-time.ts'
import type { Zone } from '../../../src/domain/calendar/zone.ts'
import { type Minutes, minutes } from '../../../src/domain/units/units.ts'
import { seeded } from '../seeded.ts'

/** How a customer of the week is, and what goes wrong with their order; both are invented. */
export type Temper = 'plain' | 'late' | 'changes' | 'changes-signed' | 'cancels' | 'never'
export type Trouble = 'none' | 'beaded' | 'scorched' | 'stones'
export type Wish = {
  readonly number: number
  readonly arrives: Minutes
  readonly words: string
  readonly temper: Temper
  readonly trouble: Trouble
  /** Minutes from the proof until it is signed. */
  readonly thinks: number
  /** Minutes from "it is ready" until somebody comes for it. */
  readonly fetches: number
}

const day = 1_440
const families = ['Abel', 'Bea', 'Cid', 'Dorsey', 'Egan', 'Farrow', 'Gale', 'Hale', 'Ibarra', 'Jansen', 'Kerr', 'Lund']
const places = ['Marsh', 'Mill', 'Harbor', 'Quarry', 'Orchard', 'Ridge']
const teams = ['Geese', 'Bears', 'Terns', 'Pipits', 'Storks', 'Shrikes', 'Otters', 'Lynx', 'Herons', 'Moles']
const tempers: readonly Temper[] = [
  'plain',
  'plain',
  'late',
  'plain',
  'changes',
  'plain',
  'changes-signed',
  'plain',
  'cancels',
  'never',
]
const troubles: readonly Trouble[] = ['none', 'beaded', 'none', 'scorched', 'none', 'stones', 'none']

const monthDay = (zone: Zone, at: number): string => {
  const date = new Date(`${writeLocal(zone, minutes(at)).slice(0, 10)}T00:00Z`)
  return new Intl.DateTimeFormat('en-US', { timeZone: 'UTC', month: 'long', day: 'numeric' }).format(date)
}

const garmentOf = (trouble: Trouble, isOwn: boolean, colour: string): string => {
  if (trouble === 'beaded')
    return 'practice tees that we bring ourselves, navy, 100% nylon woven, white vinyl numbers on the back'
  const brought = isOwn ? ' that we bring ourselves' : ''
  const stones = trouble === 'stones' ? ' with an SS10 crystal outline in two rows' : ''
  return `practice tees${brought}, ${colour}, 100% cotton, white vinyl numbers${stones} on the back`
}

export type Week = { readonly seed: number; readonly orders: number; readonly from: Minutes; readonly zone: Zone }

/** The customers of a week, in the order in which they come: Monday to Saturday at noon, most of them by day. */
export const wishesOf = ({ seed, orders, from, zone }: Week): readonly Wish[] => {
  const random = seeded(seed)
  const upTo = (count: number): number => Math.floor(random() * count)
  const span = orders < 20 ? 2 * day : 5 * day + 5 * 60
  return Array.from({ length: orders }, (_, number): Wish => {
    const hour = 60 + upTo(9 * 60)
    const arrives = Math.floor((number * span) / orders / day) * day + (upTo(10) === 0 ? 14 * 60 : hour)
    const temper = tempers[number % tempers.length] ?? 'plain'
    const trouble = troubles[number % troubles.length] ?? 'none'
    const needBy = monthDay(zone, from + arrives + (5 + upTo(4)) * day)
    const isOwn = trouble === 'beaded' || upTo(2) === 0
    const colour = ['navy', 'black', 'red'][upTo(3)] ?? 'navy'
    const players = 2 + upTo(6)
    const roster = families.slice(0, players).map((name, at) => `${4 + at * 3} ${name}, adult ${['M', 'L', 'S'][at % 3]}`)
    const team = `${places[Math.floor(number / teams.length) % places.length]} ${teams[number % teams.length]}`
    const order = `${players} ${garmentOf(trouble, isOwn, colour)}. Team is the ${team}, sport is soccer.`
    return {
      number,
      arrives: minutes(from + arrives),
      words: `${order} We need them ${needBy} at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n${roster.join('\n')}`,
      temper,
      trouble,
      thinks: temper === 'late' ? 26 * 60 + upTo(300) : 20 + upTo(180),
      fetches: 30 + upTo(20 * 60),
    }
  }).toSorted((one, other) => one.arrives - other.arrives)
}
