import { serverWords } from '../../../templates/desk/server.ts'
import type { PlatformDesk } from '../../ports/platform-desk.ts'
import { channelName, type Desk } from '../service/desk.ts'
import { orderIdOf } from '../service/records/order-id.ts'
import { ticketName } from '../service/records/ticket-names.ts'
import { actInShop } from './act-in-shop.ts'
import { answerForm, answerFormId, hearInTalk } from './hear-in-talk.ts'
import { suggestions } from './list-tickets.ts'
import { type House, serversOf } from './servers.ts'
import { asksForm, staffForm } from './staff-form.ts'
import { talksOf } from './talks.ts'
import { type Tenants, tenantsOf } from './tenants.ts'

const filesOf = ({ desk }: House): Pick<PlatformDesk, 'keepFile' | 'file'> => ({
  keepFile: async (shop, channel, file) => {
    const hash = desk.ids.hash(file.bytes)
    await desk.store.shop(shop).files.keep(channelName(channel), { ...file, hash })
    return { id: hash }
  },
  file: (shop, channel, id) => desk.store.shop(shop).files.read(channelName(channel), id),
})

const placesOf = ({ desk }: House): Pick<PlatformDesk, 'placeOf' | 'troubled'> => ({
  placeOf: async (shopId, channel) => {
    const shop = desk.store.shop(shopId)
    if (channel.kind === 'conversation') return shop.talks.of(channel.id)
    const server = await shop.server.read()
    const place = server?.[channel.name] ?? null
    return server === null || place === null ? null : { channel: place, language: server.language }
  },
  troubled: async (shopId, { code, channel, nonce }) => {
    const shop = desk.store.shop(shopId)
    const words = serverWords[(await shop.server.read())?.language ?? 'en']
    const ticket = await shop.tickets.read(nonce)
    const orderId = ticket?.orderId ?? (channel.kind === 'conversation' ? orderIdOf(channel.id) : null)
    const event = { orderId, ticketId: ticket?.ticketId ?? null, by: 'desk', at: desk.clock.now() }
    await shop.events.add({ ...event, code: 'not-delivered', facts: { trouble: code, nonce } })
    if (ticket !== null) return { about: words.ticket(ticketName(ticket.number)) }
    return { about: orderId === null ? null : words.messageTo(orderId) }
  },
})

const formsOf = (tenants: Tenants<Desk>): Pick<PlatformDesk, 'opensForm' | 'form'> => ({
  opensForm: asksForm,
  form: async (asker, id) => {
    if ('role' in asker) return asker.role === null ? null : staffForm(await tenants(asker.shop), id)
    return id === answerFormId ? answerForm(asker.language) : null
  },
})

/** The desk as the chat platform's adapter sees it, over the records of every shop. */
export const platformDesk = (desk: Desk, home: string | null): PlatformDesk => {
  const tenants = tenantsOf(desk)
  const house: House = { desk, tenants, home }
  return {
    ...serversOf(house),
    ...talksOf(house),
    ...filesOf(house),
    ...placesOf(house),
    ...formsOf(tenants),
    hear: async (talk, by, incoming) => hearInTalk(await tenants(talk.shop), talk, { by, incoming }),
    act: async (actor, incoming) => actInShop(await tenants(actor.shop), actor, incoming),
    suggest: async (actor, typed) => (actor.role === null ? [] : suggestions(await tenants(actor.shop), typed)),
    postings: desk.store.platform.postings,
  }
}
