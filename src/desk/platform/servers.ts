import { ok } from '../../domain/result/result.ts'
import type { GuildChange, GuildSettings, PlatformDesk, PlatformPerson } from '../../ports/platform-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { Desk } from '../service/desk.ts'
import { openShop } from '../service/shop/open-shop.ts'
import type { Tenants } from './tenants.ts'

type Server = { readonly id: string; readonly name: string }
/** `home` is the server that is this house's own shop, the one the counter serves. */
export type House = { readonly desk: Desk; readonly tenants: Tenants<Desk>; readonly home: string | null }

const first = (server: Server, shop: string, language: GuildSettings['language']): GuildSettings => ({
  guild: server.id,
  shop,
  name: server.name,
  language,
  talks: 'direct',
  bench: null,
  owner: null,
  orders: null,
  staffRoles: [],
  ownerRoles: [],
})

/** Open tickets are posted in the channel that is the bench now. */
const moveTickets = async (shop: ShopStore): Promise<void> => {
  for (const { ticketId } of await shop.tickets.list(['open'])) await shop.deliveries.again(ticketId)
}

const keep = async (house: House, shopId: string, kept: { server: Server; by: PlatformPerson; change: GuildChange }) => {
  const { desk } = house
  const { server, by, change } = kept
  const saved = await desk.store.together(shopId, async (shop) => {
    const before = (await shop.server.read()) ?? first(server, shopId, by.language)
    const { shop: _, ...after } = { ...before, name: server.name, ...change }
    await shop.server.save(after)
    if (after.bench !== null && after.bench !== before.bench) await moveTickets(shop)
    const facts = { chosen: Object.keys(change) }
    await shop.events.add({ code: 'server-set-up', orderId: null, ticketId: null, by: by.id, at: desk.clock.now(), facts })
    return ok({ ...after, shop: shopId })
  })
  if (!saved.ok) throw new Error(`the server of ${shopId} could not be kept`)
  return saved.value
}

/** Which server is which shop, and what its owner chose there. */
export const serversOf = (house: House): Pick<PlatformDesk, 'guild' | 'guilds' | 'setUp'> => {
  const { desk, home } = house
  const { platform } = desk.store
  return {
    guild: async (guild) => {
      const shopId = await platform.shopOf(guild)
      return shopId === null ? null : desk.store.shop(shopId).server.read()
    },
    guilds: () => platform.servers(),
    setUp: async (server, by, change) => {
      const shopId = (await platform.shopOf(server.id)) ?? (server.id === home ? desk.shopId : `server-${server.id}`)
      await openShop({ ...desk, shopId })
      return keep(house, shopId, { server, by, change })
    },
  }
}
