import { ok } from '../../../domain/result/result.ts'
import type { Shop } from '../../../domain/shop/shop.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { seedMoves } from '../stock/shelf.ts'

const seedLots = async (shop: ShopStore, { stock, stones, vinyl }: Shop): Promise<void> => {
  for (const { material, bin } of [...stock.stones, ...stock.vinyl]) {
    const stone = stones.find(({ id }) => id === material)
    const lot = stone?.lot ?? vinyl.find(({ id }) => id === material)?.lot ?? ''
    const certificate = stone?.leadFreeCertificate ?? null
    await shop.stock.putLot({ item: material, lot, certificate, grossMilligrams: stone?.grossMilligrams ?? null, bin })
  }
  for (const { item, bin } of stock.auxiliaries)
    await shop.stock.putLot({ item, lot: '', certificate: null, grossMilligrams: null, bin })
  for (const template of stock.templates) await shop.stock.putTemplate(template)
}

/** The lot that a material's record in the shop folder is of. */
const recordLot =
  ({ stones, vinyl }: Shop) =>
  (item: string): string =>
    [...stones, ...vinyl].find(({ id }) => id === item)?.lot ?? ''

/** Makes the shop's row, and its first stock moves once. */
export const openShop = async (desk: Desk): Promise<void> => {
  await desk.store.openShop(desk.shopId, desk.workshop.shop.profile.id)
  await desk.store.together(desk.shopId, async (shop) => {
    await shop.plan.alone()
    const sums = await shop.stock.sums()
    if (sums.size > 0) return ok(null)
    const records = desk.workshop.shop
    await shop.stock.move(seedMoves(records.stock, recordLot(records), desk.clock.now()))
    await seedLots(shop, records)
    return ok(null)
  })
}
