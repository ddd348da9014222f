import { intervalsOf } from '../../calendar/axis.ts'
import {
  type Book,
  type BookOrder,
  type Operation,
  type SetUp,
  type Slot,
  type Station,
  slotsByOrder,
} from '../book/operation.ts'

/** A rule that a plan breaks, and by which operation. */
export type Breach = {
  readonly rule:
    | 'missing'
    | 'twice'
    | 'unknown'
    | 'wrong-stations'
    | 'before-now'
    | 'before-release'
    | 'before-predecessor'
    | 'closed'
    | 'wrong-length'
    | 'overlap'
    | 'set-up'
    | 'started-moved'
  readonly order: string
  readonly operation: string
}

type Placed = { readonly slot: Slot; readonly operation: Operation }

/** Open minutes of all stations together between two instants, counted by intersecting plain lists. */
const openTogether = (
  stations: readonly Station[],
  from: number,
  to: number,
): { readonly minutes: number; readonly pieces: number } => {
  let spans = [{ start: from, end: to }]
  for (const station of stations) {
    const open = openNear(station, from, to)
    spans = spans.flatMap((span) =>
      open
        .map((one) => ({ start: Math.max(one.start, span.start), end: Math.min(one.end, span.end) }))
        .filter((one) => one.end > one.start),
    )
  }
  return { minutes: spans.reduce((sum, span) => sum + span.end - span.start, 0), pieces: spans.length }
}

const intervalCache = new WeakMap<Station, readonly { readonly start: number; readonly end: number }[]>()

const openNear = (station: Station, from: number, to: number): readonly { readonly start: number; readonly end: number }[] => {
  const all = intervalCache.get(station) ?? intervalsOf(station.axis)
  intervalCache.set(station, all)
  let low = 0
  let high = all.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((all[middle]?.end ?? 0) > from) high = middle
    else low = middle + 1
  }
  const near: { readonly start: number; readonly end: number }[] = []
  for (let index = low; index < all.length; index += 1) {
    const one = all[index]
    if (one === undefined || one.start >= to) break
    near.push(one)
  }
  return near
}

const staffed = (operation: Operation, chosen: readonly string[]): boolean => {
  const needs = operation.started !== null && operation.on !== null ? operation.on.map((id) => [id]) : operation.needs
  if (chosen.length !== needs.length || new Set(chosen).size !== chosen.length) return false
  return needs.every((list, index) => list.includes(chosen[index] ?? ''))
}

const rulesOfSlot = (
  { slot, operation }: Placed,
  book: Book,
  stations: ReadonlyMap<string, Station>,
): readonly Breach['rule'][] => {
  if (operation.started !== null) return slot.start === operation.started ? [] : ['started-moved']
  const rules: Breach['rule'][] = []
  if (!staffed(operation, slot.stations)) rules.push('wrong-stations')
  if (slot.start < book.now) rules.push('before-now')
  if (operation.release !== null && slot.start < operation.release) rules.push('before-release')
  const held = slot.stations.flatMap((id) => stations.get(id) ?? [])
  const open = openTogether(held, slot.start, slot.end)
  if (open.minutes !== operation.minutes) rules.push(slot.end - slot.start < operation.minutes ? 'wrong-length' : 'closed')
  else if (!operation.splittable && slot.end - slot.start !== operation.minutes) rules.push('closed')
  return rules
}

const rulesOfOrder = (order: BookOrder, placed: ReadonlyMap<string, Placed>): readonly Breach[] =>
  order.operations.flatMap((operation) => {
    const own = placed.get(operation.id)
    if (own === undefined || operation.started !== null) return []
    const early = operation.after.some((after) => {
      const before = order.operations.find((one) => one.id === after.operation)
      const end = before?.done ?? placed.get(after.operation)?.slot.end ?? 0
      return own.slot.start < end + after.lagMinutes
    })
    return early ? [{ rule: 'before-predecessor', order: order.id, operation: operation.id } as const] : []
  })

