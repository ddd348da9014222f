import type { House } from '../adapters/store/sql/other-houses.ts'
import type { Problem } from '../domain/result/result.ts'

/** Where a shop opens: its id by `shop.json`, and whether the store is its own, which no other shop has a reason to share. */
export type Opening = { readonly id: string; readonly embedded: boolean }

/**
 * A shop that has no orders where another id has some was perhaps given another id by mistake: it opens empty. A served store
 * rightly holds several shops: with more than one other nothing is said.
 */
export const otherIds = (houses: readonly House[], { id, embedded }: Opening): readonly Problem[] => {
  if (houses.some((house) => house.id === id && house.hasOrders)) return []
  const others = houses.filter((house) => house.id !== id)
  const known = others.filter((house) => house.hasOrders).map((house) => house.id)
  if (known.length === 0 || (!embedded && others.length > 1)) return []
  return [{ code: 'shop-other-id', at: '/id', severity: 'caution', facts: { id, others: known, embedded } }]
}
