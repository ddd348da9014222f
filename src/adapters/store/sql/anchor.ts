import { ok } from '../../../domain/result/result.ts'
import type { Anchor } from '../../../ports/clock.ts'
import type { Opened } from '../../../ports/opening.ts'
import { type Address, shown } from '../address.ts'
import { failedAt } from '../problems.ts'
import { openPool } from './pool.ts'

/** Of several processes that begin at once one writes; records that a shop was opened in are made already. */
const making = `insert into simulated_clock (real, simulated, speed)
  select $1::bigint, $2::bigint, $3::float8 where not exists (select from shop) on conflict do nothing`

/** Which simulated clock the records live on, null for real time. Records that are not made yet take the wanted one, once and for all. */
export const keptAnchor = async (address: Address, wanted: Anchor | null): Opened<Anchor | null> => {
  const pool = openPool(address, 1)
  try {
    if (wanted !== null) await pool.query(making, [wanted.real, wanted.simulated, wanted.speed])
    const { rows } = await pool.query<Anchor>('select real, simulated, speed from simulated_clock')
    return ok(rows[0] ?? null)
  } catch (cause) {
    return failedAt(shown(address), cause)
  } finally {
    await pool.end()
  }
}
