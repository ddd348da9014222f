import { joinedPressure } from './pressure.ts'
import type { SetUp } from './set-ups.ts'

/** What has to be changed at the press between two set-ups, dearest first; compared in minutes of common practice. */
const changeMinutes = { machine: 1, temperature: 10, pressure: 2, pad: 3 }

const first = (setUp: SetUp) => setUp.heats[0]
const last = (setUp: SetUp) => setUp.heats[setUp.heats.length - 1]

/** Press, temperature, pressure, pad: set-ups of one family follow each other without a change. */
export const familyOf = (setUp: SetUp): string =>
  [
    setUp.machine.id,
    setUp.heats.map((heat) => heat.tenthsC).join('/'),
    setUp.heats.map((heat) => joinedPressure(heat.group.members)).join('/'),
    setUp.inside,
  ].join(' ')

/** Minutes lost between one set-up and the next. */
export const changeBetween = (before: SetUp, after: SetUp): number => {
  if (before.machine.id !== after.machine.id) return changeMinutes.machine
  const [from, to] = [last(before), first(after)]
  if (from === undefined || to === undefined) return 0
  const temperature = from.tenthsC === to.tenthsC ? 0 : changeMinutes.temperature
  const pressure = joinedPressure(from.group.members) === joinedPressure(to.group.members) ? 0 : changeMinutes.pressure
  return temperature + pressure + (before.inside === after.inside ? 0 : changeMinutes.pad)
}

type Course = { readonly minutes: number; readonly order: readonly SetUp[] }

/** Above this many states the exact search gives way to taking the nearest set-up each time. */
const exactStates = 20_000

const heads = (chains: readonly (readonly SetUp[])[], at: readonly number[]) =>
  chains.flatMap((chain, index) => {
    const head = chain[at[index] ?? 0]
    return head === undefined ? [] : [{ head, index }]
  })

const nearest = (chains: readonly (readonly SetUp[])[]): readonly SetUp[] => {
  const order: SetUp[] = []
  let at = chains.map(() => 0)
  for (let open = heads(chains, at); open.length > 0; open = heads(chains, at)) {
    const before = order[order.length - 1]
    const cost = ({ head }: (typeof open)[number]): number => (before === undefined ? 0 : changeBetween(before, head))
    const best = open.reduce((least, one) => (cost(one) < cost(least) ? one : least))
    order.push(best.head)
    at = at.with(best.index, (at[best.index] ?? 0) + 1)
  }
  return order
}

const exact = (chains: readonly (readonly SetUp[])[]): readonly SetUp[] => {
  const known = new Map<string, Course>()
  const courseFrom = (at: readonly number[], before: number): Course => {
    const key = `${at.join(',')}|${before}`
    const stored = known.get(key)
    if (stored !== undefined) return stored
    const done = before < 0 ? undefined : chains[before]?.[(at[before] ?? 1) - 1]
    const courses = heads(chains, at).map(({ head, index }): Course => {
      const rest = courseFrom(at.with(index, (at[index] ?? 0) + 1), index)
      const change = done === undefined ? 0 : changeBetween(done, head)
      return { minutes: rest.minutes + change, order: [head, ...rest.order] }
    })
    const best = courses.reduce<Course | null>(
      (least, one) => (least === null || one.minutes < least.minutes ? one : least),
      null,
    )
    const course = best ?? { minutes: 0, order: [] }
    known.set(key, course)
    return course
  }
  return courseFrom(
    chains.map(() => 0),
    -1,
  ).order
}

/**
 * The order in which the set-ups of all garments are pressed: each garment's own order is kept, and among the rest the
 * course that changes temperature, pad and pressure least (exact for small orders, nearest next for large ones).
 */
export const orderSetUps = (chains: readonly (readonly SetUp[])[]): readonly SetUp[] => {
  const states = chains.reduce((product, chain) => product * (chain.length + 1), Math.max(1, chains.length))
  return states <= exactStates ? exact(chains) : nearest(chains)
}
