import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type { Finding, StoredTicket, Tick, TicketState, Tickets } from '../../../ports/work-records.ts'
import { json, text } from './json.ts'
import { atomic, type Scope } from './tables.ts'
import { alreadyThere, outdated } from './versions.ts'

const columns = ['ticketId', 'orderId', 'revision', 'number', 'state', 'replacedBy', 'body', 'version'] as const

const read = async ({ db, shopId }: Scope, ticketId: string): Promise<StoredTicket | null> => {
  const row = await db
    .selectFrom('ticket')
    .select(columns)
    .where('shopId', '=', shopId)
    .where('ticketId', '=', ticketId)
    .executeTakeFirst()
  return row ?? null
}

const nextNumber = async ({ db, shopId }: Scope): Promise<number> => {
  const row = await db
    .updateTable('shop')
    .set({ ticketNumber: sql<number>`ticket_number + 1` })
    .where('shopId', '=', shopId)
    .returning('ticketNumber')
    .executeTakeFirstOrThrow()
  return row.ticketNumber
}

const add = (outer: Scope, ticket: Pick<StoredTicket, 'ticketId' | 'orderId' | 'revision' | 'body'>): Kept<StoredTicket> =>
  atomic(outer, async (scope) => {
    // The shop's row is held by now: whoever adds the same ticket at the same time waits here and then sees ours.
    const number = await nextNumber(scope)
    const row = await scope.db
      .insertInto('ticket')
      .values({ shopId: scope.shopId, ...ticket, number, state: 'open', body: json(ticket.body) })
      .onConflict((on) => on.doNothing())
      .returning(columns)
      .executeTakeFirst()
    return row === undefined ? alreadyThere('ticket', ticket.ticketId) : ok(row)
  })

type Change = { readonly state?: TicketState; readonly replacedBy?: number; readonly body?: unknown }

const change = async (scope: Scope, seen: Seen, { body, ...plain }: Change): Kept<StoredTicket> => {
  const row = await scope.db
    .updateTable('ticket')
    .set({ ...plain, ...(body === undefined ? {} : { body: json(body) }), version: seen.version + 1 })
    .where('shopId', '=', scope.shopId)
    .where('ticketId', '=', seen.id)
    .where('version', '=', seen.version)
    .returning(columns)
    .executeTakeFirst()
  return row === undefined ? outdated('ticket', seen, (await read(scope, seen.id))?.version) : ok(row)
}

const tick = (outer: Scope, seen: Seen, ticks: readonly Tick[]): Kept<StoredTicket> =>
  atomic(outer, async (scope) => {
    const ticket = await change(scope, seen, {})
    if (!ticket.ok || ticks.length === 0) return ticket
    await scope.db
      .insertInto('ticketStep')
      .values(ticks.map((row) => ({ shopId: scope.shopId, ticketId: seen.id, ...row })))
      .onConflict((on) =>
        on
          .columns(['shopId', 'ticketId', 'step', 'line'])
          .doUpdateSet({ state: (row) => row.ref('excluded.state'), by: (row) => row.ref('excluded.by') }),
      )
      .execute()
    return ticket
  })

const ticks = ({ db, shopId }: Scope, ticketId: string): Promise<readonly Tick[]> =>
  db
    .selectFrom('ticketStep')
    .select(['step', 'line', 'state', 'by'])
    .where('shopId', '=', shopId)
    .where('ticketId', '=', ticketId)
    .orderBy('step')
    .orderBy('line')
    .execute()

const find = async ({ db, shopId }: Scope, ticketId: string, finding: Finding): Promise<void> => {
  await db
    .insertInto('finding')
    .values({ shopId, ticketId, ...finding, by: text(finding.by), facts: json(finding.facts) })
    .execute()
}

const findings = async ({ db, shopId }: Scope, ticketId: string): Promise<readonly Finding[]> => {
  const rows = await db
    .selectFrom('finding')
    .select(['code', 'facts', 'by', 'at'])
    .where('shopId', '=', shopId)
    .where('ticketId', '=', ticketId)
    .orderBy('findingId')
    .execute()
  return rows.map((row) => ({ ...row, at: minutes(row.at) }))
}

const ofOrder = ({ db, shopId }: Scope, orderId: string): Promise<readonly StoredTicket[]> =>
  db
    .selectFrom('ticket')
    .select(columns)
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .orderBy('revision')
    .execute()

const list = ({ db, shopId }: Scope, states: readonly TicketState[]): Promise<readonly StoredTicket[]> =>
  db.selectFrom('ticket').select(columns).where('shopId', '=', shopId).where('state', 'in', states).orderBy('number').execute()

export const ticketsIn = (scope: Scope): Tickets => ({
  add: (ticket) => add(scope, ticket),
  read: (ticketId) => read(scope, ticketId),
  ofOrder: (orderId) => ofOrder(scope, orderId),
  list: (states) => list(scope, states),
  change: (seen, changes) => change(scope, seen, changes),
  ticks: (ticketId) => ticks(scope, ticketId),
  tick: (seen, rows) => tick(scope, seen, rows),
  find: (ticketId, finding) => find(scope, ticketId, finding),
  findings: (ticketId) => findings(scope, ticketId),
})
