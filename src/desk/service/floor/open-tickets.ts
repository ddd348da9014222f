import type { TicketAtPress } from '../../../ports/floor-view.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import { holderOf, type TicketLife } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { localOf, showOf } from '../say/say-floor.ts'
import { gateName } from './gate-name.ts'
import { pressSetting } from './press-setting.ts'
import { hoursText, nextHour, type PromisedHour, promisedHours } from './promised-hour.ts'
import { readLife } from './read-life.ts'
import { gateLine } from './ticket-message.ts'

const stageOf = ({ order, findings }: TicketLife): TicketAtPress['stage'] => {
  if (order.state === 'checked' || order.state === 'bagged' || order.state === 'collected') return order.state
  return holderOf(findings) === null ? 'free' : 'held'
}

type Promises = ReadonlyMap<string, PromisedHour>

const atPress = async (
  desk: Desk,
  shop: ShopStore,
  at: { ticket: StoredTicket; promises: Promises },
): Promise<TicketAtPress | null> => {
  const { ticket, promises } = at
  const life = await readLife(desk, shop, ticket.ticketId)
  if (life === null) return null
  const { facts } = ticketFrom(ticket.body)
  const { tenthsC, machine } = pressSetting(facts)
  const shut = life.order.state === 'on-bench' ? life.gates.filter(({ is }) => is !== 'open') : []
  return {
    ticketId: ticket.ticketId,
    label: `${ticketName(ticket.number)} ${facts.team}`,
    hours: hoursText(desk, facts, promises.get(ticket.orderId) ?? null),
    setting: [tenthsC === 0 ? '' : showOf(desk).temperature(tenthsC), machine.replaceAll('-', ' ')]
      .filter((part) => part !== '')
      .join(', '),
    stage: stageOf(life),
    by: holderOf(life.findings)?.by ?? null,
    waits: [...new Set(shut.map((one) => (one.is === 'shut' ? gateLine(desk, facts, one) : gateName(desk, facts, one.gate))))],
  }
}

/** So many tickets of the last ones handed over can still be opened, for what comes back from the wash. */
const mostHandedOver = 40

/** Open tickets, the one promised first on top, with who has them and what still shuts them; then the last ones handed over. */
export const openTickets = async (desk: Desk, shop: ShopStore): Promise<readonly TicketAtPress[]> => {
  const [open, done, promises] = await Promise.all([
    shop.tickets.list(['open']),
    shop.tickets.list(['done']),
    promisedHours(desk, shop),
  ])
  const due = ({ orderId, body }: StoredTicket): string => {
    const promised = promises.get(orderId)
    return promised === undefined ? ticketFrom(body).facts.needBy : localOf(desk, nextHour(promised, desk.clock.now()))
  }
  const sorted = open.toSorted((a, b) => due(a).localeCompare(due(b)))
  const last = done.toSorted((a, b) => b.number - a.number).slice(0, mostHandedOver)
  const views = await Promise.all([...sorted, ...last].map((ticket) => atPress(desk, shop, { ticket, promises })))
  return views.filter((view) => view !== null)
}
