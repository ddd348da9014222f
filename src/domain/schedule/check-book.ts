import { longestStretch } from '../calendar/axis.ts'
import { pointer } from '../result/result.ts'
import { inOrder, setupTable } from './model.ts'
import type { Book, BookOrder, Operation, Station } from './operation.ts'
import type { ScheduleProblem } from './problems.ts'

const repeated = (ids: readonly string[]): readonly number[] =>
  ids.flatMap((id, index) => (ids.indexOf(id) === index ? [] : [index]))

const stationProblems = (stations: readonly Station[]): readonly ScheduleProblem[] => {
  const twice = repeated(stations.map((one) => one.id)).map(
    (index): ScheduleProblem => ({
      code: 'station-twice',
      at: pointer('stations', index, 'id'),
      severity: 'stop',
      facts: { station: stations[index]?.id ?? '' },
    }),
  )
  const shut = stations.flatMap((station, index): readonly ScheduleProblem[] =>
    longestStretch(station.axis) > 0
      ? []
      : [
          {
            code: 'station-never-open',
            at: pointer('stations', index, 'hours'),
            severity: 'stop',
            facts: { station: station.id },
          },
        ],
  )
  return [...twice, ...shut]
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

const operationProblems = (where: Where, operation: Operation): readonly ScheduleProblem[] => {
  const facts = { order: where.order.id, operation: operation.id }
  const problems: ScheduleProblem[] = []
  for (const id of [...operation.needs.flat(), ...(operation.on ?? [])]) {
    if (where.stations.has(id)) continue
    problems.push({ code: 'station-unknown', at: `${where.at}/needs`, severity: 'stop', facts: { ...facts, station: id } })
  }
  for (const after of operation.after) {
    if (where.order.operations.some((one) => one.id === after.operation)) continue
    problems.push({
      code: 'after-unknown',
      at: `${where.at}/after`,
      severity: 'stop',
      facts: { ...facts, after: after.operation },
    })
  }
  if (problems.length > 0 || operation.splittable || operation.done !== null || operation.started !== null) return problems
  const longest = operation.needs.map((list) => Math.max(...list.map((id) => longestOf(where.stations.get(id)))))
  const longestMinutes = Math.min(Number.MAX_SAFE_INTEGER, ...longest)
  if (longestMinutes >= operation.minutes) return []
  const tooLong = { ...facts, minutes: operation.minutes, longestMinutes }
  return [{ code: 'work-longer-than-open', at: `${where.at}/minutes`, severity: 'stop', facts: tooLong }]
}

const stretches = new WeakMap<Station, number>()
const longestOf = (station: Station | undefined): number => {
  if (station === undefined) return 0
  const longest = stretches.get(station) ?? longestStretch(station.axis)
  stretches.set(station, longest)
  return longest
}

/** What is wrong with one order as it stands, with paths below `at`. */
export const orderProblems = (
  order: BookOrder,
  stations: ReadonlyMap<string, Station>,
  at: string,
): readonly ScheduleProblem[] => {
  const ids = order.operations.map((one) => one.id)
  const twice = repeated(ids).map(
    (index): ScheduleProblem => ({
      code: 'operation-twice',
      at: `${at}${pointer('operations', index, 'id')}`,
      severity: 'stop',
      facts: { order: order.id, operation: ids[index] ?? '' },
    }),
  )
  const own = order.operations.flatMap((operation, index) =>
    operationProblems({ order, at: `${at}${pointer('operations', index)}`, stations }, operation),
  )
  if (twice.length > 0 || own.length > 0) return [...twice, ...own]
  const sorted = inOrder(order.operations)
  const stuck = order.operations.findIndex((operation) => !sorted.includes(operation))
  if (stuck < 0) return []
  const facts = { order: order.id, operation: ids[stuck] ?? '' }
  return [{ code: 'after-circle', at: `${at}${pointer('operations', stuck, 'after')}`, severity: 'stop', facts }]
}

/** Everything that makes a book impossible to plan; an empty list when it can be. */
export const bookProblems = (book: Book): readonly ScheduleProblem[] => {
  const stations = new Map(book.stations.map((station) => [station.id, station]))
  const twice = repeated(book.orders.map((order) => order.id)).map(
    (index): ScheduleProblem => ({
      code: 'order-twice',
      at: pointer('orders', index, 'id'),
      severity: 'stop',
      facts: { order: book.orders[index]?.id ?? '' },
    }),
  )
  const orders = book.orders.flatMap((order, index) => orderProblems(order, stations, pointer('orders', index)))
  return [...stationProblems(book.stations), ...setupProblems(book), ...twice, ...orders]
}
