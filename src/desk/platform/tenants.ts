import type { GuildSettings } from '../../ports/platform-desk.ts'
import type { Desk } from '../service/desk.ts'

/** The desk of one of the shops, each with its own records, name and first language. */
export type Tenants<D extends Desk> = (shopId: string) => Promise<D>

const deskFor = <D extends Desk>(house: D, server: GuildSettings): D => {
  const { shop } = house.workshop
  const languages = [server.language, ...shop.profile.languages.filter((one) => one !== server.language)]
  const own = server.shop === house.shopId ? {} : { id: server.shop, name: server.name }
  const profile = { ...shop.profile, ...own, languages }
  return { ...house, shopId: server.shop, workshop: { ...house.workshop, shop: { ...shop, profile } } }
}

/**
 * Every server is a shop of its own that works by the records of this house's shop folder. The house's own shop is among
 * them. A desk is made once as long as its server's name and language stay: what is built from a shop's records is kept by it.
 */
export const tenantsOf = <D extends Desk>(house: D): Tenants<D> => {
  const made = new Map<string, { readonly mark: string; readonly desk: D }>()
  return async (shopId) => {
    const server = await house.store.shop(shopId).server.read()
    if (server === null) return shopId === house.shopId ? house : { ...house, shopId }
    const mark = `${server.name}|${server.language}`
    const known = made.get(shopId)
    if (known?.mark === mark) return known.desk
    const desk = deskFor(house, server)
    made.set(shopId, { mark, desk })
    return desk
  }
}
