import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { Desk } from '../src/desk/service/desk.ts'
import { planOrders } from '../src/desk/service/plan/plan-orders.ts'
import type { Handlers } from '../src/ports/queue.ts'
import type { Background } from './search.ts'

export const plan =
  (tenants: Tenants<Desk>, background: Pick<Background, 'wake'>): Handlers['plan'] =>
  async (step) => {
    await planOrders(await tenants(step.shopId), step)
    background.wake(step.shopId)
  }
