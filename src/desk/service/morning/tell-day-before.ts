import { deskWords } from '../../../../templates/desk/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { showFor } from '../../../domain/shop/show.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import type { Desk } from '../desk.ts'
import { isStopped } from '../floor/stopped.ts'
import { orderFrom, type PlacedOrder, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { tellCustomer } from '../say/say-floor.ts'

/** Nobody is told before breakfast or late at night. */
const from = '08:00'
const to = '20:00'
const dayMinutes = 1_440

/** A promise that the plan keeps; whether another moves is for the owner to say, and nothing is said before. */
const isKept = ({ slots }: ShopPlan, { id }: PlacedOrder, promised: number): boolean =>
  slots.every(({ order, end }) => order !== id || end <= promised)

type Due = { readonly order: StoredOrder; readonly placed: PlacedOrder; readonly promised: number }

const tell = async (desk: Desk, shop: ShopStore, { order, placed, promised }: Due): Promise<void> => {
  const document = (await shop.orders.revision(order.orderId, placed.revision))?.document ?? null
  if (document === null) return
  const { people, handOver } = orderFrom(document)
  const isReady = order.state === 'bagged'
  await tellCustomer(shop, order, {
    nonce: `day-before-${order.orderId}-${promised}`,
    text: (language) => {
      const moment = showFor(desk.workshop.shop, language).moment(writeLocal(desk.zone, minutes(promised)))
      const words = deskWords[language].dayBefore
      const named = handOver === 'collect' ? (people.collects ?? null) : null
      return [
        isReady ? words.ready[handOver](moment) : words.onTime(moment),
        ...(named === null ? [] : [words.collects(named)]),
      ].join(' ')
    },
  })
}

/** The day before a promise its customer hears that it stands, once; who may collect is named again. */
export const tellDayBefore = async (desk: Desk): Promise<void> => {
  const now = desk.clock.now()
  const hour = writeLocal(desk.zone, now).slice(11)
  if (hour < from || hour >= to) return
  const tomorrow = writeLocal(desk.zone, minutes(now + dayMinutes)).slice(0, 10)
  const shop = desk.store.shop(desk.shopId)
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const open = new Map((await shop.orders.list(['ticketed', 'on-bench', 'checked', 'bagged'])).map((one) => [one.orderId, one]))
  for (const placed of plan.sold) {
    const order = open.get(placed.id)
    const promised = placed.promised ?? placed.needBy
    if (order === undefined || writeLocal(desk.zone, promised).slice(0, 10) !== tomorrow) continue
    if (isKept(plan, placed, promised) && !(await isStopped(desk, shop, order)))
      await tell(desk, shop, { order, placed, promised })
  }
}
