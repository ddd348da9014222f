import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { quoteOrder } from '../src/desk/service/quote-order.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const quote =
  (desk: WorkerDesk): Handlers['quote'] =>
  (step) =>
    quoteOrder(desk, step)
