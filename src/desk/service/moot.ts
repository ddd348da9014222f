import type { ShopStore } from '../../ports/store.ts'
import type { StepKey } from '../../ports/work-records.ts'

/** The step was done by an earlier run of the same job: steps may run twice. */
export const isDone = async (shop: ShopStore, key: StepKey): Promise<boolean> => (await shop.steps.read(key))?.state === 'done'

/** There is nothing left to make: the order was cancelled or its people were forgotten. */
export const isDropped = async (shop: ShopStore, key: StepKey): Promise<boolean> => {
  const [order, revision] = await Promise.all([shop.orders.read(key.orderId), shop.orders.revision(key.orderId, key.revision)])
  const document = revision?.document ?? null
  return order === null || order.state === 'cancelled' || document === null
}
