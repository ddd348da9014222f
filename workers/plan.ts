import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { Desk } from '../src/desk/service/desk.ts'
import { planOrders } from '../src/desk/service/plan-orders.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const plan =
  (tenants: Tenants<Desk>): Handlers['plan'] =>
  async (step) =>
    planOrders(await tenants(step.shopId), step)
