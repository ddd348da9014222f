import { alwaysOpen } from '../../src/domain/calendar/axis.ts'
import type { Book, BookOrder, Operation, Station } from '../../src/domain/schedule/book/operation.ts'
import type { Model } from '../../src/domain/schedule/timeline/model.ts'
import type { Objective } from '../../src/domain/schedule/timeline/objective.ts'
import { compile } from '../../src/domain/schedule/verify/compile.ts'
import { minutes } from '../../src/domain/units/units.ts'

/** What the textbooks minimise, in the planner's terms. */
const none: Objective = { late: 0, tardiness: 0, capMinutes: 1e9, completion: 0, setup: 0, makespan: 0 }
export const objectives = {
  lateOrders: { ...none, late: 1 },
  tardiness: { ...none, tardiness: 1 },
  completion: { ...none, completion: 1 },
  makespan: { ...none, makespan: 1 },
} as const

export const machine = (id: string, over: Partial<Station> = {}): Station => ({
  id,
  kind: 'bench',
  axis: alwaysOpen,
  setups: [],
  ...over,
})

export const operation = (id: string, over: Partial<Operation> = {}): Operation => ({
  id,
  minutes: 1,
  needs: [['a']],
  family: null,
  splittable: false,
  after: [],
  release: null,
  started: null,
  done: null,
  on: null,
  ...over,
})

export const bookOrder = (id: string, over: Partial<BookOrder> = {}): BookOrder => ({
  id,
  needBy: minutes(0),
  promised: null,
  weight: 1,
  operations: [],
  ...over,
})

export type Jobs = { readonly p: readonly number[]; readonly w?: readonly number[]; readonly d?: readonly number[] }

/** Jobs on identical machines that never close, from minute 0. */
export const jobsBook = ({ p, w, d }: Jobs, machines = 1): Book => {
  const stations = Array.from({ length: machines }, (_, index) => machine(`m${index}`))
  const needs = [stations.map((one) => one.id)]
  const orders = p.map((work, index) =>
    bookOrder(`o${index}`, {
      needBy: minutes(d?.[index] ?? 0),
      weight: w?.[index] ?? 1,
      operations: [operation('a', { minutes: work, needs })],
    }),
  )
  return { now: minutes(0), stations, orders }
}

/** A flow shop, `p[machine][job]`. */
export const flowShopBook = (p: readonly (readonly number[])[]): Book => {
  const stations = p.map((_, index) => machine(`m${index}`))
  const orders = (p[0] ?? []).map((_, job) =>
    bookOrder(`o${job}`, {
      operations: p.map((row, index) =>
        operation(`a${index}`, {
          minutes: row[job] ?? 1,
          needs: [[`m${index}`]],
          after: index === 0 ? [] : [{ operation: `a${index - 1}`, lagMinutes: 0 }],
        }),
      ),
    }),
  )
  return { now: minutes(0), stations, orders }
}

export const modelOf = (book: Book): Model => {
  const model = compile(book)
  if (!model.ok) throw new Error(`the book cannot be planned: ${JSON.stringify(model.problems)}`)
  return model.value
}

/** E. Taillard's generator (EJOR 64, 1993): processing times from 1 to 99, machine by machine, job by job. */
export const taillardTimes = (jobs: number, machines: number, seed: number): number[][] => {
  let state = seed
  const next = (): number => {
    const k = Math.floor(state / 127_773)
    state = 16_807 * (state - k * 127_773) - k * 2_836
    if (state < 0) state += 2_147_483_647
    return 1 + Math.floor((state / 2_147_483_647) * 99)
  }
  return Array.from({ length: machines }, () => Array.from({ length: jobs }, next))
}
