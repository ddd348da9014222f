import type { Desk } from '../src/desk/service/desk.ts'
import { lapseHolds } from '../src/desk/service/lapse-holds.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const remind =
  (desk: Desk): Handlers['remind'] =>
  () =>
    lapseHolds(desk)
