import type { Desk } from '../src/desk/service/desk.ts'
import { forgetDue } from '../src/desk/service/forget-order.ts'
import { lapseHolds } from '../src/desk/service/lapse-holds.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const remind =
  (desk: Desk): Handlers['remind'] =>
  async () => {
    await lapseHolds(desk)
    await forgetDue(desk)
  }
