import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { messageFrom, type PlacedOrder, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import type { Operation, Slot } from '../../src/domain/schedule/book/operation.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import type { Minutes } from '../../src/domain/units/units.ts'
import type { Member } from '../../src/ports/counter-desk.ts'
import type { Store } from '../../src/ports/store.ts'
import { localMinute, openTestDesk, type TestClock } from './desk.ts'
import { unwrap } from './embedded.ts'
import { order } from './orders.ts'
import { operation } from './scheduling.ts'

/** A shop on Monday morning whose plan was written by a test, and its people. */
export const owner: Member = { id: 'owner', name: 'Rosa', role: 'owner' }
export const staff: Member = { id: 'noor', name: 'Noor', role: 'staff' }
export const monday = localMinute('2026-11-30T08:00')
export const noon = localMinute('2026-11-30T12:00')
export const evening = localMinute('2026-11-30T17:30')

export const benchWork = (over: Partial<Operation> = {}): readonly Operation[] => [
  operation('weed-1-1', { needs: [['bench-1'], ['person-1']], minutes: 300, splittable: true, ...over }),
]

export const placed = (id: string, promised: Minutes, operations: readonly Operation[]): PlacedOrder => ({
  id,
  revision: 1,
  needBy: promised,
  promised,
  weight: 1,
  operations,
})

/** A shop whose plan holds these orders, each of a customer who can be asked; nothing is planned but the slots that are given. */
export const shopWith = async (store: Store, sold: readonly PlacedOrder[], slots: readonly Slot[] = []): Promise<WorkerDesk> => {
  const clock: TestClock = { at: monday }
  const desk = await openTestDesk(store, clock)
  const shop = desk.store.shop(desk.shopId)
  for (const { id } of sold) {
    const conversationId = `c${id.slice(1)}`
    const state = startConversation({ id: conversationId, person: { id: conversationId, name: null }, language: 'en' })
    unwrap(await shop.conversations.add(conversationId, state))
    const added = unwrap(await shop.orders.add({ orderId: id, conversationId }))
    const document = order({ team: `Team ${id}` })
    unwrap(await shop.orders.revise({ id, version: added.version }, { document, hash: 'h' }))
  }
  unwrap(await shop.plan.write(0, { ...shopPlanFrom(null), sold, slots }))
  return desk
}

export const planOf = async (desk: WorkerDesk) => shopPlanFrom((await desk.store.shop(desk.shopId).plan.read()).body)

/** What was said in a channel, block by block. */
export const said = async (desk: WorkerDesk, channel: string): Promise<readonly string[]> =>
  (await desk.store.shop(desk.shopId).messages.after(channel, 0)).flatMap(({ body }) =>
    messageFrom(body).blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])),
  )
