import type { StoreFigures } from '../../../ports/store-figures.ts'
import type { Desk } from '../desk.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'

const dayMinutes = 1_440

/** Sold orders that end less than a day before they are promised, or that have no place yet. */
const tightJobs = ({ sold, slots }: ShopPlan): number => {
  const ends = new Map<string, number>()
  for (const { order, end } of slots) ends.set(order, Math.max(end, ends.get(order) ?? end))
  return sold.filter(({ id, promised, needBy }) => {
    const end = ends.get(id)
    return end === undefined || (promised ?? needBy) - end < dayMinutes
  }).length
}

export type ShopFigures = StoreFigures & { readonly shopId: string; readonly tightJobs: number }

/** How every shop of the house stands, for those who watch over the service. */
export const shopFigures = async ({ store, shopId: house }: Desk): Promise<readonly ShopFigures[]> => {
  const shops = (await store.shopsOf(house)).map(store.shop)
  return Promise.all(
    shops.map(async (shop) => {
      const plan = shopPlanFrom((await shop.plan.read()).body)
      return { ...(await shop.figures()), shopId: shop.shopId, tightJobs: tightJobs(plan) }
    }),
  )
}
