import type { CounterDesk } from '../../ports/counter-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import { type Desk, shopChannel } from './desk.ts'
import { openTickets } from './floor/open-tickets.ts'
import { pressView } from './floor/press-view.ts'
import { needsForm } from './floor/ticket-form.ts'
import { calendarOf } from './shop/calendar-feed.ts'
import { shelfView } from './shop/shelf-view.ts'
import { tableOf } from './shop/tables.ts'

type Floor = Pick<CounterDesk, 'atPress' | 'openTickets' | 'shelf' | 'needsForm' | 'keepShopFile'>
type Feeds = Pick<CounterDesk, 'newCalendar' | 'revokeCalendar' | 'calendar' | 'table'>

const feeds = (desk: Desk, shop: ShopStore): Feeds => ({
  newCalendar: async (member) => {
    await shop.keys.revoke('calendar', member.id)
    const secret = desk.ids.secret()
    await shop.keys.add({ hash: desk.ids.hash(secret), kind: 'calendar', holder: member.id, until: null })
    return secret
  },
  revokeCalendar: (member) => shop.keys.revoke('calendar', member.id),
  calendar: async (secret) => {
    const holder = await shop.keys.read('calendar', desk.ids.hash(secret), desk.clock.real())
    return holder === null ? null : calendarOf(desk)
  },
  table: (name) => tableOf(desk, name),
})

/** What the pages of the bench ask beside its channel: a ticket at the press, the shelf, calendars and tables. */
export const floorSide = (desk: Desk, shop: ShopStore): Floor & Feeds => ({
  atPress: (ticketId) => pressView(desk, ticketId),
  openTickets: () => openTickets(desk, shop),
  shelf: () => shelfView(desk),
  needsForm: (action) => needsForm(action.split(':')[2] ?? ''),
  keepShopFile: async (file) => {
    const hash = desk.ids.hash(file.bytes)
    await shop.files.keep(shopChannel('bench'), { ...file, hash })
    return { id: hash }
  },
  ...feeds(desk, shop),
})
