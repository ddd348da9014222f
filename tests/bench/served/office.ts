import { openStore } from '../../../src/adapters/store/sql/open-store.ts'
import { orderFrom, type ShopPlan } from '../../../src/desk/service/records/records.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import { openTestDesk } from '../../support/desk.ts'
import { unwrap } from '../../support/embedded.ts'
import { plansIn } from '../../support/many-orders.ts'
import type { ServedCrew } from '../../support/served-crew.ts'
import { wholeWish } from '../../support/steady-customer.ts'
import { cpuDuring, domainWork, type Known } from './domain-cost.ts'

/** A desk in this process on the crew's records, to do the domain's part of an order and nothing else. */
export type Office = {
  readonly desk: Awaited<ReturnType<typeof openTestDesk>>
  readonly plan: () => Promise<ShopPlan>
  /** Seconds of processor that the domain, the printer and the picture maker take of so many orders, with the plan as it is. */
  readonly domain: (orders: number) => Promise<number>
  readonly close: () => Promise<void>
}

const planOf = async (crew: ServedCrew): Promise<ShopPlan> => {
  const [plan] = await plansIn(crew.records())
  if (plan === undefined) throw new Error('the shop has no plan yet')
  return plan
}

const knownOf = async (crew: ServedCrew): Promise<Known> => {
  const plan = await planOf(crew)
  const [{ id: orderId } = { id: 'none is sold' }] = plan.sold
  const [row] = await crew.records().rows('select document from platenpost.order_revision where order_id = $1', orderId)
  return { words: wholeWish('Team 1 Herons', 40), document: orderFrom(row?.['document']), plan, orderId }
}

export const openOffice = async (crew: ServedCrew): Promise<Office> => {
  const store = unwrap(await openStore({ address: { connectionString: crew.postgres.ownerUrl }, time: Date.now }))
  const desk = await openTestDesk(store, { at: minutes(Math.floor(Date.now() / 60_000)) })
  const state = { at: 0 }
  return {
    desk,
    plan: () => planOf(crew),
    domain: async (orders) => {
      const known = await knownOf(crew)
      return cpuDuring(async () => {
        for (const last = state.at + orders; state.at < last; state.at += 1) await domainWork(desk, known, state.at)
      })
    },
    close: store.close,
  }
}
