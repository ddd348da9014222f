import { deskWords } from '../../../../templates/desk/words.ts'
import { orderSteps } from '../../../ports/queue.ts'
import type { Desk } from '../desk.ts'

export type Retry = { readonly orderId: string; readonly step: string; readonly revision: string }

/** A person wants a step again that gave up; it gets a new attempt and so a new job id. */
export const retryStep = async (desk: Desk, { orderId, step, revision }: Retry): Promise<string | null> => {
  const known = orderSteps.find((name) => name === step)
  const key = known === undefined || !/^\d+$/.test(revision) ? null : { step: known, orderId, revision: Number(revision) }
  const shop = desk.store.shop(desk.shopId)
  const record = key === null ? null : await shop.steps.read(key)
  const words = deskWords[desk.workshop.shop.profile.languages[0] ?? 'en']
  if (key === null || record === null) return words.noTicket
  if (record.state === 'done') return words.notOpen
  await shop.steps.again(key)
  return null
}
