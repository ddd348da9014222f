import { type LogConfig, sql } from 'kysely'
import pg from 'pg'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import type { ShopStore, Store } from '../../../ports/store.ts'
import { type Address, shown } from '../address.ts'
import { failedAt } from '../problems.ts'
import { askingAtOnce } from './at-once.ts'
import { listenTo } from './news.ts'
import { outboxIn } from './outbox.ts'
import { settle } from './pending.ts'
import { platformIn } from './platform.ts'
import { openDatabase, openStatements } from './pool.ts'
import { shopStore } from './shop-store.ts'
import type { Database } from './tables.ts'

/** Undoes a transaction whose work answered with problems. */
class Undone extends Error {
  override readonly name = 'Undone'
}

/** SQLSTATE of a deadlock, and of a change that met another version (`must_meet`). */
const toTryAgain: readonly unknown[] = ['40P01', '40001']
const mostTries = 4

const isToTryAgain = (cause: unknown): boolean => cause instanceof pg.DatabaseError && toTryAgain.includes(cause.code)

/** The records on a connection, by the shop's time in epoch milliseconds. */
type Records = { readonly db: Database; readonly time: () => number }

type Trial = Records & { readonly shopId: string; readonly hopeful: boolean }

const once = <T, P extends Problem>({ db, ...trial }: Trial, work: (shop: ShopStore) => Promise<Result<T, P>>) => {
  const refused: { result: Result<T, P> | null } = { result: null }
  return db
    .transaction()
    .execute((trx) =>
      askingAtOnce(trx, async () => {
        const scope = { db: trx, ...trial }
        const result = await work(shopStore(scope))
        if (!result.ok) {
          refused.result = result
          throw new Undone()
        }
        await settle(scope)
        return result
      }),
    )
    .catch((cause: unknown): Result<T, P> => {
      if (cause instanceof Undone && refused.result !== null) return refused.result
      throw cause
    })
}

const togetherIn =
  (records: Records): Store['together'] =>
  async (shopId, work) => {
    for (let tries = 1; ; tries += 1) {
      try {
        return await once({ ...records, shopId, hopeful: tries === 1 }, work)
      } catch (cause) {
        if (!isToTryAgain(cause) || tries >= mostTries) throw cause
      }
    }
  }

const lookIn =
  ({ db, time }: Records): Store['look'] =>
  (shopId, work) =>
    db.connection().execute((one) => askingAtOnce(one, () => work(shopStore({ db: one, shopId, time }))))

const mostKnown = 100

/**
 * A shop's books outside of transactions are made once: they are some hundred functions, and the engine throws away the fast code of
 * functions that nobody holds.
 */
const shopsIn = (records: Records): Store['shop'] => {
  const known = new Map<string, ShopStore>()
  return (shopId) => {
    const shop = known.get(shopId) ?? shopStore({ ...records, shopId })
    if (known.size < mostKnown) known.set(shopId, shop)
    return shop
  }
}

const openShop = async ({ db, time }: Records, shopId: string, house: string): Promise<ShopStore> => {
  await db
    .insertInto('shop')
    .values({ shopId, house })
    .onConflict((on) => on.column('shopId').doUpdateSet({ house }))
    .execute()
  return shopStore({ db, shopId, time })
}

const shopsOf = async (db: Database, house: string): Promise<readonly string[]> => {
  const rows = await db.selectFrom('shop').select('shopId').where('house', '=', house).orderBy('shopId').execute()
  return rows.map(({ shopId }) => shopId)
}

const placeOf = async (db: Database): Promise<string> => {
  const { rows } = await sql<{ id: string }>`select id from place`.execute(db)
  return rows[0]?.id ?? ''
}

export type Opening = {
  readonly address: Address
  /** The shop's time in epoch milliseconds: what is said is said then. */
  readonly time: () => number
  /** Connections at most. */
  readonly connections?: number
  readonly log?: LogConfig
}

/** The store on records that are migrated already. */
export const openStore = async ({ address, time, connections = 8, log = [] }: Opening): Opened<Store> => {
  const pool = openStatements(address, connections)
  const db = openDatabase(pool, log)
  const records = { db, time }
  const state = { place: '' }
  try {
    state.place = await placeOf(db)
  } catch (cause) {
    await db.destroy()
    return failedAt(shown(address), cause)
  }
  return ok({
    place: state.place,
    openShop: (shopId, house = shopId) => openShop(records, shopId, house),
    shop: shopsIn(records),
    shopsOf: (house) => shopsOf(db, house),
    outboxOf: (house) => outboxIn(db, house),
    together: togetherIn(records),
    look: lookIn(records),
    platform: platformIn(db),
    listen: (topics, listener) => listenTo(address, { topics, listener }),
    close: () => db.destroy(),
  })
}
