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

/** For how long a desk that was looked up is taken for the present one, by a clock that only goes forward. */
export type Trust = { readonly milliseconds: number; readonly now: () => number }

const never: Trust = { milliseconds: 0, now: () => 0 }

/**
 * Every server is a shop of its own that works by the records of this house's shop folder. The house's own shop is among
 * them. A desk is made once as long as its server's name and language stay: what is built from a shop's records is kept by it. Whoever
 * works for many orders looks only now and then whether they stayed; a server of others that is not there yet is looked for each time.
 */
export const tenantsOf = <D extends Desk>(house: D, { milliseconds, now }: Trust = never): Tenants<D> => {
  const made = new Map<string, { readonly mark: string; readonly desk: D; readonly until: number }>()
  return async (shopId) => {
    const known = made.get(shopId)
    const at = now()
    if (known !== undefined && at < known.until) return known.desk
    const server = await house.store.shop(shopId).server.read()
    if (server === null && shopId !== house.shopId) return { ...house, shopId }
    const mark = server === null ? 'by the folder alone' : `${server.name}|${server.language}`
    const anew = (): D => (server === null ? house : deskFor(house, server))
    const desk = known?.mark === mark ? known.desk : anew()
    made.set(shopId, { mark, desk, until: at + milliseconds })
    return desk
  }
}
