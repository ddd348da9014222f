import { sql } from 'kysely'
import type { Finding, StoredTicket, Tick, TicketRecord } from '../../../ports/work-records.ts'
import { compiledText } from './compiled.ts'
import { type OrderRow, orderOf } from './order-rows.ts'
import type { Scope } from './tables.ts'

type Row = Omit<OrderRow, 'revision' | 'state' | 'version'> &
  Omit<StoredTicket, 'revision' | 'state' | 'version'> & {
    readonly ofTicket: Pick<StoredTicket, 'revision' | 'state' | 'version'>
    readonly ofOrder: Pick<OrderRow, 'revision' | 'state' | 'version'>
    readonly findings: readonly Finding[]
    readonly ticks: readonly Tick[]
    readonly openRemakes: number
  }

const theRecord = compiledText(
  ({ shopId, ticketId }: { readonly shopId: string; readonly ticketId: string }) => sql<Row>`
  select ticket.ticket_id, ticket.number, ticket.replaced_by, ticket.body,
    json_build_object('revision', ticket.revision, 'state', ticket.state, 'version', ticket.version) as of_ticket,
    ordered.order_id, ordered.conversation_id, ordered.hold, ordered.handed_over_at,
    json_build_object('revision', ordered.revision, 'state', ordered.state, 'version', ordered.version) as of_order,
    (select coalesce(json_agg(json_build_object('code', code, 'facts', facts, 'by', by, 'at', at) order by finding_id), '[]')
      from finding where shop_id = ${shopId} and ticket_id = ${ticketId}) as findings,
    (select coalesce(json_agg(json_build_object('step', step, 'line', line, 'state', state, 'by', by) order by step, line), '[]')
      from ticket_step where shop_id = ${shopId} and ticket_id = ${ticketId}) as ticks,
    (select count(*) from remake where shop_id = ${shopId} and order_id = ticket.order_id and done_at is null) as open_remakes
  from ticket join "order" ordered on ordered.shop_id = ${shopId} and ordered.order_id = ticket.order_id
  where ticket.shop_id = ${shopId} and ticket.ticket_id = ${ticketId}`,
)

/** A ticket with its order and all that was done with it, in one statement. */
export const ticketRecord = async ({ db, shopId }: Scope, ticketId: string): Promise<TicketRecord | null> => {
  const row = await theRecord.first(db, { shopId, ticketId })
  if (row === undefined) return null
  const { orderId, number, replacedBy, body, ofTicket, ofOrder, findings, ticks, openRemakes } = row
  const ticket = { ticketId, orderId, number, replacedBy, body, ...ofTicket }
  return { ticket, order: orderOf({ ...row, ...ofOrder }), findings, ticks, openRemakes }
}
