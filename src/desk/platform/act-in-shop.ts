import { serverWords } from '../../../templates/desk/server.ts'
import type { Incoming } from '../../ports/chat.ts'
import type { Member } from '../../ports/counter-desk.ts'
import type { Actor, Outcome } from '../../ports/platform-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import { type Desk, shopChannel } from '../service/desk.ts'
import { morningMessage } from '../service/morning/morning-message.ts'
import { morningSheet } from '../service/morning/morning-sheet.ts'
import { pressAction } from '../service/press-action.ts'
import { messageFrom } from '../service/records/records.ts'
import { ticketName } from '../service/records/ticket-names.ts'
import { noteOnBench } from '../service/ticket/note-on-bench.ts'
import { listTickets, postAgainId } from './list-tickets.ts'
import { loadToDraw } from './ready-delivery.ts'
import { done, known, refuse, whatOf } from './refuse.ts'

const ownersOnly = /^(?:c:(?:morning|load|setup)|o:[^:]+:(?:mend|promise)-.+|r:.+)$/
const staffs = /^(?:c:(?:morning|load|setup|tickets|post-again)|[tors]:.+)$/

/** A ticket or order that an action names is one of this shop. */
const isOfShop = async (shop: ShopStore, what: string): Promise<boolean> => {
  const [kind, id = ''] = what.split(':')
  if (kind === 't') return (await shop.tickets.read(id)) !== null
  return kind !== 'o' || (await shop.orders.read(id)) !== null
}

const mayDo = async (shop: ShopStore, actor: Actor, incoming: Incoming): Promise<boolean> => {
  const what = whatOf(incoming)
  if (actor.role === null) return false
  if (incoming.kind === 'said') return true
  if (!staffs.test(what) || (ownersOnly.test(what) && actor.role !== 'owner')) return false
  return isOfShop(shop, what)
}

/** The ticket as it stands in its channel now, shown again to whoever asks. */
const openTicket = async (shop: ShopStore, ticketId: string): Promise<Outcome> => {
  const stored = await shop.messages.of(ticketId)
  return stored === null ? done : { ...done, shown: messageFrom(stored.body) }
}

const postAgain = async (desk: Desk, actor: Actor, ticketId: string): Promise<Outcome> => {
  const shop = desk.store.shop(desk.shopId)
  const ticket = await shop.tickets.read(ticketId)
  if (ticket === null || !(await shop.deliveries.again(ticketId))) return { ...done, outcome: 'refused' }
  const event = { orderId: ticket.orderId, ticketId, by: actor.person.id, at: desk.clock.now(), facts: {} }
  await shop.events.add({ ...event, code: 'posted-again' })
  return { ...done, said: serverWords[actor.person.language].postedAgain(ticketName(ticket.number)) }
}

type Pressed = Extract<Incoming, { kind: 'pressed' }>

const memberOf = ({ person, role }: Actor): Member => ({ id: person.id, name: person.name, role: role ?? 'staff' })

/** The load is drawn by a worker and comes into the owner's channel. */
const askLoad = async (desk: Desk, { person }: Actor, id: string): Promise<Outcome> => {
  const words = serverWords[desk.workshop.shop.profile.languages[0] ?? 'en']
  const channel = shopChannel('owner')
  const body = loadToDraw(words.drawing, desk.workshop.shop.profile.languages[0] ?? 'en')
  const shop = desk.store.shop(desk.shopId)
  await shop.messages.say({ channel, nonce: `load-${id}`, by: 'bot', body })
  await shop.tell('channel', channel)
  return { ...done, said: serverWords[person.language].loadComes }
}

const press = async (desk: Desk, actor: Actor, { id: delivery, action }: Pressed): Promise<Outcome> => {
  const { language } = actor.person
  const [kind, id = '', name = ''] = action.split(':')
  if (kind === 't' && name === 'open') return openTicket(desk.store.shop(desk.shopId), id)
  if (action === 'c:morning') return { ...done, shown: morningMessage(desk, await morningSheet(desk, language), language) }
  if (action === 'c:load') return askLoad(desk, actor, delivery)
  return { ...done, said: await pressAction(desk, memberOf(actor), { action }) }
}

const doIt = async (desk: Desk, actor: Actor, incoming: Incoming): Promise<Outcome> => {
  switch (incoming.kind) {
    case 'said':
      await noteOnBench(desk, memberOf(actor), incoming)
      return done
    case 'pressed':
      return press(desk, actor, incoming)
    case 'chose':
      return incoming.choice === postAgainId ? postAgain(desk, actor, incoming.value) : done
    case 'filled': {
      if (/^[ts]:/.test(incoming.form)) {
        const pressing = { action: incoming.form, values: incoming.values }
        return { ...done, said: await pressAction(desk, memberOf(actor), pressing) }
      }
      const { station = '', day = '' } = incoming.values
      return { ...done, shown: await listTickets(desk, { station, day, language: actor.person.language }) }
    }
  }
}

/** Something done in a shop's channels or by its commands: by its staff and owners only, on its own work, each delivery once. */
export const actInShop = async (desk: Desk, actor: Actor, incoming: Incoming): Promise<Outcome> => {
  const shop = desk.store.shop(desk.shopId)
  if (!(await shop.heard.isNew(incoming.id))) return known
  if (!(await mayDo(shop, actor, incoming))) return refuse(desk, { id: actor.person.id, role: actor.role }, incoming)
  return doIt(desk, actor, incoming)
}
