import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { lacking, type Need } from '../../../domain/stock/ledger.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { replanShop } from '../plan/replan-shop.ts'
import { type PlacedOrder, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { momentOf, tellOwner, wordsFor } from '../say/say-floor.ts'
import { itemName } from '../stock/item-name.ts'
import { supplyOf } from '../stock/supply-of.ts'
import { usedAt } from '../stock/use-stock.ts'
import { changePlan } from './mark-work.ts'

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

const waitsFor = {
  cut: /^(cut-vinyl|remake-\d+-cut$)/,
  brush: /^(brush-|remake-\d+-bench$)/,
  press: /^(count-in|remake-\d+-press)$/,
} as const

type Wait = { readonly need: Need; readonly at: Minutes }

/** The work that needs an item, and when it can be here. */
const waiting = (desk: Desk, placed: PlacedOrder, { need, at }: Wait): readonly (readonly [string, Minutes])[] => {
  const waits = waitsFor[usedAt(desk, need.item)]
  return placed.operations.flatMap(({ id, done }) => (done === null && waits.test(id) ? [[id, at] as const] : []))
}

/**
 * Work that needs what is short begins when the last of it can be here; work that waits no longer has the release again that it had
 * of its own, so that stock which comes early lets it begin early.
 */
const withReleases = (desk: Desk, placed: PlacedOrder, shorts: readonly Wait[]): PlacedOrder => {
  const before = new Map(Object.entries(placed.waits ?? {}))
  const own = (one: PlacedOrder['operations'][number]): Minutes | null =>
    before.get(one.id) ?? (before.has(one.id) ? null : one.release)
  const until = new Map<string, Minutes>()
  for (const wait of shorts)
    for (const [id, at] of waiting(desk, placed, wait)) until.set(id, minutes(Math.max(until.get(id) ?? 0, at)))
  const waits = placed.operations.filter(({ id }) => until.has(id)).map((one) => [one.id, own(one)] as const)
  const { waits: _, ...rest } = placed
  return {
    ...rest,
    ...(waits.length === 0 ? {} : { waits: Object.fromEntries(waits) }),
    operations: placed.operations.map((one) => {
      const at = until.get(one.id)
      const release = own(one)
      return { ...one, release: at === undefined ? release : minutes(Math.max(release ?? 0, at)) }
    }),
  }
}

export const endOf = (plan: ShopPlan, orderId: string): number =>
  Math.max(0, ...plan.slots.filter(({ order }) => order === orderId).map(({ end }) => end))

/** `because` tells one cause from another, `why` names it to people. */
export type Trouble = { readonly placed: PlacedOrder; readonly end: number; readonly because: string; readonly why: string }

/** The owner is told what it would mean for a promise, once for each cause and hour it would end at, and decides; nothing is moved here. */
export const askAboutPromise = async (desk: Desk, shop: ShopStore, trouble: Trouble): Promise<void> => {
  const { placed, end, because, why } = trouble
  const words = wordsFor(desk)
  const ticket = (await shop.tickets.ofOrder(placed.id)).at(-1)
  const promised = placed.promised ?? placed.needBy
  const later = minutes(Math.ceil(end / 15) * 15)
  await tellOwner(desk, shop, {
    nonce: `late-${placed.id}-${placed.revision}-${because}-${later}`,
    text: words.ownerNote.late({
      ticket: ticket === undefined ? placed.id : ticketName(ticket.number),
      why,
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
 * Looks at what sold orders are short of: work waits for what must be ordered and for nothing that is here, the plan is made anew where
 * that changes it, and where a promise would not be kept the owner is asked. A promise is moved by a person or not at all.
 */
export const lookAtShorts = async (desk: Desk, shop: ShopStore): Promise<Result<null, Problem>> => {
  const shorts = await shortsOf(shop)
  await shop.plan.alone()
  const { sold } = shopPlanFrom((await shop.plan.read()).body)
  if (shorts.length === 0 && sold.every(({ waits }) => waits === undefined)) return ok(null)
  const waits: Wait[] = []
  for (const need of shorts) waits.push({ need, at: minutes(await arrivalOf(desk, shop, need)) })
  const of = (id: string): readonly Wait[] => waits.filter(({ need }) => need.orderId === id)
  await changePlan(shop, (plan) => ({
    ...plan,
    sold: plan.sold.map((placed) =>
      of(placed.id).length === 0 && placed.waits === undefined ? placed : withReleases(desk, placed, of(placed.id)),
    ),
  }))
  const planned = await replanShop(desk, shop)
  if (!planned.ok) return planned
  for (const need of shorts) {
    const placed = planned.value.sold.find(({ id }) => id === need.orderId)
    const end = endOf(planned.value, need.orderId)
    if (placed !== undefined && end > (placed.promised ?? placed.needBy))
      await askAboutPromise(desk, shop, {
        placed,
        end,
        because: need.item,
        why: wordsFor(desk).lateFor.short(itemName(desk, need.item)),
      })
  }
  return ok(null)
}
