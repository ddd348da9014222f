import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { showFor } from '../../../domain/shop/show.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Member, Told } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { shopPlanFrom } from '../records/records.ts'
import { localOf, tellCustomer, wordsFor } from '../say/say-floor.ts'
import { doneSaying, toldWhy } from '../say/told.ts'
import { editTicketsOf } from './edit-tickets.ts'
import { changePlan } from './mark-work.ts'

export type Deciding = { readonly orderId: string; readonly to: string; readonly revision: string; readonly by: Member }

/** The owner moves a promise, or keeps it; the customer is told by the shop's own decision, never by a machine's. */
export const decidePromise = async (
  desk: Desk,
  shop: ShopStore,
  { orderId, to, revision, by }: Deciding,
): Promise<Result<Told, Problem>> => {
  const words = wordsFor(desk)
  if (by.role !== 'owner') return ok(toldWhy(words.ownerOnly))
  await shop.plan.alone()
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const placed = plan.sold.find(({ id }) => id === orderId)
  const order = await shop.orders.read(orderId)
  if (placed === undefined || order === null || String(placed.revision) !== revision) return ok(toldWhy(words.promiseKept))
  const at = desk.clock.now()
  const was = placed.promised ?? placed.needBy
  const event = { orderId, ticketId: null, by: by.id, at }
  if (!/^\d{1,9}$/.test(to) || Number(to) <= was) {
    await shop.events.add({ ...event, code: 'promise-kept', facts: { promised: was } })
    return ok(doneSaying(words.promiseKept))
  }
  const now = minutes(Number(to))
  await changePlan(shop, (present) => ({
    ...present,
    sold: present.sold.map((one) => (one.id === orderId ? { ...one, promised: now } : one)),
  }))
  await shop.events.add({ ...event, code: 'promise-moved', facts: { was, now } })
  await editTicketsOf(desk, shop, orderId)
  await tellCustomer(shop, order, {
    nonce: `promise-${orderId}-${now}`,
    text: (language) => {
      const show = showFor(desk.workshop.shop, language)
      return floorWords[language].promiseMoved(show.moment(localOf(desk, was)), show.moment(localOf(desk, now)))
    },
  })
  return ok(toldWhy(null))
}
