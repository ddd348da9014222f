import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { itemName } from './item-name.ts'

const plain = (said: string): string =>
  said
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

/** Everything that lies here, is wanted, or that the shop's records know. */
const knownItems = async (desk: Desk, shop: ShopStore): Promise<readonly string[]> => {
  const { stones, vinyl, auxiliaries } = desk.workshop.shop
  const wanted = (await shop.stock.needs()).map(({ item }) => item)
  const records = [...stones, ...vinyl, ...auxiliaries].map(({ id }) => id)
  return [...new Set([...(await shop.stock.sums()).keys(), ...wanted, ...records])]
}

/** The item that somebody chose by its id or typed by its name, every word of it, in any order; null: none, or more than one. */
export const itemSaid = async (desk: Desk, shop: ShopStore, said: string): Promise<string | null> => {
  const items = await knownItems(desk, shop)
  if (items.includes(said)) return said
  const name = plain(said)
  const exact = items.filter((item) => plain(itemName(desk, item)) === name)
  const words = name.split(' ')
  const near = items.filter((item) => words.every((word) => plain(itemName(desk, item)).split(' ').includes(word)))
  const found = exact.length > 0 ? exact : near
  return found.length === 1 ? (found[0] ?? null) : null
}
