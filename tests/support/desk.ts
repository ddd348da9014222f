import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { machineIds } from '../../src/adapters/machine/machine.ts'
import { readSheet } from '../../src/adapters/sheet/read-sheet.ts'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { planOrders } from '../../src/desk/service/plan/plan-orders.ts'
import { priceVariant } from '../../src/desk/service/quote/price-variant.ts'
import { quoteOrder } from '../../src/desk/service/quote/quote-order.ts'
import { openShop } from '../../src/desk/service/shop/open-shop.ts'
import { hearCustomer } from '../../src/desk/service/talk/hear-customer.ts'
import { postTicket } from '../../src/desk/service/ticket/post-ticket.ts'
import { printTicket } from '../../src/desk/service/ticket/print-ticket.ts'
import { readLocal } from '../../src/domain/calendar/local-time.ts'
import { zoneOf } from '../../src/domain/calendar/zone.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import { type Minutes, minutes } from '../../src/domain/units/units.ts'
import type { Incoming } from '../../src/ports/chat.ts'
import type { Clock } from '../../src/ports/clock.ts'
import type { OrderStep, OrderStepName } from '../../src/ports/queue.ts'
import type { Store } from '../../src/ports/store.ts'
import { openPress } from '../../src/wiring/open-press.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { unwrap } from './embedded.ts'

/** Threads run compiled. */
const compiledSheetThread = pathToFileURL(join(projectRoot(), '.build/src/adapters/sheet/sheet-thread.js'))

export type TestClock = { at: Minutes }

/** A clock that shows what a test says, to doors too. */
export const testClock = (now: () => Minutes): Clock => ({
  now,
  milliseconds: () => now() * 60_000,
  real: now,
  lasting: (milliseconds) => milliseconds,
})

/** A desk of the starter shop over a store, on a clock that the test moves. `change` edits the shop's records first. */
export const openTestDesk = async (
  store: Store,
  clock: TestClock,
  change: (shop: Shop) => Shop = (shop) => shop,
): Promise<WorkerDesk> => {
  const root = projectRoot()
  const workshop = unwrap(await openWorkshop(root, undefined))
  const shop = change(workshop.shop)
  const desk: WorkerDesk = {
    shopId: machineIds.fresh('shop'),
    zone: unwrap(zoneOf(shop.profile.zone)),
    store,
    workshop: { ...workshop, shop },
    clock: testClock(() => clock.at),
    ids: machineIds,
    readSheet: (file) => readSheet(file, compiledSheetThread),
    press: await openPress(root),
  }
  await openShop(desk)
  return desk
}

export const localMinute = (text: string): Minutes => minutes(unwrap(readLocal(unwrap(zoneOf('America/Chicago')), text)).at)

const runStep = (desk: WorkerDesk, step: OrderStep<OrderStepName>): Promise<void> => {
  switch (step.step) {
    case 'quote':
      return quoteOrder(desk, { ...step, step: 'quote' })
    case 'price':
      return priceVariant(desk, { ...step, step: 'price' })
    case 'plan':
      return planOrders(desk, { ...step, step: 'plan' })
    case 'ticket':
      return printTicket(desk, { ...step, step: 'ticket' })
    case 'post':
      return postTicket(desk, { ...step, step: 'post' })
  }
}

/** Works on what is due until nothing is, as workers would; every step so many times. */
export const work = async (desk: WorkerDesk, times = 1): Promise<void> => {
  const { steps } = desk.store.shop(desk.shopId)
  for (let due = (await steps.overdue(0))[0]; due !== undefined; due = (await steps.overdue(0))[0]) {
    const { step, orderId, revision, attempt } = due
    for (let turn = 0; turn < times; turn += 1) await runStep(desk, { step, shopId: desk.shopId, orderId, revision, attempt })
  }
}

let deliveries = 0
export const says = async (desk: WorkerDesk, conversationId: string, text: string): Promise<void> => {
  deliveries += 1
  const incoming: Incoming = { kind: 'said', id: `d${deliveries}`, text, files: [] }
  unwrap(await hearCustomer(desk, conversationId, { incoming, files: [] }))
}

export const presses = async (desk: WorkerDesk, conversationId: string, action: string): Promise<void> => {
  deliveries += 1
  unwrap(await hearCustomer(desk, conversationId, { incoming: { kind: 'pressed', id: `d${deliveries}`, action }, files: [] }))
}