const minutesToChange = (rules: readonly SetUp[], from: string | null, to: string | null): number => {
  if (from === null || to === null || from === to) return 0
  const fits = (one: SetUp, a: string, b: string): boolean => one.from === a && one.to === b
  const pairs = [
    [from, to],
    ['*', to],
    [from, '*'],
    ['*', '*'],
  ] as const
  for (const [a, b] of pairs) {
    const rule = rules.find((one) => fits(one, a, b))
    if (rule !== undefined) return rule.minutes
  }
  return 0
}

const rulesOfStation = (station: Station, placed: readonly Placed[]): readonly Breach[] => {
  const sorted = placed.toSorted((a, b) => a.slot.start - b.slot.start)
  return sorted.flatMap((one, index): readonly Breach[] => {
    const before = sorted[index - 1]
    if (before === undefined) return []
    const at = { order: one.slot.order, operation: one.slot.operation }
    if (before.slot.end > one.slot.start) return [{ rule: 'overlap', ...at }]
    const needed = minutesToChange(station.setups, before.operation.family, one.operation.family)
    const gap = needed === 0 ? 0 : openTogether([station], before.slot.end, one.slot.start).minutes
    return gap < needed ? [{ rule: 'set-up', ...at }] : []
  })
}

const placedOf = (
  order: BookOrder,
  slots: readonly Slot[],
): { readonly placed: ReadonlyMap<string, Placed>; readonly breaches: readonly Breach[] } => {
  const placed = new Map<string, Placed>()
  const breaches: Breach[] = []
  const byId = new Map(order.operations.map((operation) => [operation.id, operation]))
  for (const slot of slots) {
    const operation = byId.get(slot.operation)
    const at = { order: order.id, operation: slot.operation }
    if (operation === undefined || operation.done !== null) breaches.push({ rule: 'unknown', ...at })
    else if (placed.has(operation.id)) breaches.push({ rule: 'twice', ...at })
    else placed.set(operation.id, { slot, operation })
  }
  for (const operation of order.operations) {
    if (operation.done === null && !placed.has(operation.id))
      breaches.push({ rule: 'missing', order: order.id, operation: operation.id })
  }
  return { placed, breaches }
}

/**
 * Every rule a plan breaks, judged from the book and the slots alone: nothing of the planner is trusted or used. An empty list is
 * a sound plan. Promises are not judged here, see `brokenPromises`.
 */
export const verify = (book: Book, slots: readonly Slot[]): readonly Breach[] => {
  const stations = new Map(book.stations.map((station) => [station.id, station]))
  const groups = slotsByOrder(slots)
  const onStation = new Map<string, Placed[]>(book.stations.map((station) => [station.id, []]))
  const breaches: Breach[] = []
  for (const order of book.orders) {
    const { placed, breaches: own } = placedOf(order, groups.get(order.id) ?? [])
    breaches.push(...own, ...rulesOfOrder(order, placed))
    for (const one of placed.values()) {
      for (const rule of rulesOfSlot(one, book, stations)) breaches.push({ rule, order: order.id, operation: one.operation.id })
      for (const id of one.slot.stations) onStation.get(id)?.push(one)
    }
  }
  const orders = new Set(book.orders.map((order) => order.id))
  for (const slot of slots) {
    if (!orders.has(slot.order)) breaches.push({ rule: 'unknown', order: slot.order, operation: slot.operation })
  }
  return [...breaches, ...book.stations.flatMap((station) => rulesOfStation(station, onStation.get(station.id) ?? []))]
}

/** Orders with a promise that the slots do not keep. */
export const brokenPromises = (book: Book, slots: readonly Slot[]): readonly string[] => {
  const ends = new Map<string, number>()
  for (const slot of slots) ends.set(slot.order, Math.max(ends.get(slot.order) ?? 0, slot.end))
  return book.orders
    .filter((order) => order.promised !== null && (ends.get(order.id) ?? 0) > order.promised)
    .map((order) => order.id)
}
