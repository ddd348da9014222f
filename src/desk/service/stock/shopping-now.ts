import type { Need } from '../../../domain/stock/ledger.ts'
import { type Errand, shoppingList } from '../../../domain/stock/shopping.ts'
import type { Desk } from '../desk.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { supplyOf } from './supply-of.ts'
import { usedAt } from './use-stock.ts'

const firstWork = { cut: /^cut-vinyl/, brush: /^brush-/, press: /^count-in$/ } as const

/** When the plan first needs an item for an order: the start of the work that uses it, else the promise. */
const neededAt =
  (desk: Desk, plan: ShopPlan) =>
  (need: Need): number => {
    const work = firstWork[usedAt(desk, need.item)]
    const starts = plan.slots
      .filter(({ order, operation }) => order === need.orderId && work.test(operation))
      .map(({ start }) => start)
    return starts.length === 0 ? need.due : Math.min(...starts)
  }

/** The shopping list as it is now: in whole packs, with the last hour to order. */
export const shoppingNow = async (desk: Desk): Promise<readonly Errand[]> => {
  const shop = desk.store.shop(desk.shopId)
  const plan = shopPlanFrom((await shop.plan.read()).body)
  return shoppingList({
    moves: await shop.stock.ledger(),
    needs: await shop.stock.needs(),
    coming: await shop.stock.coming(),
    supply: supplyOf(desk.workshop.shop),
    neededAt: neededAt(desk, plan),
  })
}
