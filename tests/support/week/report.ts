import type { Desk } from '../../../src/desk/service/desk.ts'
import { orderIdOf } from '../../../src/desk/service/records/order-id.ts'
import { quoteFrom } from '../../../src/desk/service/records/records.ts'
import { writeLocal } from '../../../src/domain/calendar/local-time.ts'
import { pilesOf } from '../../../src/domain/stock/ledger.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import type { ShopEvent } from '../../../src/ports/work-records.ts'
import type { Customer } from './customers.ts'
import type { Ran } from './run-week.ts'

export type OrderEnd = {
  readonly number: number
  readonly orderId: string
  readonly end: string
  /** Minutes from being bagged to the promise that stood then; negative is late. */
  readonly early: number | null
  readonly moved: number
  readonly log: readonly string[]
}
export type Summary = {
  readonly orders: number
  readonly ends: { readonly [end: string]: number }
  readonly kept: number
  readonly keptAfterConsent: number
  readonly brokenWithoutWord: readonly string[]
  readonly unexplained: readonly string[]
  readonly gapsInLogs: readonly string[]
  readonly remakes: number
  readonly remakesOpen: number
  readonly stockWrong: readonly string[]
  readonly mornings: number
  readonly lapsesTold: number
  readonly earliness: { readonly least: number; readonly median: number }
  readonly list: readonly OrderEnd[]
}

const factOf = (event: ShopEvent, name: string): unknown =>
  typeof event.facts === 'object' && event.facts !== null ? Reflect.get(event.facts, name) : undefined

type Promised = { readonly at: number; readonly to: number; readonly by: 'sold' | 'person' }

/** What was promised with the proof that was signed. */
const soldFor = async (desk: Desk, orderId: string, event: ShopEvent): Promise<readonly Promised[]> => {
  const shop = desk.store.shop(desk.shopId)
  const revision = await shop.orders.revision(orderId, Number(factOf(event, 'revision')))
  const stored = revision === null ? null : await shop.quotes.read({ orderId, revision: revision.revision, hash: revision.hash })
  const placed = stored === null || stored === undefined ? null : quoteFrom(stored).placed
  return placed === null ? [] : [{ at: event.at, to: placed.promised ?? placed.needBy, by: 'sold' }]
}

const movedBy = (event: ShopEvent): readonly Promised[] => {
  if (event.code === 'promise-moved') return [{ at: event.at, to: Number(factOf(event, 'now')), by: 'person' }]
  const agreed = event.code === 'promise-answered' && factOf(event, 'agreed') === true && factOf(event, 'kind') === 'move-promise'
  return agreed ? [{ at: event.at, to: Number(factOf(event, 'at')), by: 'person' }] : []
}

/** The promise as it was sold and as people moved it afterwards, each with its hour. */
const promises = async (desk: Desk, orderId: string, events: readonly ShopEvent[]): Promise<readonly Promised[]> => {
  const all = events.map((event) => (event.code === 'signed-off' ? soldFor(desk, orderId, event) : movedBy(event)))
  return (await Promise.all(all)).flat()
}

/** What an order that was handed over must have gone through, in this order. */
const wholeLog = [
  'asked',
  'quoted',
  'signed-off',
  'planned',
  'ticketed',
  'posted',
  'take',
  'start',
  'checked',
  'bagged',
  'collected',
]

const hasInOrder = (log: readonly string[]): boolean => {
  let at = 0
  for (const code of log) if (code === wholeLog[at]) at += 1
  return at === wholeLog.length
}

const endOf = (state: string | undefined, { wish, cancelled }: Customer): string => {
  if (state === 'collected') return 'collected'
  if (state === 'cancelled' && !cancelled) return 'cancelled, nobody asked'
  if (state === 'cancelled')
    return wish.temper === 'cancels' ? 'cancelled by the customer' : 'cancelled, nothing holds on its cloth'
  return state === 'quoted' && wish.temper === 'never' ? 'never signed, let go' : `still ${state ?? 'not there'}`
}

const oneEnd = async (desk: Desk, customer: Customer): Promise<OrderEnd> => {
  const orderId = orderIdOf(customer.id ?? '')
  const shop = desk.store.shop(desk.shopId)
  const [order, events] = await Promise.all([shop.orders.read(orderId), shop.events.ofOrder(orderId)])
  const moves = await promises(desk, orderId, events)
  const bagged = events.findLast(({ code }) => code === 'bagged')?.at
  const promised = moves.findLast(({ at }) => bagged === undefined || at <= bagged)?.to
  return {
    number: customer.wish.number,
    orderId,
    end: endOf(order?.state, customer),
    early: bagged === undefined || promised === undefined ? null : promised - bagged,
    moved: moves.filter(({ by }) => by === 'person').length,
    log: events.map(({ code }) => code),
  }
}

