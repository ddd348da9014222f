import { pointer } from '../../result/result.ts'
import type { Book, BookOrder, Operation, Station } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { inOrder, setupTable } from '../timeline/model.ts'

/** Where an id stands that stood before. */
const repeated = (things: readonly { readonly id: string }[]): readonly number[] => {
  const seen = new Set<string>()
  const again: number[] = []
  things.forEach(({ id }, index) => {
    if (seen.has(id)) again.push(index)
    seen.add(id)
  })
  return again
}

const stationProblems = (stations: readonly Station[]): readonly ScheduleProblem[] => {
  return repeated(stations).map(
    (index): ScheduleProblem => ({
      code: 'station-twice',
      at: pointer('stations', index, 'id'),
      severity: 'stop',
      facts: { station: stations[index]?.id ?? '' },
    }),
  )
}

/** Stations that some work cannot do without and that never open: whatever could do it in their place never opens either. */
export const shutStations = (operations: readonly Operation[], stations: ReadonlyMap<string, Station>): readonly string[] => {
  const shut = new Set<string>()
  const opens = (id: string): boolean => (stations.get(id)?.axis.longest ?? 0) > 0
  for (const { needs, done, started } of operations) {
    if (done !== null || started !== null) continue
    for (const list of needs) if (!list.some(opens)) for (const id of list) shut.add(id)
  }
  return [...shut].filter((id) => stations.has(id))
}

const shutProblems = (book: Book, stations: ReadonlyMap<string, Station>): readonly ScheduleProblem[] => {
  const shut = book.orders.flatMap((order) => shutStations(order.operations, stations))
  return [...new Set(shut)].map((station) => ({
    code: 'station-never-open',
    at: pointer(
      'stations',
      book.stations.findIndex(({ id }) => id === station),
      'hours',
    ),
    severity: 'stop',
    facts: { station },
  }))
}

/** A change that is quicker by way of a third family than directly would let a plan cheat. */
const shortcut = (station: Station, families: readonly string[]): ScheduleProblem | null => {
  const size = families.length
  const table = setupTable(station, families)
  const minutes = (from: number, to: number): number => table[from * size + to] ?? 0
  if (table.length === 0) return null
  for (let over = 1; over < size; over += 1) {
    for (let from = 1; from < size; from += 1) {
      for (let to = 1; to < size; to += 1) {
        const viaMinutes = minutes(from, over) + minutes(over, to)
        if (viaMinutes >= minutes(from, to)) continue
        const facts = { station: station.id, from: families[from] ?? '', over: families[over] ?? '', to: families[to] ?? '' }
        return {
          code: 'setup-shortcut',
          at: '',
          severity: 'stop',
          facts: { ...facts, directMinutes: minutes(from, to), viaMinutes },
        }
      }
    }
  }
  return null
}

const setupProblems = (book: Book): readonly ScheduleProblem[] =>
  book.stations.flatMap((station, index) => {
    if (station.setups.length === 0) return []
    const families = new Set<string>([''])
    for (const order of book.orders) {
      for (const operation of order.operations) {
        if (operation.family !== null && operation.needs.some((list) => list.includes(station.id))) families.add(operation.family)
      }
    }
    const problem = shortcut(station, [...families])
    return problem === null ? [] : [{ ...problem, at: pointer('stations', index, 'setups') }]
  })

type Where = { readonly order: BookOrder; readonly at: string; readonly stations: ReadonlyMap<string, Station> }

const pathOf = (where: Where, index: number, part: string): string => `${where.at}${pointer('operations', index, part)}`

const unknownStations = (where: Where, index: number, operation: Operation): readonly ScheduleProblem[] => {
  const unknown: ScheduleProblem[] = []
  const ask = (station: string): void => {
    if (where.stations.has(station)) return
    const facts = { order: where.order.id, operation: operation.id, station }
    unknown.push({ code: 'station-unknown', at: pathOf(where, index, 'needs'), severity: 'stop', facts })
  }
  for (const list of operation.needs) list.forEach(ask)
  operation.on?.forEach(ask)
  return unknown
}

const unknownBefore = (where: Where, index: number, operation: Operation): readonly ScheduleProblem[] => {
  const unknown: ScheduleProblem[] = []
  for (const { operation: after } of operation.after) {
    if (where.order.operations.some((one) => one.id === after)) continue
    const facts = { order: where.order.id, operation: operation.id, after }
    unknown.push({ code: 'after-unknown', at: pathOf(where, index, 'after'), severity: 'stop', facts })
  }
  return unknown
}

/** The longest stretch in which all of an operation's scarce sets may have a station open. */
const longestFor = ({ stations }: Where, operation: Operation): number => {
  let least = Number.MAX_SAFE_INTEGER
  for (const list of operation.needs) {
    let longest = 0
    for (const id of list) longest = Math.max(longest, stations.get(id)?.axis.longest ?? 0)
    least = Math.min(least, longest)
  }
  return least
}

const operationProblems = (where: Where, index: number, operation: Operation): readonly ScheduleProblem[] => {
  const unknown = [unknownStations(where, index, operation), unknownBefore(where, index, operation)]
  if (unknown.some((list) => list.length > 0)) return unknown.flat()
  if (operation.splittable || operation.done !== null || operation.started !== null) return []
  const longestMinutes = longestFor(where, operation)
  if (longestMinutes >= operation.minutes || longestMinutes === 0) return []
  const facts = { order: where.order.id, operation: operation.id, minutes: operation.minutes, longestMinutes }
  return [{ code: 'work-longer-than-open', at: pathOf(where, index, 'minutes'), severity: 'stop', facts }]
}

/** What is wrong with one order as it stands, with paths below `at`. */
export const orderProblems = (
  order: BookOrder,
  stations: ReadonlyMap<string, Station>,
  at: string,
): readonly ScheduleProblem[] => {
  const where: Where = { order, at, stations }
  const idOf = (index: number): string => order.operations[index]?.id ?? ''
  const twice = repeated(order.operations).map(
    (index): ScheduleProblem => ({
      code: 'operation-twice',
      at: pathOf(where, index, 'id'),
      severity: 'stop',
      facts: { order: order.id, operation: idOf(index) },
    }),
  )
  const own = order.operations.flatMap((operation, index) => operationProblems(where, index, operation))
  if (twice.length > 0 || own.length > 0) return [...twice, ...own]
  const sorted = inOrder(order.operations)
  if (sorted.length === order.operations.length) return []
  const stuck = order.operations.findIndex((operation) => !sorted.includes(operation))
  const facts = { order: order.id, operation: idOf(stuck) }
  return [{ code: 'after-circle', at: pathOf(where, stuck, 'after'), severity: 'stop', facts }]
}

/** Everything that makes a book impossible to plan; an empty list when it can be. */
export const bookProblems = (book: Book): readonly ScheduleProblem[] => {
  const stations = new Map(book.stations.map((station) => [station.id, station]))
  const twice = repeated(book.orders).map(
    (index): ScheduleProblem => ({
      code: 'order-twice',
      at: pointer('orders', index, 'id'),
      severity: 'stop',
      facts: { order: book.orders[index]?.id ?? '' },
    }),
  )
  const orders = book.orders.flatMap((order, index) => orderProblems(order, stations, pointer('orders', index)))
  return [...stationProblems(book.stations), ...shutProblems(book, stations), ...setupProblems(book), ...twice, ...orders]
}
