import { sql } from 'kysely'
import type { MoveKind, Need, StockChange } from '../../../domain/stock/ledger.ts'
import type { LedgerPart, ShelfTemplate, StockBook, StockLot } from '../../../ports/stock-records.ts'
import { atomic } from './atomic.ts'
import { compiled } from './compiled.ts'
import { text } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

const total = sql<number>`sum(amount)::bigint`

type Moves = Pick<StockBook, 'move' | 'sums' | 'ofOrder' | 'ledger'>

/** Every move added up by item, lot, order and kind: counts that found more and counts that found less are kept apart. */
const wholeLedger = ({ db, shopId }: Scope): Promise<readonly StockChange[]> =>
  db
    .selectFrom('stockMove')
    .select(['item', 'lot', 'orderId', sql<MoveKind>`kind`.as('kind'), total.as('amount')])
    .where('shopId', '=', shopId)
    .groupBy(['item', 'lot', 'orderId', 'kind', sql`amount < 0`])
    .orderBy('item')
    .orderBy('lot')
    .execute()

/** The moves of these holders, and in nobody's name all that is kept in the sums less what is theirs. */
const partOfLedger = async ({ db, shopId }: Scope, { items, holders }: LedgerPart): Promise<readonly StockChange[]> => {
  const among = items === undefined ? sql`` : sql`and item = any(${[...items]}::text[])`
  const { rows } = await sql<StockChange>`
    with own as (
      select item, lot, order_id, kind, amount < 0 as less, sum(amount)::bigint as amount from stock_move
      where shop_id = ${shopId} and order_id = any(${[...holders]}::text[]) ${among}
      group by item, lot, order_id, kind, amount < 0
    ), others as (
      select item, lot, kind, less, sum(amount)::bigint as amount from (
        select item, lot, kind, less, amount from stock_sum where shop_id = ${shopId} ${among}
        union all select item, lot, kind, less, -amount from own
      ) apart group by item, lot, kind, less having sum(amount) <> 0
    )
    select item, lot, order_id, kind, amount from own
    union all select item, lot, null, kind, amount from others
    order by item, lot`.execute(db)
  return rows
}

const ledger = async (scope: Scope, part: LedgerPart | undefined): Promise<readonly StockChange[]> => {
  if (part === undefined) return wholeLedger(scope)
  return part.items?.length === 0 ? [] : partOfLedger(scope, part)
}

type OfOrder = { readonly shopId: string; readonly orderId: string }

const movesOfOrder = compiled((db, { shopId, orderId }: OfOrder) =>
  db
    .selectFrom('stockMove')
    .select(['item', 'lot', 'amount', 'kind', 'orderId', 'at'])
    .where('shopId', '=', shopId)
    .where('orderId', '=', orderId)
    .orderBy('moveId'),
)

const movesIn = ({ db, shopId, time }: Scope): Moves => ({
  move: async (moves) => {
    if (moves.length === 0) return
    const words = (said: string | null | undefined): string | null => (said === null || said === undefined ? null : text(said))
    const rows = moves.map(({ lot = '', by, why, ...move }) => ({ shopId, ...move, lot, by: words(by), why: words(why) }))
    await db.insertInto('stockMove').values(rows).modifyEnd(unawaited).execute()
  },
  sums: async () => {
    const rows = await db
      .selectFrom('stockSum')
      .select(['item', total.as('amount')])
      .where('shopId', '=', shopId)
      .groupBy('item')
      .execute()
    return new Map(rows.map(({ item, amount }) => [item, amount]))
  },
  ofOrder: (orderId) => movesOfOrder.all(db, { shopId, orderId }),
  ledger: (part) => ledger({ db, shopId, time }, part),
})

type Needs = Pick<StockBook, 'needs' | 'wantedBy' | 'lacking' | 'want'>

const needColumns = ['orderId', 'item', 'amount', 'due'] as const

/** What a need holds is kept with it by the moves; so only those that lack something are looked at. */
const lacking = ({ db, shopId }: Scope, items: readonly string[]): Promise<readonly Need[]> =>
  db
    .selectFrom('stockNeed')
    .select(needColumns)
    .where('shopId', '=', shopId)
    .where(sql<boolean>`item = any(${[...items]}::text[])`)
    .whereRef('amount', '>', 'held')
    .orderBy('due')
    .orderBy('orderId')
    .orderBy('item')
    .execute()