const stockWrongs = async (desk: Desk): Promise<readonly string[]> => {
  const piles = pilesOf(await desk.store.shop(desk.shopId).stock.ledger())
  return [...piles].flatMap(([item, pile]) => {
    const isConserved = pile.reserved + pile.free + pile.used === pile.received - pile.writtenOff
    const isPositive = Math.min(pile.reserved, pile.free, pile.used, pile.received, pile.writtenOff) >= 0
    return isConserved && isPositive && pile.reserved === 0 ? [] : [`${item} ${JSON.stringify(pile)}`]
  })
}

const mornings = async (desk: Desk, from: number, to: number): Promise<number> => {
  const shop = desk.store.shop(desk.shopId)
  const days = new Set(
    Array.from({ length: Math.ceil((to - from) / 60) }, (_, hour) =>
      writeLocal(desk.zone, minutes(from + hour * 60)).slice(0, 10),
    ),
  )
  const found = await Promise.all([...days].map(async (day) => (await shop.messages.of(`morning-${day}`)) !== null))
  return found.filter(Boolean).length
}

const lapses = async (desk: Desk, list: readonly OrderEnd[]): Promise<number> => {
  const shop = desk.store.shop(desk.shopId)
  const told = await Promise.all(list.map(async ({ orderId }) => (await shop.messages.of(`lapsed-${orderId}-1`)) !== null))
  return told.filter(Boolean).length
}

/** How a week ended, counted from the records alone. */
export const summaryOf = async (desk: Desk, ran: Ran, from: number): Promise<Summary> => {
  const list: OrderEnd[] = []
  for (const customer of ran.customers) list.push(await oneEnd(desk, customer))
  const remakes = await desk.store.shop(desk.shopId).floor.remakes(minutes(from))
  const done = list.filter(({ early }) => early !== null)
  const ends: { [end: string]: number } = {}
  for (const { end } of list) ends[end] = (ends[end] ?? 0) + 1
  const early = done.map((one) => one.early ?? 0).toSorted((one, other) => one - other)
  const name = ({ number, orderId }: OrderEnd): string => `${number} (${orderId})`
  return {
    orders: list.length,
    ends,
    kept: done.filter((one) => (one.early ?? 0) >= 0 && one.moved === 0).length,
    keptAfterConsent: done.filter((one) => (one.early ?? 0) >= 0 && one.moved > 0).length,
    brokenWithoutWord: done.filter((one) => (one.early ?? 0) < 0).map((one) => `${name(one)} by ${-(one.early ?? 0)} min`),
    unexplained: list
      .filter(({ end }) => /^still|nobody asked/.test(end))
      .map((one) => `${name(one)} ${one.end}: ${one.log.join(' ')}`),
    gapsInLogs: list
      .filter(({ end, log }) => end === 'collected' && !hasInOrder(log))
      .map((one) => `${name(one)}: ${one.log.join(' ')}`),
    remakes: remakes.length,
    remakesOpen: remakes.filter(({ doneAt }) => doneAt === null).length,
    stockWrong: await stockWrongs(desk),
    mornings: await mornings(desk, from, ran.until),
    lapsesTold: await lapses(desk, list),
    earliness: { least: early[0] ?? 0, median: early[Math.floor(early.length / 2)] ?? 0 },
    list,
  }
}

/** The summary for people, as a table. */
export const tableOf = (summary: Summary, seed: number): string => {
  const rows: readonly (readonly [string, string | number])[] = [
    ['orders', summary.orders],
    ...Object.entries(summary.ends).map(([end, many]): [string, number] => [`  ${end}`, many]),
    ['promises kept as first given', summary.kept],
    ['promises kept after a person agreed to move them', summary.keptAfterConsent],
    ['promises broken without a word', summary.brokenWithoutWord.length],
    ['bagged before the promise, least and median (min)', `${summary.earliness.least}, ${summary.earliness.median}`],
    ['garments made again (still open)', `${summary.remakes} (${summary.remakesOpen})`],
    ['items whose stock is not conserved', summary.stockWrong.length],
    ['event logs with a gap', summary.gapsInLogs.length],
    ['morning sheets', summary.mornings],
    ['customers told that their place was let go', summary.lapsesTold],
  ]
  const lines = rows.map(([name, value]) => `${name.padEnd(52)} ${value}`)
  const troubles = [...summary.brokenWithoutWord, ...summary.unexplained, ...summary.gapsInLogs, ...summary.stockWrong]
  return [`A week in the shop, seed ${seed}`, ...lines, ...troubles.map((one) => `  ! ${one}`)].join('\n')
}

/** A line of the week as it goes by, with the machine's time in front of it. */
export const aloud = (line: string): void => {
  process.stdout.write(`${new Date().toISOString().slice(11, 19)} ${line}\n`)
}
