import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { shopPlanFrom } from '../records/records.ts'
import { deskWordsFor, localOf, showOf } from '../say/say-floor.ts'

/** When each order that is sold is promised for, by its id. */
export const promisedHours = async (shop: ShopStore): Promise<ReadonlyMap<string, Minutes>> =>
  new Map(shopPlanFrom((await shop.plan.read()).body).sold.map(({ id, promised, needBy }) => [id, promised ?? needBy]))

/** The promised hour before the wanted one: the promise is what the shop works for. */
export const hoursText = (desk: Desk, { needBy }: Pick<TicketFacts, 'needBy'>, promised: Minutes | null): string => {
  const words = deskWordsFor(desk)
  const wanted = showOf(desk).moment(needBy)
  if (promised === null) return words.needed(wanted)
  const local = localOf(desk, promised)
  return local === needBy ? words.promisedAsWanted(wanted) : words.promisedAndWanted(showOf(desk).moment(local), wanted)
}
