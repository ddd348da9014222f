import { sql } from 'kysely'
import type { MoveKind, Need, StockChange } from '../../../domain/stock/ledger.ts'
import type { LedgerPart, ShelfTemplate, StockBook, StockLot } from '../../../ports/stock-records.ts'
import { text } from './json.ts'
import { atomic, type Scope } from './tables.ts'

const total = sql<number>`sum(amount)::bigint`

type Moves = Pick<StockBook, 'move' | 'sums' | 'ofOrder' | 'ledger'>

/** Whose a move is, as far as the part of the ledger tells orders apart. */
const holder = (part: LedgerPart | undefined) =>
  part === undefined
    ? sql<string | null>`order_id`
    : sql<string | null>`case when order_id = any(${[...part.holders]}::text[]) then order_id end`

/** Counts that found more and counts that found less are kept apart: one is received, the other written off. */
const ledger = async ({ db, shopId }: Scope, part: LedgerPart | undefined): Promise<readonly StockChange[]> => {
  if (part?.items?.length === 0) return []
  const whose = holder(part)
  return db
    .selectFrom('stockMove')
    .select(['item', 'lot', whose.as('orderId'), sql<MoveKind>`kind`.as('kind'), total.as('amount')])
    .where('shopId', '=', shopId)
    .$if(part?.items !== undefined, (all) => all.where(sql<boolean>`item = any(${[...(part?.items ?? [])]}::text[])`))
    .groupBy(['item', 'lot', sql`3`, 'kind', sql`amount < 0`])
    .orderBy('item')
    .orderBy('lot')
    .execute()
}

const movesIn = ({ db, shopId, time }: Scope): Moves => ({
  move: async (moves) => {
    if (moves.length === 0) return
    const words = (said: string | null | undefined): string | null => (said === null || said === undefined ? null : text(said))
    const rows = moves.map(({ lot = '', by, why, ...move }) => ({ shopId, ...move, lot, by: words(by), why: words(why) }))
    await db.insertInto('stockMove').values(rows).execute()
  },
  sums: async () => {
    const rows = await db
      .selectFrom('stockMove')
      .select(['item', total.as('amount')])
      .where('shopId', '=', shopId)
      .groupBy('item')
      .execute()
    return new Map(rows.map(({ item, amount }) => [item, amount]))
  },
  ofOrder: (orderId) =>
    db
      .selectFrom('stockMove')
      .select(['item', 'lot', 'amount', 'kind', 'orderId', 'at'])
      .where('shopId', '=', shopId)
      .where('orderId', '=', orderId)
      .orderBy('moveId')
      .execute(),
  ledger: (part) => ledger({ db, shopId, time }, part),
})

type Needs = Pick<StockBook, 'needs' | 'wantedBy' | 'lacking' | 'want'>

const needColumns = ['orderId', 'item', 'amount', 'due'] as const

/** What an order holds of an item is what its reservations and releases took from the free pile. */
const lacking = async ({ db, shopId }: Scope, items: readonly string[]): Promise<readonly Need[]> => {
  const { rows } = await sql<Need>`
    with held as (
      select order_id, item, -sum(amount) as amount from stock_move
      where shop_id = ${shopId} and item = any(${[...items]}::text[]) and kind in ('reserve', 'release') and order_id is not null
      group by order_id, item
    )
    select order_id, item, need.amount, due from stock_need need left join held using (order_id, item)
    where shop_id = ${shopId} and item = any(${[...items]}::text[]) and need.amount > coalesce(held.amount, 0)
    order by due, order_id, item`.execute(db)
  return rows
}

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
  wantedBy: (orderId) =>
    outer.db
      .selectFrom('stockNeed')
      .select(needColumns)
      .where('shopId', '=', outer.shopId)
      .where('orderId', '=', orderId)
      .orderBy('item')
      .execute(),
  lacking: (items) => (items.length === 0 ? Promise.resolve([]) : lacking(outer, items)),
  want: (orderId, needs) =>
    atomic(outer, async ({ db, shopId }) => {
      await db.deleteFrom('stockNeed').where('shopId', '=', shopId).where('orderId', '=', orderId).execute()
      const rows = needs.filter(({ amount }) => amount > 0).map((need) => ({ shopId, orderId, ...need }))
      if (rows.length > 0) await db.insertInto('stockNeed').values(rows).execute()
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

const templatesIn = ({ db, shopId }: Scope): Templates => ({
  templates: () =>
    db
      .selectFrom('shelfTemplate')
      .select(['key', 'box', 'made', 'brushed'])
      .where('shopId', '=', shopId)
      .orderBy('box')
      .orderBy('key')
      .execute(),
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
