import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { printTicket } from '../src/desk/service/ticket/print-ticket.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const ticket =
  (tenants: Tenants<WorkerDesk>): Handlers['ticket'] =>
  async (step) =>
    printTicket(await tenants(step.shopId), step)