const needsOfOrder = compiled((db, { shopId, orderId }: OfOrder) =>
  db.selectFrom('stockNeed').select(needColumns).where('shopId', '=', shopId).where('orderId', '=', orderId).orderBy('item'),
)

const dropNeeds = compiled((db, { shopId, orderId }: OfOrder) =>
  db.deleteFrom('stockNeed').where('shopId', '=', shopId).where('orderId', '=', orderId).modifyEnd(unawaited),
)

const needsIn = (outer: Scope): Needs => ({
  needs: () =>
    outer.db
      .selectFrom('stockNeed')
      .select(needColumns)
      .where('shopId', '=', outer.shopId)
      .orderBy('due')
      .orderBy('orderId')
      .orderBy('item')
      .execute(),
  wantedBy: (orderId) => needsOfOrder.all(outer.db, { shopId: outer.shopId, orderId }),
  lacking: (items) => (items.length === 0 ? Promise.resolve([]) : lacking(outer, items)),
  want: (orderId, needs) =>
    atomic(outer, async ({ db, shopId }) => {
      await dropNeeds.all(db, { shopId, orderId })
      const rows = needs.filter(({ amount }) => amount > 0).map((need) => ({ shopId, orderId, ...need }))
      if (rows.length > 0) await db.insertInto('stockNeed').values(rows).modifyEnd(unawaited).execute()
    }),
})

const putLot = async ({ db, shopId }: Scope, lot: StockLot): Promise<void> => {
  await db
    .insertInto('stockLot')
    .values({ shopId, ...lot })
    .onConflict((on) =>
      on.columns(['shopId', 'item', 'lot']).doUpdateSet({
        certificate: sql<string | null>`coalesce(excluded.certificate, stock_lot.certificate)`,
        grossMilligrams: sql<number | null>`coalesce(excluded.gross_milligrams, stock_lot.gross_milligrams)`,
        bin: sql<string | null>`coalesce(excluded.bin, stock_lot.bin)`,
      }),
    )
    .execute()
}

type Coming = Pick<StockBook, 'lots' | 'putLot' | 'coming' | 'order' | 'arrived'>

const comingIn = (scope: Scope): Coming => {
  const { db, shopId } = scope
  return {
    lots: () =>
      db
        .selectFrom('stockLot')
        .select(['item', 'lot', 'certificate', 'grossMilligrams', 'bin'])
        .where('shopId', '=', shopId)
        .orderBy('item')
        .orderBy('lot')
        .execute(),
    putLot: (lot) => putLot(scope, lot),
    coming: () =>
      db
        .selectFrom('stockComing')
        .select(['comingId', 'item', 'amount', 'due', 'by'])
        .where('shopId', '=', shopId)
        .where('arrived', '=', false)
        .orderBy('due')
        .execute(),
    order: async (coming) => {
      await db
        .insertInto('stockComing')
        .values({ shopId, ...coming })
        .onConflict((on) => on.doNothing())
        .execute()
    },
    arrived: async (comingId) => {
      const of = db.updateTable('stockComing').set({ arrived: true }).where('shopId', '=', shopId)
      await of.where('comingId', '=', comingId).execute()
    },
  }
}

type Templates = Pick<StockBook, 'templates' | 'putTemplate' | 'dropTemplate'>

const everyTemplate = compiled((db, { shopId }: { readonly shopId: string }) =>
  db
    .selectFrom('shelfTemplate')
    .select(['key', 'box', 'made', 'brushed'])
    .where('shopId', '=', shopId)
    .orderBy('box')
    .orderBy('key'),
)

const templatesIn = ({ db, shopId }: Scope): Templates => ({
  templates: () => everyTemplate.all(db, { shopId }),
  putTemplate: async (template: ShelfTemplate) => {
    await db
      .insertInto('shelfTemplate')
      .values({ shopId, ...template })
      .onConflict((on) => on.columns(['shopId', 'key']).doUpdateSet(template))
      .execute()
  },
  dropTemplate: async (key) => {
    await db.deleteFrom('shelfTemplate').where('shopId', '=', shopId).where('key', '=', key).execute()
  },
})

export const stockIn = (scope: Scope): StockBook => ({
  ...movesIn(scope),
  ...needsIn(scope),
  ...comingIn(scope),
  ...templatesIn(scope),
})
