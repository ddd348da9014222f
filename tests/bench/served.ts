import { temporaryFolder } from '../support/embedded.ts'
import { type ServedCrew, startServedCrew } from '../support/served-crew.ts'
import type { Bench, Figure } from './bench.ts'
import { metersTo } from './served/in-place.ts'
import { measure, warmUp } from './served/measure.ts'
import { openOffice } from './served/office.ts'
import { growOpenOrders } from './served/open-orders.ts'
import { overhead } from './served/overhead.ts'
import { planCost } from './served/plan-growth.ts'

/** Said as soon as they are known: the whole takes minutes. */
const told = (figures: readonly Figure[]): readonly Figure[] => {
  for (const { name, value, unit } of figures) process.stderr.write(`    ${name}: ${value.toFixed(1)} ${unit}\n`)
  return figures
}

/** The plan's own growth: what it takes of an order while so many are in it. */
const asThePlanGrows = async (crew: ServedCrew, quick: boolean): Promise<readonly Figure[]> => {
  const office = await openOffice(crew)
  const plan = await office.plan()
  const figures: Figure[] = []
  for (const many of quick ? [100, 300] : [100, 300, 1_000]) {
    const value = (await planCost(office.desk, plan, many)) * 1_000
    figures.push(...told([{ name: `the plan alone, ${many} orders in it`, value, unit: 'ms' }]))
  }
  await office.close()
  return figures
}

/** The same cost looked at again while the shop holds more and more open orders; the plan stays as it is and is measured by itself. */
const asItGrows = async (crew: ServedCrew, quick: boolean): Promise<readonly Figure[]> => {
  const figures: Figure[] = []
  for (const open of quick ? [100, 1_000] : [100, 1_000, 10_000]) {
    await growOpenOrders(crew.records(), open)
    const grown = await measure(crew, { many: quick ? 4 : 20, first: 10_000 + open })
    const name = `processor per order at ${open} open orders`
    figures.push(...told([{ name, value: grown.cpu * 1_000, unit: 'ms' }]))
  }
  return figures
}

const withWorkers = async (workers: number, quick: boolean): Promise<readonly Figure[]> => {
  const crew = await startServedCrew(workers)
  try {
    await warmUp(crew, { many: quick ? 4 : 40, first: 0 })
    const { perMinute } = await measure(crew, { many: quick ? 8 : 40, first: 200 })
    const rate = told([{ name: `orders a minute, ${workers} worker${workers === 1 ? '' : 's'}`, value: perMinute, unit: '' }])
    if (workers !== 2) return rate
    return [...rate, ...(await asItGrows(crew, quick)), ...(await asThePlanGrows(crew, quick))]
  } finally {
    await crew.close()
  }
}

const besidesTheDomain = async (quick: boolean): Promise<readonly Figure[]> => {
  const meters = temporaryFolder()
  const crew = await startServedCrew(1, metersTo(meters.path))
  try {
    return told(await overhead(crew, meters.path, quick))
  } finally {
    await crew.close()
    meters.remove()
  }
}

/** Service, workers, PostgreSQL and Redis as processes of their own; customers come over HTTP, each from its own address. */
export const bench: Bench = async ({ quick }) => [
  ...(await besidesTheDomain(quick)),
  ...(await withWorkers(1, quick)),
  ...(await withWorkers(2, quick)),
  ...(await withWorkers(4, quick)),
]
