import type { Desk } from '../src/desk/service/desk.ts'
import { postTicket } from '../src/desk/service/post-ticket.ts'
import type { Handlers } from '../src/ports/queue.ts'

export const post =
  (desk: Desk): Handlers['post'] =>
  (step) =>
    postTicket(desk, step)
