import { morningWords } from '../../../templates/desk/morning.ts'
import { sayProblem } from '../../../templates/replies/say.ts'
import { writeLocal } from '../../domain/calendar/local-time.ts'
import { oddRecords } from '../../domain/shop/odd-records.ts'
import { type Language, type Show, showFor } from '../../domain/shop/show.ts'
import { type Minutes, minutes } from '../../domain/units/units.ts'
import type { Morning, MorningLine, MorningSection } from '../../ports/counter-desk.ts'
import type { StoredOrder, StoredTicket } from '../../ports/work-records.ts'
import type { Desk } from './desk.ts'
import { orderFrom, type PlacedOrder, type ShopPlan, shopPlanFrom, ticketFrom } from './records.ts'
import { ticketName } from './ticket-names.ts'

type Entry = {
  readonly order: StoredOrder
  readonly team: string
  readonly gameDay: string | null
  readonly pieces: number
  readonly money: string
  readonly placed: PlacedOrder | null
  readonly ticket: StoredTicket | null
}

type Sheet = {
  readonly entries: readonly Entry[]
  readonly plan: ShopPlan
  readonly short: readonly { readonly item: string; readonly missing: number }[]
  readonly today: string
  readonly now: Minutes
  readonly show: Show
  readonly words: (typeof morningWords)[Language]
  /** What in the shop's own records looks wrong, in words. */
  readonly odd: readonly string[]
  readonly localDay: (at: number) => string
}

const dayMinutes = 1_440

const entryOf = async (desk: Desk, order: StoredOrder, plan: ShopPlan): Promise<Entry | null> => {
  const shop = desk.store.shop(desk.shopId)
  const revision = await shop.orders.revision(order.orderId, order.revision)
  if (revision === null) return null
  const document = orderFrom(revision.document)
  const tickets = await shop.tickets.ofOrder(order.orderId)
  return {
    order,
    team: document.team,
    gameDay: document.gameDay ?? null,
    pieces: document.roster.reduce((sum, row) => sum + row.quantity, 0),
    money: document.money.state,
    placed: plan.sold.find((sold) => sold.id === order.orderId) ?? null,
    ticket: tickets.find((ticket) => ticket.state === 'open') ?? null,
  }
}

const nameOf = ({ team, ticket, order }: Entry): string =>
  ticket === null ? `${team} (${order.orderId})` : `${ticketName(ticket.number)} ${team}`

const line = (entry: Entry, text: string, todo: string): MorningLine => ({
  text,
  todo,
  order: entry.order.orderId,
  ticket: entry.ticket?.ticketId ?? null,
})

const inWork: ReadonlySet<string> = new Set(['signed-off', 'planned', 'ticketed', 'on-bench', 'checked'])

const leaving = ({ entries, words, localDay, now, show }: Sheet): readonly MorningLine[] => {
  const days = new Set([localDay(now), localDay(now + dayMinutes)])
  return entries
    .filter(
      ({ order, placed }) => inWork.has(order.state) && placed !== null && days.has(localDay(placed.promised ?? placed.needBy)),
    )
    .map((entry) =>
      line(entry, words.leaves(nameOf(entry), entry.pieces, show.day(localDay(entry.placed?.promised ?? now))), words.todo.bag),
    )
}

const gameSoon = ({ entries, words, localDay, now, show }: Sheet): readonly MorningLine[] => {
  const last = localDay(now + 3 * dayMinutes)
  return entries
    .filter(({ order, gameDay }) => inWork.has(order.state) && order.state !== 'checked' && gameDay !== null && gameDay <= last)
    .map((entry) => line(entry, words.game(nameOf(entry), show.day(entry.gameDay ?? '')), words.todo.countIn))
}

const waiting = ({ entries, words }: Sheet): readonly MorningLine[] =>
  entries
    .filter(({ order }) => order.state === 'quoted' || order.hold !== null)
    .map((entry) =>
      line(entry, words.waits(nameOf(entry)), entry.order.hold === null ? words.todo.signOff : entry.order.hold.why),
    )

/** Open tickets by the temperature they are pressed at, so that the press changes as seldom as possible. */
const pressList = ({ entries, words, show }: Sheet): readonly MorningLine[] =>
  entries
    .flatMap((entry) => {
      if (entry.ticket === null || entry.order.state !== 'on-bench') return []
      const steps = ticketFrom(entry.ticket.body).facts.press.filter((step) => step.action === 'press')
      const hottest = Math.max(...steps.map((step) => step.tenthsC ?? 0))
      return [{ entry, hottest, machine: steps[0]?.machine ?? '' }]
    })
    .toSorted((a, b) => a.hottest - b.hottest)
    .map(({ entry, hottest, machine }) =>
      line(entry, words.press(nameOf(entry), show.temperature(hottest), machine), words.todo.take),
    )

const shorts = ({ short, words }: Sheet): readonly MorningLine[] =>
  short.map(({ item, missing }) => ({ text: words.short(item, missing), todo: words.todo.order, order: null, ticket: null }))

const collectable = ({ entries, words }: Sheet): readonly MorningLine[] =>
  entries
    .filter(({ order }) => order.state === 'bagged')
    .map((entry) => line(entry, words.bagged(nameOf(entry)), entry.money === 'paid' ? words.todo.call : words.todo.callAndMoney))

const odd = ({ odd: records, words }: Sheet): readonly MorningLine[] =>
  records.map((text) => ({ text, todo: words.todo.lookUp, order: null, ticket: null }))

const sectionsOf = (sheet: Sheet): readonly MorningSection[] => {
  const titles: { readonly [section: string]: string } = sheet.words.titles
  return [
    { code: 'leaving', lines: leaving(sheet) },
    { code: 'game-soon', lines: gameSoon(sheet) },
    { code: 'waiting', lines: waiting(sheet) },
    { code: 'press-list', lines: pressList(sheet) },
    { code: 'shorts', lines: shorts(sheet) },
    { code: 'collectable', lines: collectable(sheet) },
    { code: 'records', lines: odd(sheet) },
  ].map(({ code, lines }) => ({ code, title: titles[code] ?? code, lines }))
}

/** What the owner opens in the morning, in the order in which it hurts; every line ends in a thing to do. */
export const morningSheet = async (desk: Desk, language: Language): Promise<Morning> => {
  const shop = desk.store.shop(desk.shopId)
  const now = desk.clock.now()
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const orders = await shop.orders.list(['quoted', 'signed-off', 'planned', 'ticketed', 'on-bench', 'checked', 'bagged'])
  const entries = await Promise.all(orders.map((order) => entryOf(desk, order, plan)))
  const sums = await shop.stock.sums()
  const today = writeLocal(desk.zone, now).slice(0, 10)
  const show = showFor(desk.workshop.shop, language)
  const sheet: Sheet = {
    entries: entries.filter((entry) => entry !== null),
    plan,
    short: [...sums].filter(([, amount]) => amount < 0).map(([item, amount]) => ({ item, missing: -amount })),
    today,
    now,
    show,
    odd: oddRecords(desk.workshop.shop).map((problem) => sayProblem(problem, language, show)),
    words: morningWords[language],
    localDay: (at) => writeLocal(desk.zone, minutes(at)).slice(0, 10),
  }
  return { date: today, sections: sectionsOf(sheet) }
}
