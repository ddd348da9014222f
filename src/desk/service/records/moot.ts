import type { ShopStore } from '../../../ports/store.ts'
import type { StepAbout, StepKey } from '../../../ports/work-records.ts'

/** The step was done by an earlier run of the same job: steps may run twice. */
export const isDone = async (shop: ShopStore, key: StepKey): Promise<boolean> => (await shop.steps.read(key))?.state === 'done'

/** There is nothing left to make: the order was cancelled or its people were forgotten. */
export const isDropped = ({ order, revision }: StepAbout): boolean =>
  order === null || order.state === 'cancelled' || (revision?.document ?? null) === null
