import { minutes } from '../../../domain/units/units.ts'
import { ticketStates } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { shopPlanFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { localOf } from '../say/say-floor.ts'
import { itemName } from '../stock/item-name.ts'

type Cell = string | number | null
type Table = { readonly head: readonly string[]; readonly rows: readonly (readonly Cell[])[] }

/** A cell that a spreadsheet would take for a formula is written as text, with an apostrophe before it. */
const defused = (cell: Cell): string => {
  if (typeof cell === 'number') return String(cell)
  const text = cell ?? ''
  return /^[\s]*[=+\-@]|^[\t\r]/.test(text) ? `'${text}` : text
}

const quoted = (cell: Cell): string => {
  const text = defused(cell)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/** Comma-separated values with a head (RFC 4180). */
export const writeTable = ({ head, rows }: Table): string =>
  [head, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('')

const orders = async (desk: Desk): Promise<Table> => {
  const shop = desk.store.shop(desk.shopId)
  const { sold } = shopPlanFrom((await shop.plan.read()).body)
  const listed = await shop.orders.list(['signed-off', 'planned', 'ticketed', 'on-bench', 'checked', 'bagged', 'collected'])
  const tickets = new Map((await shop.tickets.list(ticketStates)).map((ticket) => [ticket.orderId, ticket]))
  return {
    head: ['order', 'ticket', 'revision', 'state', 'promised', 'handed over'],
    rows: listed.map(({ orderId, revision, state, handedOverAt }) => {
      const promised = sold.find(({ id }) => id === orderId)?.promised ?? null
      const ticket = tickets.get(orderId)
      return [
        orderId,
        ticket === undefined ? '' : ticketName(ticket.number),
        revision,
        state,
        promised === null ? '' : localOf(desk, promised),
        handedOverAt === null ? '' : localOf(desk, handedOverAt),
      ]
    }),
  }
}

const stock = async (desk: Desk): Promise<Table> => {
  const ledger = await desk.store.shop(desk.shopId).stock.ledger()
  return {
    head: ['item', 'name', 'lot', 'order', 'move', 'amount'],
    rows: ledger.map(({ item, lot, orderId, kind, amount }) => [item, itemName(desk, item), lot, orderId, kind, amount]),
  }
}

const yearMinutes = 366 * 1_440

const remakes = async (desk: Desk): Promise<Table> => {
  const since = desk.clock.now()
  const listed = await desk.store.shop(desk.shopId).floor.remakes(minutes(since - yearMinutes))
  return {
    head: ['remake', 'order', 'line', 'quantity', 'reason', 'whose', 'cost in minor units', 'at', 'done'],
    rows: listed.map((one) => [
      one.remakeId,
      one.orderId,
      one.line,
      one.quantity,
      one.reason,
      one.whose,
      one.cost,
      localOf(desk, one.at),
      one.doneAt === null ? '' : localOf(desk, one.doneAt),
    ]),
  }
}

const tables = { orders, stock, remakes } as const
const tableNames = ['orders', 'stock', 'remakes'] as const

/** A table of the shop's records for a spreadsheet, without names of people; null when there is none of that name. */
export const tableOf = async (desk: Desk, name: string): Promise<string | null> => {
  const known = tableNames.find((one) => one === name)
  return known === undefined ? null : writeTable(await tables[known](desk))
}
