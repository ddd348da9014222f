import type { Tenants } from '../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { postMorning } from '../src/desk/service/morning/post-morning.ts'
import { tellDayBefore } from '../src/desk/service/morning/tell-day-before.ts'
import { warnTight } from '../src/desk/service/plan/warn-tight.ts'
import { lapseHolds } from '../src/desk/service/quote/lapse-holds.ts'
import { forgetDue } from '../src/desk/service/talk/forget-order.ts'
import type { Handlers } from '../src/ports/queue.ts'
import type { Background } from './search.ts'

/** Nobody sends an event of the platform twice after a day. */
const heardHours = 24

export const remind =
  (tenants: Tenants<WorkerDesk>, background: Pick<Background, 'wake'>): Handlers['remind'] =>
  async ({ shopId }) => {
    const desk = await tenants(shopId)
    await lapseHolds(desk)
    await forgetDue(desk)
    await postMorning(desk)
    await warnTight(desk)
    await tellDayBefore(desk)
    await desk.store.shop(shopId).heard.clear(heardHours)
    await desk.store.shop(shopId).keys.sweep(desk.clock.real())
    background.wake(shopId)
  }
