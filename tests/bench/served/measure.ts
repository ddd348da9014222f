import { callOff, followOrders, makeOrders } from '../../support/many-orders.ts'
import type { ServedCrew } from '../../support/served-crew.ts'
import type { Records } from '../../support/service-watch.ts'
import type { SteadyCustomer } from '../../support/steady-customer.ts'
import { cpuOf } from './cpu.ts'

/** Seconds of processor per order. */
export type Spent = { readonly service: number; readonly workers: number; readonly postgres: number; readonly redis: number }

export const allOf = ({ service, workers, postgres, redis }: Spent): number => service + workers + postgres + redis

export type Run = {
  readonly perMinute: number
  readonly spent: Spent
  /** All of it. */
  readonly cpu: number
  /** Questions of those who look on, each a transaction. */
  readonly asked: number
  readonly customers: readonly SteadyCustomer[]
}

/** Customers who order at once, and whom the first of them is. */
export type Load = { readonly many: number; readonly first: number }

const atOnce = 8

/** Whoever looks on asks over one connection: what its questions cost is no cost of an order. */
type Observer = { readonly records: () => Records; readonly asked: () => number; readonly backend: number }

const observe = async (crew: ServedCrew): Promise<Observer> => {
  const [row] = await crew.records().rows('select pg_backend_pid() as pid')
  const state = { asked: 0 }
  const records: Records = {
    ...crew.records(),
    rows: (text, ...values) => {
      state.asked += 1
      return crew.records().rows(text, ...values)
    },
  }
  return { records: () => records, asked: () => state.asked, backend: Number(row?.['pid']) }
}

const spentBy = (crew: ServedCrew, observer: Observer): Spent => {
  const [service = 0, ...workers] = crew.pids()
  return {
    service: cpuOf([service]),
    workers: cpuOf(workers),
    postgres: cpuOf([crew.postgres.pid()], observer.backend),
    redis: cpuOf([crew.redis.pid()]),
  }
}

/** What was spent between two looks, by so many orders each. */
export const perOrder = (before: Spent, after: Spent, many: number): Spent => ({
  service: (after.service - before.service) / many,
  workers: (after.workers - before.workers) / many,
  postgres: (after.postgres - before.postgres) / many,
  redis: (after.redis - before.redis) / many,
})

/** So many orders from the first word to the ticket, eight customers at a time. */
export const measure = async (crew: ServedCrew, { many, first }: Load): Promise<Run> => {
  const observer = await observe(crew)
  const { records } = observer
  const progress = followOrders(records)
  const customers: SteadyCustomer[] = []
  const after = async (customer: SteadyCustomer): Promise<number> => customers.push(customer)
  const [spent, from] = [spentBy(crew, observer), performance.now()]
  await makeOrders({ front: { address: () => crew.address, records }, progress, many, atOnce, first, after })
  const to = performance.now()
  const all = perOrder(spent, spentBy(crew, observer), many)
  await progress.close()
  return {
    perMinute: many / ((to - from) / 60_000),
    spent: all,
    cpu: allOf(all),
    asked: observer.asked(),
    customers,
  }
}

/** Calls orders off once they are measured, so that the plan is as small for those after them. */
export const leave = async (crew: ServedCrew, customers: readonly SteadyCustomer[]): Promise<void> => {
  const progress = followOrders(crew.records)
  for (const customer of customers) await callOff(progress, customer)
  await progress.close()
}

/** Orders that are called off once their ticket is on the bench: what is done for the first times costs its compiling. */
export const warmUp = async (crew: ServedCrew, load: Load): Promise<void> => {
  const progress = followOrders(crew.records)
  const front = { address: () => crew.address, records: crew.records }
  await makeOrders({ front, progress, ...load, atOnce, after: (customer) => callOff(progress, customer) })
  await progress.close()
}
