import { morningWords } from '../../../../templates/desk/morning.ts'
import { sayProblem } from '../../../../templates/replies/say.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { oddRecords } from '../../../domain/shop/odd-records.ts'
import { type Show, showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Morning, MorningLine, MorningSection } from '../../../ports/counter-desk.ts'
import type { StoredOrder, StoredTicket } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { pressSetting } from '../floor/press-setting.ts'
import { readLife } from '../floor/read-life.ts'
import { stoppedBy } from '../floor/stopped.ts'
import { orderFrom, type PlacedOrder, type ShopPlan, shopPlanFrom, ticketFrom } from '../records/records.ts'
import { holderOf, type TicketLife } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { type FloorSections, floorSections } from './morning-floor.ts'

type Entry = {
  readonly order: StoredOrder
  readonly team: string
  readonly gameDay: string | null
  readonly pieces: number
  readonly sizesLater: number
  readonly countedIn: boolean
  /** Who holds its ticket. */
  readonly holder: string | null
  /** What shuts its ticket, in words; empty where nothing does. */
  readonly stoppedBy: string
  readonly money: string
  readonly placed: PlacedOrder | null
  readonly ticket: StoredTicket | null
}

type Sheet = {
  readonly entries: readonly Entry[]
  readonly plan: ShopPlan
  readonly floor: FloorSections
  readonly today: string
  readonly now: Minutes
  readonly show: Show
  readonly words: (typeof morningWords)[Language]
  /** What in the shop's own records looks wrong, in words. */
  readonly odd: readonly string[]
  readonly localDay: (at: number) => string
}

const dayMinutes = 1_440

const isCountedIn = (life: TicketLife | null): boolean =>
  life?.gates.every(({ gate, is }) => gate.code !== 'count-in' || is === 'open') ?? false

