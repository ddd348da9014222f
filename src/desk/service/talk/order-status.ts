import { deskWords } from '../../../../templates/desk/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { isStopped } from '../floor/stopped.ts'
import { orderIdOf } from '../records/order-id.ts'
import { shopPlanFrom } from '../records/records.ts'

/** Where the order of a conversation stands and what it is promised for, in words. */
export const orderStatus = async (
  desk: Desk,
  shop: ShopStore,
  talk: { readonly id: string; readonly language: Language },
): Promise<string> => {
  const words = deskWords[talk.language]
  const orderId = orderIdOf(talk.id)
  const order = await shop.orders.read(orderId)
  if (order !== null && (await isStopped(desk, shop, order))) return words.stopped
  const placed = shopPlanFrom((await shop.plan.read()).body).sold.find((one) => one.id === orderId)
  const show = showFor(desk.workshop.shop, talk.language)
  const promised = placed?.promised ?? null
  const when = promised === null ? null : show.moment(writeLocal(desk.zone, minutes(promised)))
  const status = words.status(words.states[order?.state ?? 'asked'], when)
  const first = placed?.first
  if (first === undefined || first.at <= desk.clock.now()) return status
  return `${status} ${words.firstPart(first.garments, first.of, show.moment(writeLocal(desk.zone, first.at)))}`
}
