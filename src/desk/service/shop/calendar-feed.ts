import ical from 'ical.js'
import { calendarWords } from '../../../../templates/desk/calendar.ts'
import type { Desk } from '../desk.ts'
import { orderFrom, type PlacedOrder, shopPlanFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { momentOf, shopLanguage } from '../say/say-floor.ts'
import { amountText, itemName } from '../stock/item-name.ts'
import { shoppingNow } from '../stock/shopping-now.ts'

const instant = (minute: number): ical.Time => ical.Time.fromJSDate(new Date(minute * 60_000), true)

type Entry = {
  readonly kind: 'vevent' | 'vtodo'
  readonly uid: string
  readonly summary: string
  readonly description: string
  readonly at: number
}

const minutesShown = 15

const componentOf = (desk: Desk, entry: Entry): ical.Component => {
  const component = new ical.Component(entry.kind)
  component.updatePropertyWithValue('uid', `${entry.uid}@${desk.shopId}`)
  component.updatePropertyWithValue('dtstamp', instant(desk.clock.now()))
  component.updatePropertyWithValue('summary', entry.summary)
  component.updatePropertyWithValue('description', entry.description)
  if (entry.kind === 'vtodo') {
    component.updatePropertyWithValue('due', instant(entry.at))
    component.updatePropertyWithValue('status', 'NEEDS-ACTION')
    return component
  }
  component.updatePropertyWithValue('dtstart', instant(entry.at))
  component.updatePropertyWithValue('dtend', instant(entry.at + minutesShown))
  return component
}

const atWork: ReadonlySet<string> = new Set(['signed-off', 'planned', 'ticketed', 'on-bench', 'checked'])

/** A promise as an appointment, and while it is not bagged as a thing to do; the team's name, nobody else's. */
const entriesOf = async (desk: Desk, placed: PlacedOrder): Promise<readonly Entry[]> => {
  const shop = desk.store.shop(desk.shopId)
  const words = calendarWords[shopLanguage(desk)]
  const order = await shop.orders.read(placed.id)
  const document = (await shop.orders.revision(placed.id, placed.revision))?.document ?? null
  if (order === null || document === null || order.state === 'collected' || order.state === 'cancelled') return []
  const { team, roster } = orderFrom(document)
  const ticket = (await shop.tickets.ofOrder(placed.id)).at(-1)
  const name = ticket === undefined ? team : `${ticketName(ticket.number)} ${team}`
  const pieces = roster.reduce((sum, row) => sum + row.quantity, 0)
  const at = placed.promised ?? placed.needBy
  const about = { description: words.pieces(pieces), at }
  return [
    { kind: 'vevent', uid: `${placed.id}-promise`, summary: words.promised(name), ...about },
    ...(atWork.has(order.state) ? [{ kind: 'vtodo' as const, uid: `${placed.id}-bag`, summary: words.bag(name), ...about }] : []),
  ]
}

const errands = async (desk: Desk): Promise<readonly Entry[]> => {
  const words = calendarWords[shopLanguage(desk)]
  return (await shoppingNow(desk)).map(({ item, missing, orderBy }) => ({
    kind: 'vtodo',
    uid: `order-${item.replaceAll(':', '-')}`,
    summary: words.order(itemName(desk, item)),
    description: words.missing(amountText(desk, { item, amount: missing }), momentOf(desk, orderBy)),
    at: orderBy,
  }))
}

/** The shop's calendar (RFC 5545): promises as appointments, bagging and ordering as things to do. Instants are in UTC. */
export const calendarOf = async (desk: Desk): Promise<string> => {
  const { sold } = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
  const calendar = new ical.Component('vcalendar')
  calendar.updatePropertyWithValue('version', '2.0')
  calendar.updatePropertyWithValue('prodid', '-//platenpost//shop calendar//EN')
  calendar.updatePropertyWithValue('x-wr-calname', desk.workshop.shop.profile.name)
  const entries = [...(await Promise.all(sold.map((placed) => entriesOf(desk, placed)))).flat(), ...(await errands(desk))]
  for (const entry of entries) calendar.addSubcomponent(componentOf(desk, entry))
  return `${calendar.toString()}\r\n`
}
