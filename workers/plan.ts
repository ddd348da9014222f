import type { Desk } from '../src/desk/service/desk.ts'
import { planOrders } from '../src/desk/service/plan-orders.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const plan =
  (desk: Desk): Handlers['plan'] =>
  (step) =>
    planOrders(desk, step)
