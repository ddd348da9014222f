import { shopChannel } from '../../../src/desk/service/desk.ts'
import { tightJobs } from '../../../src/desk/service/plan/tight-jobs.ts'
import { messageFrom } from '../../../src/desk/service/records/records.ts'
import { shoppingNow } from '../../../src/desk/service/stock/shopping-now.ts'
import { supplyOf } from '../../../src/desk/service/stock/supply-of.ts'
import type { Member } from '../../../src/ports/counter-desk.ts'
import type { Hands } from './hands.ts'

export type Owner = {
  readonly hands: Hands
  readonly who: Member
  readonly pressed: Set<string>
  /** Sellers that are late: every so many-th delivery comes a day later than it was said. */
  readonly lateEvery: number
  readonly received: Set<string>
  read: number
}

const day = 1_440

/** Presses what asks for the owner in their channel: a promise to move, an order to end, a step to try again. */
const answerNotes = async (owner: Owner): Promise<void> => {
  const { hands, who, pressed } = owner
  const shop = hands.desk.store.shop(hands.desk.shopId)
  const notes = await shop.messages.after(shopChannel('owner'), owner.read)
  for (const note of notes) {
    owner.read = Math.max(owner.read, note.changed)
    for (const { id } of messageFrom(note.body).actions) {
      if (!/:promise-\d+:|:cancel:|:again-/.test(id) || pressed.has(id)) continue
      pressed.add(id)
      await hands.act(who, id)
    }
  }
}

/** No seller comes earlier because a button was pressed, and nobody gives up their stones in this week. */
const notThisWeek: ReadonlySet<string> = new Set(['earlier-delivery', 'drop-stones'])

/** Mends what is late, the lightest means first, each once; the customer is asked where only they can agree. */
const mendLate = async ({ hands, who, pressed }: Owner): Promise<void> => {
  for (const job of await tightJobs(hands.desk, 'en')) {
    const ways = job.kind === 'late' ? job.fixes.filter(({ code }) => !notThisWeek.has(code)) : []
    const next = ways.find(({ code, action }) => action !== null && (code === 'move-promise' || !pressed.has(action.id)))
    const id = next?.action?.id
    if (id === undefined) continue
    pressed.add(id)
    await hands.act(who, id)
  }
}

const isRolled = (hands: Hands, item: string): boolean => {
  const { vinyl, auxiliaries } = hands.desk.workshop.shop
  return vinyl.some(({ id }) => id === item) || auxiliaries.some(({ id, kind }) => id === item && kind === 'tape')
}

/** As a hand writes it: metres of a roll, pieces of everything else. */
const amountOf = (hands: Hands, item: string, amount: number): string =>
  String(isRolled(hands, item) ? Math.ceil(amount / 1_000) / 1_000 : amount)

/** Buys what the shopping list says, and takes in what has come. */
const shop = async (owner: Owner, now: number): Promise<void> => {
  const { hands, who, received, lateEvery } = owner
  const { desk } = hands
  const stock = desk.store.shop(desk.shopId).stock
  for (const { item, packs } of await shoppingNow(desk)) {
    const amount = packs.reduce((sum, pack) => sum + pack, 0) * supplyOf(desk.workshop.shop)(item).unit
    if (amount > 0) await hands.act(who, 's:ordered', { item, amount: amountOf(hands, item, amount) })
  }
  for (const coming of await stock.coming()) {
    if (received.has(coming.comingId)) continue
    const late = received.size % lateEvery === lateEvery - 1 ? day : 0
    if (now < coming.due + late) continue
    received.add(coming.comingId)
    const values = { item: coming.item, lot: 'week', certificate: 'C-2', coming: coming.comingId }
    await hands.act(who, 's:received', { ...values, amount: amountOf(hands, coming.item, coming.amount) })
  }
}

/** What the owner does at a look while the shop is open. */
export const ownerActs = async (owner: Owner, now: number): Promise<void> => {
  await answerNotes(owner)
  await shop(owner, now)
  await mendLate(owner)
}
