import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { liveHolds } from '../plan/shop-plan.ts'
import { type FirstPart, shopPlanFrom } from '../records/records.ts'
import { deskWordsFor, localOf, showOf } from '../say/say-floor.ts'

/** When an order is promised for, the part of it that is collected before, and a change of it that was shown and is not signed. */
export type PromisedHour = { readonly at: Minutes; readonly first: FirstPart | null; readonly changing: number | null }

/** When each order that is sold is promised for, by its id. */
export const promisedHours = async (desk: Desk, shop: ShopStore): Promise<ReadonlyMap<string, PromisedHour>> => {
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const held = new Map(liveHolds(plan, desk.clock.now()).map(({ id, revision }) => [id, revision]))
  return new Map(
    plan.sold.map(({ id, promised, needBy, first }) => [
      id,
      { at: promised ?? needBy, first: first ?? null, changing: held.get(id) ?? null },
    ]),
  )
}

/** The hour that is worked to next: the first part's while it has not come. */
export const nextHour = ({ at, first }: PromisedHour, now: number): Minutes => (first !== null && first.at > now ? first.at : at)

/** The promised hour before the wanted one: the promise is what the shop works for. The first of two parts stands before both. */
export const hoursText = (desk: Desk, { needBy }: Pick<TicketFacts, 'needBy'>, promised: PromisedHour | null): string => {
  const words = deskWordsFor(desk)
  const show = showOf(desk)
  const wanted = show.moment(needBy)
  if (promised === null) return words.needed(wanted)
  const { at, first } = promised
  const local = localOf(desk, at)
  const all = local === needBy ? words.promisedAsWanted(wanted) : words.promisedAndWanted(show.moment(local), wanted)
  if (first === null) return all
  return `${words.inTwoParts(first.garments, first.of, show.moment(localOf(desk, first.at)))} · ${all}`
}
