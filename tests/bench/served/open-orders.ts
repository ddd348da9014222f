import type { Records } from '../../support/service-watch.ts'

/** Tables with a row or more of an order, and the columns that hold its id or its ticket's. */
const parts = [
  { table: '"order"', ids: ['order_id'] },
  { table: 'order_revision', ids: ['order_id'] },
  { table: 'quote', ids: ['order_id'] },
  { table: 'ticket', ids: ['order_id', 'ticket_id'] },
  { table: 'step', ids: ['order_id'] },
  { table: 'event', ids: ['order_id', 'ticket_id'] },
  { table: 'stock_move', ids: ['order_id'] },
  { table: 'stock_need', ids: ['order_id'] },
] as const

/** Columns that the database gives by itself. */
const given = new Set(['event_id', 'move_id'])

/**
 * Copies one order on the bench, row by row, until there are so many open ones. The plan is left as it is: what it costs as
 * it grows is measured by itself.
 */
export const growOpenOrders = async (records: Records, wanted: number): Promise<void> => {
  const [row] = await records.rows(
    `select count(*)::int as open, min(order_id) as model from platenpost."order" where state = 'on-bench'`,
  )
  const [open, model] = [Number(row?.['open']), String(row?.['model'])]
  if (open >= wanted) return
  // An order's id and its tickets' differ in their first sign alone, and in what comes after.
  const stem = model.slice(1)
  for (const { table, ids } of parts) {
    const columns = await records.rows(
      `select column_name as name from information_schema.columns where table_schema = 'platenpost' and table_name = $1 order by ordinal_position`,
      table.replaceAll('"', ''),
    )
    const names = columns.map(({ name }) => String(name)).filter((name) => !given.has(name))
    const values = names.map((name) => {
      if (ids.some((id) => id === name)) return `replace(m."${name}", '${stem}', '${stem}x' || n)`
      if (name === 'conversation_id') return 'null'
      return name === 'number' ? '1000000 + n' : `m."${name}"`
    })
    await records.rows(
      `insert into platenpost.${table} (${names.map((name) => `"${name}"`).join(', ')})
        select ${values.join(', ')} from platenpost.${table} m, generate_series($2::int, $3::int) n where m.order_id = $1`,
      model,
      open,
      wanted,
    )
  }
  await records.rows('analyze')
}
