import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { lacking, type Need } from '../../../domain/stock/ledger.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import type { PlacedOrder, ShopPlan } from '../records.ts'
import { replanShop } from '../replan-shop.ts'
import { itemName } from '../stock/item-name.ts'
import { supplyOf } from '../stock/supply-of.ts'
import { usedAt } from '../stock/use-stock.ts'
import { ticketName } from '../ticket-names.ts'
import { changePlan } from './mark-work.ts'
import { momentOf, tellOwner, wordsFor } from './say-floor.ts'

const dayMinutes = 1_440

/** When what an item is short of can be here: with the delivery on its way, else by the seller's days from now. */
const arrivalOf = async (desk: Desk, shop: ShopStore, need: Need): Promise<number> => {
  const coming = (await shop.stock.coming()).filter(({ item }) => item === need.item)
  if (coming.length > 0) return Math.max(...coming.map(({ due }) => due))
  return desk.clock.now() + supplyOf(desk.workshop.shop)(need.item).days * dayMinutes
}

const shortsOf = async (shop: ShopStore): Promise<readonly Need[]> => {
  const ledger = await shop.stock.ledger()
  return (await shop.stock.needs()).filter((need) => lacking(ledger, need) > 0)
}

/** When all that an order is short of can be here, epoch minutes; null when nothing is short. */
export const readyAt = async (desk: Desk, shop: ShopStore, orderId: string): Promise<number | null> => {
  const shorts = (await shortsOf(shop)).filter((need) => need.orderId === orderId)
  const arrivals = await Promise.all(shorts.map((need) => arrivalOf(desk, shop, need)))
  return arrivals.length === 0 ? null : Math.max(...arrivals)
}

const waitsFor = { cut: /^cut-vinyl/, brush: /^brush-/, press: /^count-in$/ } as const

/** Work that needs the item begins when it can be here. */
const withRelease = (desk: Desk, placed: PlacedOrder, { need, at }: { need: Need; at: Minutes }): PlacedOrder => {
  const waits = waitsFor[usedAt(desk, need.item)]
  const later = (release: Minutes | null): Minutes => minutes(Math.max(release ?? 0, at))
  return {
    ...placed,
    operations: placed.operations.map((one) =>
      one.done === null && waits.test(one.id) ? { ...one, release: later(one.release) } : one,
    ),
  }
}

const endOf = (plan: ShopPlan, orderId: string): number =>
  Math.max(0, ...plan.slots.filter(({ order }) => order === orderId).map(({ end }) => end))

type Trouble = { readonly placed: PlacedOrder; readonly need: Need; readonly end: number }

/** The owner is told what the shortage would mean, once for each hour it would end at, and decides; nothing is moved here. */
const askOwner = async (desk: Desk, shop: ShopStore, { placed, need, end }: Trouble): Promise<void> => {
  const words = wordsFor(desk)
  const ticket = (await shop.tickets.ofOrder(placed.id)).at(-1)
  const promised = placed.promised ?? placed.needBy
  const later = minutes(Math.ceil(end / 15) * 15)
  await tellOwner(desk, shop, {
    nonce: `late-${placed.id}-${placed.revision}-${need.item}-${later}`,
    text: words.ownerNote.late({
      ticket: ticket === undefined ? placed.id : ticketName(ticket.number),
      item: itemName(desk, need.item),
      from: momentOf(desk, promised),
      to: momentOf(desk, later),
    }),
    actions: [
      {
        id: `o:${placed.id}:promise-${later}:${placed.revision}`,
        label: words.movePromise(momentOf(desk, later)),
        weight: 'grave',
      },
      { id: `o:${placed.id}:promise-keep:${placed.revision}`, label: words.keepPromise, weight: 'main' },
    ],
  })
}

/**
 * Looks at what sold orders are short of: work waits for what must be ordered, the plan is made anew, and where a promise would not
 * be kept the owner is asked. A promise is moved by a person or not at all.
 */
export const lookAtShorts = async (desk: Desk, shop: ShopStore): Promise<Result<null, Problem>> => {
  const shorts = await shortsOf(shop)
  if (shorts.length === 0) return ok(null)
  const arrivals = new Map<Need, Minutes>()
  for (const need of shorts) arrivals.set(need, minutes(await arrivalOf(desk, shop, need)))
  await changePlan(shop, (plan) => ({
    ...plan,
    sold: plan.sold.map((placed) =>
      shorts
        .filter(({ orderId }) => orderId === placed.id)
        .reduce((order, need) => withRelease(desk, order, { need, at: arrivals.get(need) ?? desk.clock.now() }), placed),
    ),
  }))
  const planned = await replanShop(desk, shop)
  if (!planned.ok) return planned
  for (const need of shorts) {
    const placed = planned.value.sold.find(({ id }) => id === need.orderId)
    const end = endOf(planned.value, need.orderId)
    if (placed !== undefined && end > (placed.promised ?? placed.needBy)) await askOwner(desk, shop, { placed, need, end })
  }
  return ok(null)
}
