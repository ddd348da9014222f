import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { printTicket } from '../src/desk/service/print-ticket.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const ticket =
  (desk: WorkerDesk): Handlers['ticket'] =>
  (step) =>
    printTicket(desk, step)
