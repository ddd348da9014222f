import { ok } from '../../domain/result/result.ts'
import type { Desk } from './desk.ts'
import { seedMoves } from './shelf.ts'

/** Makes the shop's row, and its first stock moves once. */
export const openShop = async (desk: Desk): Promise<void> => {
  await desk.store.openShop(desk.shopId, desk.workshop.shop.profile.id)
  await desk.store.together(desk.shopId, async (shop) => {
    await shop.plan.alone()
    const sums = await shop.stock.sums()
    if (sums.size === 0) await shop.stock.move(seedMoves(desk.workshop.shop.stock, desk.clock.now()))
    return ok(null)
  })
}
