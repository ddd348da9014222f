import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { Desk } from '../src/desk/service/desk.ts'
import { postTicket } from '../src/desk/service/ticket/post-ticket.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const post =
  (tenants: Tenants<Desk>): Handlers['post'] =>
  async (step) =>
    postTicket(await tenants(step.shopId), step)
