import { type Axis, alwaysOpen, intersect } from '../../calendar/axis.ts'
import { type BookOrder, dueOf, type Operation, type Station } from '../book/operation.ts'

/** One way to staff an operation: stations that are held together, and the time when all of them are open. */
export type Crewing = { readonly stations: Int32Array; readonly axis: Axis }

/** Work that may still be placed, has begun (and stays where it is), or is over. */
export const free = 0
const begun = 1
export const over = 2

/**
 * A book compiled to numbers. Operations of an order lie next to each other in topological order; `family` 0 is none;
 * `waysOf[operation]` indexes `ways`, each a list of crewings. New orders are appended; the last one can be taken off again.
 */
export type Model = {
  readonly now: number
  readonly stations: readonly Station[]
  readonly stationIndex: ReadonlyMap<string, number>
  readonly families: string[]
  readonly setups: Int32Array[]
  readonly crewings: Crewing[]
  readonly ways: Int32Array[]
  readonly known: {
    readonly crewings: Map<string, number>
    readonly ways: Map<string, number>
    readonly families: Map<string, number>
  }
  readonly order: number[]
  readonly work: number[]
  readonly release: number[]
  readonly family: number[]
  readonly waysOf: number[]
  readonly whole: boolean[]
  readonly state: number[]
  readonly fixedStart: number[]
  readonly before: (readonly number[])[]
  readonly lag: (readonly number[])[]
  readonly names: string[]
  readonly orders: {
    readonly id: string
    readonly first: number
    readonly end: number
    readonly due: number
    readonly weight: number
  }[]
}

const setupMinutes = (station: Station, from: string, to: string): number => {
  if (from === to) return 0
  const rule =
    station.setups.find((one) => one.from === from && one.to === to) ??
    station.setups.find((one) => one.from === '*' && one.to === to) ??
    station.setups.find((one) => one.from === from && one.to === '*') ??
    station.setups.find((one) => one.from === '*' && one.to === '*')
  return rule?.minutes ?? 0
}

/**
 * Set-up minutes of one station between all families, row by row. After work without a family (0) nobody knows how the station
 * stands, so the longest change into the next family counts.
 */
export const setupTable = (station: Station, families: readonly string[]): Int32Array => {
  const size = families.length
  const table = new Int32Array(station.setups.length === 0 ? 0 : size * size)
  for (let to = 1; to < size && table.length > 0; to += 1) {
    for (let from = 1; from < size; from += 1) {
      const needed = setupMinutes(station, families[from] ?? '', families[to] ?? '')
      table[from * size + to] = needed
      table[to] = Math.max(table[to] ?? 0, needed)
    }
  }
  return table
}

const familyOf = (model: Model, name: string | null): number => {
  if (name === null) return 0
  const found = model.known.families.get(name)
  if (found !== undefined) return found
  model.families.push(name)
  model.known.families.set(name, model.families.length - 1)
  model.stations.forEach((station, index) => {
    model.setups[index] = setupTable(station, model.families)
  })
  return model.families.length - 1
}

const crewingOf = (model: Model, stations: readonly number[]): number => {
  const key = stations.join(' ')
  const found = model.known.crewings.get(key)
  if (found !== undefined) return found
  const axes = stations.flatMap((index) => model.stations[index]?.axis ?? [])
  const axis = axes.reduce((all, one) => (all === alwaysOpen ? one : intersect(all, one)), alwaysOpen)
  model.crewings.push({ stations: Int32Array.from(stations), axis })
  model.known.crewings.set(key, model.crewings.length - 1)
  return model.crewings.length - 1
}

