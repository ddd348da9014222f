import { openStore } from '../../src/adapters/store/sql/open-store.ts'
import { orderFrom, type ShopPlan } from '../../src/desk/service/records.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { openTestDesk } from '../support/desk.ts'
import { unwrap } from '../support/embedded.ts'
import { plansIn } from '../support/many-orders.ts'
import { type ServedCrew, startServedCrew } from '../support/served-crew.ts'
import { wholeWish } from '../support/steady-customer.ts'
import type { Bench, Figure } from './bench.ts'
import { cpuDuring, domainWork } from './served/domain-cost.ts'
import { measure, type Run } from './served/measure.ts'
import { noOpFlow } from './served/no-op-flow.ts'
import { growOpenOrders } from './served/open-orders.ts'
import { planCost } from './served/plan-growth.ts'

/** Said as soon as they are known: the whole takes minutes. */
const told = (figures: readonly Figure[]): readonly Figure[] => {
  for (const { name, value, unit } of figures) process.stderr.write(`    ${name}: ${value.toFixed(1)} ${unit}\n`)
  return figures
}

type Office = { readonly desk: Awaited<ReturnType<typeof openTestDesk>>; readonly close: () => Promise<void> }

/** A desk in this process on the crew's records. */
const openOffice = async (crew: ServedCrew): Promise<Office> => {
  const store = unwrap(await openStore({ address: { connectionString: crew.postgres.ownerUrl }, time: Date.now }))
  const desk = await openTestDesk(store, { at: minutes(Math.floor(Date.now() / 60_000)) })
  return { desk, close: store.close }
}

const planOf = async (crew: ServedCrew): Promise<ShopPlan> => {
  const [plan] = await plansIn(crew.records())
  if (plan === undefined) throw new Error('the shop has no plan yet')
  return plan
}

/** What the domain, the printer and the picture maker take of each order, in this process, warm, with the plan as it is now. */
const domainCost = async (crew: ServedCrew, many: number): Promise<number> => {
  const { desk, close } = await openOffice(crew)
  const [row] = await crew
    .records()
    .rows(`select order_id, document from platenpost.order_revision where document is not null limit 1`)
  const known = {
    words: wholeWish('Team 1 Herons', 40),
    document: orderFrom(row?.['document']),
    plan: await planOf(crew),
    orderId: String(row?.['order_id']),
  }
  for (let at = 0; at < many; at += 1) await domainWork(desk, known, at)
  const spent = await cpuDuring(async () => {
    for (let at = 0; at < many; at += 1) await domainWork(desk, known, many + at)
  })
  await close()
  return spent / many
}

/** The plan's own growth: what it takes of an order while so many are in it. */
const asThePlanGrows = async (crew: ServedCrew, quick: boolean): Promise<readonly Figure[]> => {
  const { desk, close } = await openOffice(crew)
  const plan = await planOf(crew)
  const figures: Figure[] = []
  for (const many of quick ? [100, 300] : [100, 300, 1_000]) {
    const value = (await planCost(desk, plan, many)) * 1_000
    figures.push(...told([{ name: `the plan alone, ${many} orders in it`, value, unit: 'ms' }]))
  }
  await close()
  return figures
}

const floorOf = (crew: ServedCrew, { jobs, transactions, bytes }: Run, orders: number): Promise<number> => {
  const load = {
    redis: crew.redis.url,
    postgres: crew.postgres.ownerUrl,
    jobsPerOrder: jobs,
    transactionsPerJob: transactions / jobs,
    bytesPerTransaction: Math.round(bytes / transactions),
  }
  return noOpFlow(load, { postgres: crew.postgres.pid(), redis: crew.redis.pid() }, orders)
}

const overhead = async (crew: ServedCrew, run: Run, many: number): Promise<readonly Figure[]> => {
  const domain = await domainCost(crew, many)
  const floor = await floorOf(crew, run, Math.max(many, 20))
  const { service, workers, postgres, redis } = run.spent
  return [
    { name: 'processor per order, all processes', value: run.cpu * 1_000, unit: 'ms' },
    { name: '  service', value: service * 1_000, unit: 'ms' },
    { name: '  workers', value: workers * 1_000, unit: 'ms' },
    { name: '  PostgreSQL', value: postgres * 1_000, unit: 'ms' },
    { name: '  Redis', value: redis * 1_000, unit: 'ms' },
    { name: '  of which domain, paper and picture', value: domain * 1_000, unit: 'ms' },
    { name: '  overhead', value: (run.cpu - domain) * 1_000, unit: 'ms' },
    { name: 'floor: no-op flow, same jobs, transactions, bytes', value: floor * 1_000, unit: 'ms' },
    { name: 'overhead over its floor', value: (run.cpu - domain) / floor, unit: '×', most: 1.5 },
    { name: 'jobs per order', value: run.jobs, unit: '' },
    { name: 'kept transactions per order', value: run.transactions, unit: '' },
    { name: 'bytes of the log per order', value: run.bytes / 1_024, unit: 'KB' },
  ]
}

/** The same cost looked at again while the shop holds more and more open orders; the plan stays as it is and is measured by itself. */
const asItGrows = async (crew: ServedCrew, quick: boolean): Promise<readonly Figure[]> => {
  const figures: Figure[] = []
  for (const open of quick ? [100, 1_000] : [100, 1_000, 10_000]) {
    await growOpenOrders(crew.records(), open)
    const grown = await measure(crew, quick ? 4 : 20, 1_000 + open)
    const name = `processor per order at ${open} open orders`
    figures.push(...told([{ name, value: grown.cpu * 1_000, unit: 'ms' }]))
  }
  return figures
}

const withWorkers = async (workers: number, quick: boolean): Promise<readonly Figure[]> => {
  const crew = await startServedCrew(workers)
  try {
    // What a process does for the first time costs its compiling: orders, domain and floor are all measured warm.
    await measure(crew, quick ? 4 : 20, 0)
    const run = await measure(crew, quick ? 8 : 40, 100)
    const rate = { name: `orders a minute, ${workers} worker${workers === 1 ? '' : 's'}`, value: run.perMinute, unit: '' }
    const more = workers === 1 ? await overhead(crew, run, quick ? 5 : 20) : []
    const figures = told([rate, ...more])
    if (workers !== 2) return figures
    return [...figures, ...(await asItGrows(crew, quick)), ...(await asThePlanGrows(crew, quick))]
  } finally {
    await crew.close()
  }
}

/** Service, workers, PostgreSQL and Redis as processes of their own; customers come over HTTP, each from its own address. */
export const bench: Bench = async ({ quick }) => [
  ...(await withWorkers(1, quick)),
  ...(await withWorkers(2, quick)),
  ...(await withWorkers(4, quick)),
]