const entryOf = async (desk: Desk, order: StoredOrder, plan: ShopPlan): Promise<Entry | null> => {
  const shop = desk.store.shop(desk.shopId)
  const revision = await shop.orders.revision(order.orderId, order.revision)
  if (revision === null) return null
  const document = orderFrom(revision.document)
  const tickets = await shop.tickets.ofOrder(order.orderId)
  const ticket = tickets.find(({ state }) => state === 'open') ?? null
  const life = ticket === null ? null : await readLife(desk, shop, ticket.ticketId)
  return {
    order,
    team: document.team,
    gameDay: document.gameDay ?? null,
    pieces: document.roster.reduce((sum, row) => sum + row.quantity, 0),
    stoppedBy: life === null ? '' : stoppedBy(desk, life),
    money: document.money.state,
    sizesLater: document.roster.filter(({ size }) => size === 'later').length,
    countedIn: isCountedIn(life),
    holder: life === null ? null : (holderOf(life.findings)?.by ?? null),
    placed: plan.sold.find((sold) => sold.id === order.orderId) ?? null,
    ticket,
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

/** The hours an order leaves at: the first of two parts with its pieces, and what is promised of all. */
const hoursOf = ({
  promised,
  needBy,
  first,
}: PlacedOrder): readonly { readonly at: Minutes; readonly pieces: number | null }[] => [
  ...(first === undefined ? [] : [{ at: first.at, pieces: first.garments }]),
  { at: promised ?? needBy, pieces: null },
]

const leaving = ({ entries, words, localDay, now, show }: Sheet): readonly MorningLine[] => {
  const days = new Set([localDay(now), localDay(now + dayMinutes)])
  return entries
    .filter(
      ({ order, placed }) =>
        inWork.has(order.state) && placed !== null && hoursOf(placed).some(({ at }) => days.has(localDay(at))),
    )
    .flatMap((entry) =>
      (entry.placed === null ? [] : hoursOf(entry.placed))
        .filter(({ at }) => days.has(localDay(at)))
        .slice(0, 1)
        .map(({ at, pieces }) =>
          line(entry, words.leaves(nameOf(entry), pieces ?? entry.pieces, show.day(localDay(at))), words.todo.bag),
        ),
    )
}

const gameSoon = ({ entries, words, localDay, now, show }: Sheet): readonly MorningLine[] => {
  const last = localDay(now + 3 * dayMinutes)
  return entries
    .filter(({ order, gameDay }) => inWork.has(order.state) && order.state !== 'checked' && gameDay !== null && gameDay <= last)
    .filter(({ countedIn }) => !countedIn)
    .map((entry) => line(entry, words.game(nameOf(entry), show.day(entry.gameDay ?? '')), words.todo.countIn))
}

const waiting = ({ entries, words }: Sheet): readonly MorningLine[] =>
  entries.flatMap((entry) => {
    const { order, sizesLater, stoppedBy: gates } = entry
    if (gates !== '') return [line(entry, words.stopped(nameOf(entry), gates), words.todo.decide)]
    if (order.hold !== null) return [line(entry, words.waits(nameOf(entry)), order.hold.why)]
    if (order.state === 'quoted') return [line(entry, words.waits(nameOf(entry)), words.todo.signOff)]
    const needsSizes = sizesLater > 0 && inWork.has(order.state)
    return needsSizes ? [line(entry, words.sizesLater(nameOf(entry), sizesLater), words.todo.sizes)] : []
  })

/** Open tickets by the temperature they are pressed at, so that the press changes as seldom as possible; none that is stopped. */
const pressList = ({ entries, words, show }: Sheet): readonly MorningLine[] =>
  entries
    .flatMap((entry) => {
      if (entry.ticket === null || entry.order.state !== 'on-bench' || entry.stoppedBy !== '') return []
      return [{ entry, setting: pressSetting(ticketFrom(entry.ticket.body).facts) }]
    })
    .toSorted((a, b) => a.setting.tenthsC - b.setting.tenthsC)
    .map(({ entry, setting: { tenthsC, machine } }) =>
      line(
        entry,
        words.press(nameOf(entry), show.temperature(tenthsC), machine),
        entry.holder === null ? words.todo.take : words.held(entry.holder),
      ),
    )

const collectable = ({ entries, words }: Sheet): readonly MorningLine[] =>
  entries
    .filter(({ order }) => order.state === 'bagged')
    .map((entry) =>
      entry.money === 'none' || entry.money === 'deposit'
        ? line(entry, words.unpaid(nameOf(entry)), words.todo.callAndMoney)
        : line(entry, words.bagged(nameOf(entry)), words.todo.call),
    )

const odd = ({ odd: records, words }: Sheet): readonly MorningLine[] =>
  records.map((text) => ({ text, todo: words.todo.lookUp, order: null, ticket: null }))

const sectionsOf = (sheet: Sheet): readonly MorningSection[] => {
  const titles: { readonly [section: string]: string } = sheet.words.titles
  return [
    { code: 'leaving', lines: leaving(sheet) },
    { code: 'game-soon', lines: gameSoon(sheet) },
    { code: 'waiting', lines: waiting(sheet) },
    { code: 'press-list', lines: pressList(sheet) },
    { code: 'shorts', lines: sheet.floor.shorts },
    { code: 'remakes', lines: sheet.floor.remakes },
    { code: 'off', lines: sheet.floor.off },
    { code: 'collectable', lines: collectable(sheet) },
    { code: 'kept', lines: sheet.floor.kept },
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
  const today = writeLocal(desk.zone, now).slice(0, 10)
  const show = showFor(desk.workshop.shop, language)
  const sheet: Sheet = {
    entries: entries.filter((entry) => entry !== null),
    plan,
    floor: await floorSections(desk, language),
    today,
    now,
    show,
    odd: oddRecords(desk.workshop.shop).map((problem) => sayProblem(problem, language, show)),
    words: morningWords[language],
    localDay: (at) => writeLocal(desk.zone, minutes(at)).slice(0, 10),
  }
  return { date: today, sections: sectionsOf(sheet) }
}
