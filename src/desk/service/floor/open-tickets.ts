import type { TicketAtPress } from '../../../ports/floor-view.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import { holderOf, type TicketLife } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { showOf } from '../say/say-floor.ts'
import { gateName } from './gate-name.ts'
import { pressSetting } from './press-setting.ts'
import { readLife } from './read-life.ts'

const stageOf = ({ order, findings }: TicketLife): TicketAtPress['stage'] => {
  if (order.state === 'checked' || order.state === 'bagged' || order.state === 'collected') return order.state
  return holderOf(findings) === null ? 'free' : 'held'
}

const atPress = async (desk: Desk, shop: ShopStore, ticket: StoredTicket): Promise<TicketAtPress | null> => {
  const life = await readLife(desk, shop, ticket.ticketId)
  if (life === null) return null
  const { facts } = ticketFrom(ticket.body)
  const { tenthsC, machine } = pressSetting(facts)
  const shut = life.order.state === 'on-bench' ? life.gates.filter(({ is }) => is !== 'open') : []
  return {
    ticketId: ticket.ticketId,
    label: `${ticketName(ticket.number)} ${facts.team}`,
    wanted: showOf(desk).moment(facts.needBy),
    setting: [tenthsC === 0 ? '' : showOf(desk).temperature(tenthsC), machine.replaceAll('-', ' ')]
      .filter((part) => part !== '')
      .join(', '),
    stage: stageOf(life),
    by: holderOf(life.findings)?.by ?? null,
    waits: [...new Set(shut.map(({ gate }) => gateName(desk, facts, gate)))],
  }
}

/** So many tickets of the last ones handed over can still be opened, for what comes back from the wash. */
const mostHandedOver = 40

/** Open tickets, the one wanted first on top, with who has them and what still shuts them; then the last ones handed over. */
export const openTickets = async (desk: Desk, shop: ShopStore): Promise<readonly TicketAtPress[]> => {
  const [open, done] = await Promise.all([shop.tickets.list(['open']), shop.tickets.list(['done'])])
  const wanted = (ticket: StoredTicket): string => ticketFrom(ticket.body).facts.needBy
  const sorted = open.toSorted((a, b) => wanted(a).localeCompare(wanted(b)))
  const last = done.toSorted((a, b) => b.number - a.number).slice(0, mostHandedOver)
  const views = await Promise.all([...sorted, ...last].map((ticket) => atPress(desk, shop, ticket)))
  return views.filter((view) => view !== null)
}