const combinations = (lists: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  lists.reduce<readonly (readonly number[])[]>(
    (all, list) => all.flatMap((chosen) => list.filter((one) => !chosen.includes(one)).map((one) => [...chosen, one])),
    [[]],
  )

const waysFor = (model: Model, operation: Operation): number => {
  const needs = operation.started !== null && operation.on !== null ? operation.on.map((id) => [id]) : operation.needs
  const key = `${operation.splittable ? 0 : operation.minutes}|${needs.map((list) => list.join(' ')).join('|')}`
  const found = model.known.ways.get(key)
  if (found !== undefined) return found
  const lists = needs.map((list) => list.flatMap((id) => model.stationIndex.get(id) ?? []))
  const all = combinations(lists).map((stations) => crewingOf(model, stations))
  const least = operation.splittable ? 1 : operation.minutes
  model.ways.push(Int32Array.from(all.filter((index) => (model.crewings[index]?.axis.longest ?? 0) >= least)))
  model.known.ways.set(key, model.ways.length - 1)
  return model.ways.length - 1
}

const isInOrder = (operations: readonly Operation[]): boolean => {
  const seen = new Set<string>()
  for (const one of operations) {
    for (const after of one.after) if (!seen.has(after.operation)) return false
    seen.add(one.id)
  }
  return true
}

/** Operations with every one after those it waits for; fewer than given when they wait in a circle. */
export const inOrder = (operations: readonly Operation[]): readonly Operation[] => {
  if (isInOrder(operations)) return operations
  const sorted: Operation[] = []
  const seen = new Set<string>()
  let rest = operations
  for (;;) {
    const ready = rest.filter((one) => one.after.every((after) => seen.has(after.operation)))
    if (ready.length === 0) return sorted
    for (const one of ready) seen.add(one.id)
    sorted.push(...ready)
    rest = rest.filter((one) => !seen.has(one.id))
  }
}

const stateOf = (operation: Operation): number => {
  if (operation.done !== null) return over
  return operation.started === null ? free : begun
}

const addOperation = (model: Model, operation: Operation, places: ReadonlyMap<string, number>): void => {
  model.order.push(model.orders.length)
  model.work.push(operation.minutes)
  model.release.push(Math.max(model.now, operation.release ?? 0))
  model.family.push(familyOf(model, operation.family))
  model.waysOf.push(waysFor(model, operation))
  model.whole.push(!operation.splittable)
  model.state.push(stateOf(operation))
  model.fixedStart.push(operation.done ?? operation.started ?? -1)
  model.before.push(operation.after.map((one) => places.get(one.operation) ?? -1))
  model.lag.push(operation.after.map((one) => one.lagMinutes))
  model.names.push(operation.id)
}

/** Appends an order to the model; returns its index. */
export const addOrder = (model: Model, order: BookOrder): number => {
  const first = model.work.length
  const places = new Map<string, number>()
  for (const operation of inOrder(order.operations)) {
    places.set(operation.id, model.work.length)
    addOperation(model, operation, places)
  }
  model.orders.push({ id: order.id, first, end: model.work.length, due: dueOf(order), weight: order.weight })
  return model.orders.length - 1
}

/** Takes the order that was appended last off again. */
export const dropLastOrder = (model: Model): void => {
  const order = model.orders.pop()
  if (order === undefined) return
  const { first } = order
  for (const column of [model.order, model.work, model.release, model.family, model.waysOf, model.state, model.fixedStart]) {
    column.length = first
  }
  model.whole.length = first
  model.before.length = first
  model.lag.length = first
  model.names.length = first
}

/** A model of the stations with no order in it. */
export const emptyModel = (now: number, stations: readonly Station[]): Model => ({
  now,
  stations,
  stationIndex: new Map(stations.map((station, index) => [station.id, index])),
  families: [''],
  setups: stations.map((station) => setupTable(station, [''])),
  crewings: [],
  ways: [],
  known: { crewings: new Map(), ways: new Map(), families: new Map() },
  order: [],
  work: [],
  release: [],
  family: [],
  waysOf: [],
  whole: [],
  state: [],
  fixedStart: [],
  before: [],
  lag: [],
  names: [],
  orders: [],
})
