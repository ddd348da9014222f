import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { morningWords } from '../../../../templates/desk/morning.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { stationsOf } from '../../../domain/schedule/book/station-records.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { MorningLine } from '../../../ports/counter-desk.ts'
import type { Remake } from '../../../ports/floor-records.ts'
import type { Desk } from '../desk.ts'
import { readLife } from '../floor/read-life.ts'
import { rowText } from '../floor/row-text.ts'
import { shopPlanFrom, ticketFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { amountText, itemName, packsText } from '../stock/item-name.ts'
import { shoppingNow } from '../stock/shopping-now.ts'
import { supplyOf } from '../stock/supply-of.ts'

export type FloorSections = {
  readonly shorts: readonly MorningLine[]
  readonly remakes: readonly MorningLine[]
  readonly off: readonly MorningLine[]
  readonly kept: readonly MorningLine[]
}

const dayMinutes = 1_440
const lookBack = 7 * dayMinutes

type Line = Pick<MorningLine, 'text' | 'todo'> & Partial<MorningLine>
const line = (parts: Line): MorningLine => ({ order: null, ticket: null, ...parts })

const showing = (desk: Desk, language: Language) => {
  const show = showFor(desk.workshop.shop, language)
  const moment = (at: number): string => show.moment(writeLocal(desk.zone, minutes(at)))
  return { words: morningWords[language], show, moment }
}

const shorts = async (desk: Desk, language: Language): Promise<readonly MorningLine[]> => {
  const { words, moment } = showing(desk, language)
  return (await shoppingNow(desk)).map(({ item, packs, missing, orderBy }) => {
    const { unit } = supplyOf(desk.workshop.shop)(item)
    const bought = packsText(packs, (pack) => amountText(desk, { item, amount: pack * unit }, language))
    const what = `${itemName(desk, item, language)}: −${amountText(desk, { item, amount: missing }, language)}`
    const text = orderBy <= desk.clock.now() ? words.orderNow(what) : words.orderBy(what, moment(orderBy))
    return line({ text, todo: `${words.todo.order}: ${bought}` })
  })
}

/** Whose garment is made again: the ticket's name and the player as the bench calls them. */
const remadeName = async (desk: Desk, { orderId, ticketId, line: of, quantity }: Remake): Promise<string> => {
  const life = await readLife(desk, desk.store.shop(desk.shopId), ticketId)
  if (life === null) return `${orderId}, ${of}`
  const { facts } = ticketFrom(life.ticket.body)
  const row = facts.roster.find(({ line: no }) => no === of)
  const name = ticketName(life.ticket.number)
  return row === undefined ? name : `${name} ${rowText(desk, facts, { ...row, quantity })}`
}

/** Open remakes, and what the last seven days cost. */
const remakes = async (desk: Desk, language: Language): Promise<readonly MorningLine[]> => {
  const { words, show } = showing(desk, language)
  const reasons: { readonly [reason: string]: string } = floorWords[language].reasons
  const all = await desk.store.shop(desk.shopId).floor.remakes(minutes(desk.clock.now() - lookBack))
  const open = await Promise.all(
    all
      .filter(({ doneAt }) => doneAt === null)
      .map(async (remake) =>
        line({
          text: words.remake(await remadeName(desk, remake), reasons[remake.reason] ?? remake.reason, show.money(remake.cost)),
          todo: words.todo.remake,
          order: remake.orderId,
          ticket: remake.ticketId,
        }),
      ),
  )
  if (all.length === 0) return []
  const cost = all.reduce((sum, one) => sum + one.cost, 0)
  return [...open, line({ text: words.remakeCost(all.length, show.money(cost)), todo: words.todo.learn })]
}

/** People whose own hours have nothing open today; a day on which nobody comes is said once. */
const off = (desk: Desk, language: Language): readonly MorningLine[] => {
  const { words } = showing(desk, language)
  const now = desk.clock.now()
  const today = writeLocal(desk.zone, now).slice(0, 10)
  const { hours, stations: records } = desk.workshop.shop
  const stations = stationsOf(desk.zone, hours, records, { from: minutes(now - dayMinutes), to: minutes(now + 2 * dayMinutes) })
  const isToday = (at: number): boolean => writeLocal(desk.zone, minutes(at)).slice(0, 10) === today
  const people = stations.filter(({ kind }) => kind === 'person')
  const away = people.filter(({ axis }) => !axis.starts.some((start) => isToday(start)))
  if (away.length > 1 && away.length === people.length) return [line({ text: words.allOff, todo: words.todo.cover })]
  return away.map(({ id }) => line({ text: words.off(id.replaceAll('-', ' ')), todo: words.todo.cover }))
}

/** Promises of the last seven days: how many were bagged in time, and which were not. */
const kept = async (desk: Desk, language: Language): Promise<readonly MorningLine[]> => {
  const { words, moment } = showing(desk, language)
  const shop = desk.store.shop(desk.shopId)
  const now = desk.clock.now()
  const { sold } = shopPlanFrom((await shop.plan.read()).body)
  const due = sold.flatMap(({ id, promised, needBy }) => {
    const at = promised ?? needBy
    return at <= now && at > now - lookBack ? [{ id, at }] : []
  })
  const bagged = new Map(
    (await shop.events.between(minutes(now - 2 * lookBack), minutes(now + 1)))
      .filter(({ code }) => code === 'bagged')
      .map(({ orderId, at }) => [orderId, at]),
  )
  const late = due.filter(({ id, at }) => (bagged.get(id) ?? Number.POSITIVE_INFINITY) > at)
  if (due.length === 0) return []
  const broken = late.map(({ id, at }) => {
    const done = bagged.get(id)
    return line({
      text: words.broken(id, moment(at), done === undefined ? '–' : moment(done)),
      todo: words.todo.learn,
      order: id,
    })
  })
  return [line({ text: words.kept(due.length - late.length, due.length), todo: words.todo.learn }), ...broken]
}

/** The parts of the morning sheet that look at stock, remakes, people and promises. */
export const floorSections = async (desk: Desk, language: Language): Promise<FloorSections> => ({
  shorts: await shorts(desk, language),
  remakes: await remakes(desk, language),
  off: off(desk, language),
  kept: await kept(desk, language),
})
