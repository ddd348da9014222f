import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { quoteOrder } from '../src/desk/service/quote/quote-order.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const quote =
  (tenants: Tenants<WorkerDesk>): Handlers['quote'] =>
  async (step) =>
    quoteOrder(await tenants(step.shopId), step)
