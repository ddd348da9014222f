import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { type Address, shown } from '../address.ts'
import { failedAt } from '../problems.ts'
import { openPool } from './pool.ts'

/** A house by its id, and whether any order was ever written in one of its shops. */
export type House = { readonly id: string; readonly hasOrders: boolean }

const asking = `select house as id, bool_or(exists (select from "order" o where o.shop_id = shop.shop_id)) as "hasOrders"
  from shop group by house order by house`

/** Every house that has records here. */
export const housesAt = async (address: Address): Opened<readonly House[]> => {
  const pool = openPool(address, 1)
  try {
    return ok((await pool.query<House>(asking)).rows)
  } catch (cause) {
    return failedAt(shown(address), cause)
  } finally {
    await pool.end()
  }
}
