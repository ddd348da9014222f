import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { priceVariant } from '../src/desk/service/quote/price-variant.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const price =
  (tenants: Tenants<WorkerDesk>): Handlers['price'] =>
  async (step) =>
    priceVariant(await tenants(step.shopId), step)
