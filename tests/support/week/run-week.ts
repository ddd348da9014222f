import { orderIdOf } from '../../../src/desk/service/records/order-id.ts'
import { shopPlanFrom } from '../../../src/desk/service/records/records.ts'
import { intervalsOf } from '../../../src/domain/calendar/axis.ts'
import { stationsOf } from '../../../src/domain/schedule/book/station-records.ts'
import { heldLots, pilesOf } from '../../../src/domain/stock/ledger.ts'
import { type Minutes, minutes } from '../../../src/domain/units/units.ts'
import type { Member } from '../../../src/ports/counter-desk.ts'
import { type Customer, customerActs, newCustomer } from './customers.ts'
import type { Hands } from './hands.ts'
import { type Owner, ownerActs } from './owner.ts'
import { staffAct } from './staff.ts'
import type { Wish } from './wishes.ts'

export type Crew = { readonly owner: Member; readonly staff: readonly Member[] }
export type Ran = { readonly customers: readonly Customer[]; readonly until: Minutes; readonly looks: number }

const day = 1_440
const persons = ['person-1', 'person-2', 'person-3', 'person-5']

/** Who of the staff is in the shop at a minute: each keeps the hours of one person of the shop's records; there may be several of each. */
const rotaOf = (hands: Hands, crew: Crew, from: number) => {
  const { desk } = hands
  const { hours, stations } = desk.workshop.shop
  const range = { from: minutes(from - day), to: minutes(from + 30 * day) }
  const axes = new Map(stationsOf(desk.zone, hours, stations, range).map(({ id, axis }) => [id, intervalsOf(axis)]))
  return (now: number): readonly Member[] =>
    crew.staff.filter((_, at) =>
      (axes.get(persons[at % persons.length] ?? '') ?? []).some(({ start, end }) => start <= now && now < end),
    )
}

/** Things that happen to the shop itself, each at its hour after the week began. */
const misfortunes = (
  hands: Hands,
  { owner, staff }: Crew,
): readonly { readonly after: number; readonly strike: () => Promise<unknown> }[] => {
  const by = staff[0] ?? owner
  const probe = (press: string, readings: string) => hands.act(by, 's:press-check', { press, set: '300', readings })
  const countShort = async (): Promise<void> => {
    const { stock } = hands.desk.store.shop(hands.desk.shopId)
    const need = (await stock.needs()).find(({ item }) => item.startsWith('stone-'))
    if (need === undefined) return
    const ledger = await stock.ledger()
    const pile = pilesOf(ledger).get(need.item)
    const lot = heldLots(ledger, need)[0]?.lot ?? (await stock.lots()).find(({ item }) => item === need.item)?.lot ?? ''
    const there = Math.max(0, (pile?.reserved ?? 0) - 40)
    await hands.act(by, 's:counted', { item: need.item, lot, amount: String(there) })
  }
  return [
    { after: 2 * 60, strike: () => probe('press-2', '300, 330, 300, 301, 299') },
    { after: 7 * 60, strike: () => probe('press-2', '300, 300, 300, 301, 299') },
    { after: day + 5 * 60, strike: () => hands.die() },
    { after: day + 8 * 60, strike: countShort },
    { after: 2 * day + 4 * 60, strike: () => hands.die() },
  ]
}

/** Ends: collected, cancelled, or never signed and let go. */
const isOver = async ({ desk }: Hands, customer: Customer): Promise<boolean> => {
  if (customer.id === null) return false
  const order = await desk.store.shop(desk.shopId).orders.read(orderIdOf(customer.id))
  if (order === null) return false
  if (customer.wish.temper === 'never') {
    const { held } = shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)
    return order.state === 'quoted' && !held.some(({ id }) => id === order.orderId)
  }
  return order.state === 'collected' || order.state === 'cancelled'
}

export type WeekSettings = {
  readonly hands: Hands
  readonly crew: Crew
  readonly wishes: readonly Wish[]
  readonly from: Minutes
  /** The week is called off after so many days. */
  readonly mostDays: number
  /** Hears how far the week is, once on every day of the shop. */
  readonly tell?: (line: string) => void
}

/** How many orders stand where, on which day. */
const dayLine = async ({ desk }: Hands, customers: readonly Customer[], day: number): Promise<string> => {
  const shop = desk.store.shop(desk.shopId)
  const states = new Map<string, number>()
  for (const { id } of customers) {
    const state = id === null ? 'to come' : ((await shop.orders.read(orderIdOf(id)))?.state ?? 'in talk')
    states.set(state, (states.get(state) ?? 0) + 1)
  }
  return `day ${day}: ${[...states].map(([state, many]) => `${many} ${state}`).join(', ')}`
}

/** Lets a week go by: at each look customers, the owner and whoever is there do what is theirs, until every order is over. */
export const runWeek = async ({ hands, crew, wishes, from, mostDays, tell }: WeekSettings): Promise<Ran> => {
  const { clock } = hands.desk
  const shop = hands.desk.store.shop(hands.desk.shopId)
  const customers = wishes.map(newCustomer)
  const open = new Set(customers)
  const rota = rotaOf(hands, crew, from)
  const owner: Owner = { hands, who: crew.owner, pressed: new Set(), lateEvery: 3, received: new Set(), read: 0 }
  const baggedAt = new Map<string, number>()
  const troubled = new Set<string>()
  const wishOf = (orderId: string): Wish | undefined => customers.find(({ id }) => id !== null && orderIdOf(id) === orderId)?.wish
  const ahead = [...misfortunes(hands, crew)]
  const atWork = async (now: number, there: readonly Member[]): Promise<void> => {
    if (there.length === 0) return
    await ownerActs(owner, now)
    const plan = shopPlanFrom((await shop.plan.read()).body)
    await staffAct({ hands, now, plan, there, wishOf, baggedAt, troubled })
  }
  let looks = 0
  let told = 0
  for (; open.size > 0 && clock.now() < from + mostDays * day; looks += 1) {
    const now = clock.now()
    const today = Math.floor((now - from) / day) + 1
    if (tell !== undefined && today > told) tell(await dayLine(hands, customers, today))
    told = Math.max(told, today)
    const plan = shopPlanFrom((await shop.plan.read()).body)
    for (const customer of open) await customerActs({ hands, now, plan }, customer)
    const due = ahead.filter(({ after }) => after + from <= now)
    for (const { strike } of ahead.splice(0, due.length)) await strike()
    const there = rota(now)
    await atWork(now, there)
    for (const customer of [...open]) if (await isOver(hands, customer)) open.delete(customer)
    await hands.goOn(there.length > 0)
  }
  return { customers, until: clock.now(), looks }
}
