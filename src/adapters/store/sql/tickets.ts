import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type { Finding, StoredTicket, Tick, TicketState, Tickets } from '../../../ports/work-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledByShape, compiledText } from './compiled.ts'
import { changeOrFail } from './hopeful.ts'
import { json, text } from './json.ts'
import type { Database, Scope } from './tables.ts'
import { ticketRecord } from './ticket-life.ts'
import { alreadyThere, outdated } from './versions.ts'

const columns = ['ticketId', 'orderId', 'revision', 'number', 'state', 'replacedBy', 'body', 'version'] as const

type TicketKey = { readonly shopId: string; readonly ticketId: string }

const theTicket = compiled((db, { shopId, ticketId }: TicketKey) =>
  db.selectFrom('ticket').select(columns).where('shopId', '=', shopId).where('ticketId', '=', ticketId),
)

const read = async ({ db, shopId }: Scope, ticketId: string): Promise<StoredTicket | null> =>
  (await theTicket.first(db, { shopId, ticketId })) ?? null

type NewTicket = TicketKey & { readonly orderId: string; readonly revision: number; readonly body: string }

/** The shop's row is held from its number on: whoever adds the same ticket at the same time waits for it and then sees ours. */
const addTicket = compiledText(
  ({ shopId, ticketId, orderId, revision, body }: NewTicket) => sql<StoredTicket>`
  with numbered as (update shop set ticket_number = ticket_number + 1 where shop_id = ${shopId} returning ticket_number)
  insert into ticket (shop_id, ticket_id, order_id, revision, number, state, body)
  select ${shopId}, ${ticketId}, ${orderId}, ${revision}::int, ticket_number, 'open', ${body}::jsonb from numbered
  on conflict do nothing
  returning ticket_id, order_id, revision, number, state, replaced_by, body, version`,
)

type Added = Pick<StoredTicket, 'ticketId' | 'orderId' | 'revision' | 'body'>

const add = async ({ db, shopId }: Scope, { ticketId, orderId, revision, body }: Added): Kept<StoredTicket> => {
  const row = await addTicket.first(db, { shopId, ticketId, orderId, revision, body: json(body) })
  return row === undefined ? alreadyThere('ticket', ticketId) : ok(row)
}

type Change = { readonly state?: TicketState; readonly replacedBy?: number; readonly body?: unknown }

type Changed = TicketKey & { readonly seen: number; readonly version: number } & Omit<Change, 'body'> & { readonly body?: string }

const raising = (db: Database, values: Changed, shape: readonly string[]) => {
  const all = { state: values.state, replacedBy: values.replacedBy, body: values.body }
  return db
    .updateTable('ticket')
    .set({ ...Object.fromEntries(Object.entries(all).filter(([name]) => shape.includes(name))), version: values.version })
    .where('shopId', '=', values.shopId)
    .where('ticketId', '=', values.ticketId)
    .where('version', '=', values.seen)
    .returning('version')
}

const raise = compiledByShape(raising)
const raiseLater = compiledByShape((db, values: Changed, shape) => changeOrFail(db, raising(db, values, shape)))

const change = async (scope: Scope, seen: Seen, { body, ...plain }: Change): Kept<Seen> => {
  const changes = { ...plain, ...(body === undefined ? {} : { body: json(body) }) }
  const shape = Object.keys(changes).sort()
  const changed = { id: seen.id, version: seen.version + 1 }
  const key = { shopId: scope.shopId, ticketId: seen.id, seen: seen.version, version: changed.version }
  if (scope.hopeful === true) {
    await raiseLater(shape).all(scope.db, { ...key, ...changes })
    return ok(changed)
  }
  const row = await raise(shape).first(scope.db, { ...key, ...changes })
  return row === undefined ? outdated('ticket', seen, (await read(scope, seen.id))?.version) : ok(changed)
}

const tick = (outer: Scope, seen: Seen, ticks: readonly Tick[]): Kept<Seen> =>
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

const ofOneOrder = compiled((db, { shopId, orderId }: { readonly shopId: string; readonly orderId: string }) =>
  db.selectFrom('ticket').select(columns).where('shopId', '=', shopId).where('orderId', '=', orderId).orderBy('revision'),
)

const ofOrder = ({ db, shopId }: Scope, orderId: string): Promise<readonly StoredTicket[]> =>
  ofOneOrder.all(db, { shopId, orderId })

const list = ({ db, shopId }: Scope, states: readonly TicketState[]): Promise<readonly StoredTicket[]> =>
  db.selectFrom('ticket').select(columns).where('shopId', '=', shopId).where('state', 'in', states).orderBy('number').execute()

export const ticketsIn = (scope: Scope): Tickets => ({
  add: (ticket) => add(scope, ticket),
  read: (ticketId) => read(scope, ticketId),
  record: (ticketId) => ticketRecord(scope, ticketId),
  ofOrder: (orderId) => ofOrder(scope, orderId),
  list: (states) => list(scope, states),
  change: (seen, changes) => change(scope, seen, changes),
  ticks: (ticketId) => ticks(scope, ticketId),
  tick: (seen, rows) => tick(scope, seen, rows),
  find: (ticketId, finding) => find(scope, ticketId, finding),
  findings: (ticketId) => findings(scope, ticketId),
})
