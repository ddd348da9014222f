import { floorWords } from '../../../../templates/desk/floor/words.ts'
import type { Vinyl } from '../../../domain/material/material.ts'
import type { Order } from '../../../domain/order/order.ts'
import type { Found } from '../../../domain/press/gate-state.ts'
import { dropsVerdict, slowestOf } from '../../../domain/press/water-drops.ts'
import { ok } from '../../../domain/result/result.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Patch } from '../../../domain/understanding/patch.ts'
import { workOut } from '../../work-out.ts'
import type { Answered, Deed } from '../floor/deed.ts'
import { customersGarment, garmentText } from '../floor/garment-text.ts'
import { changePlan } from '../floor/mark-work.ts'
import { floorFor } from '../plan/shop-plan.ts'
import { orderFrom, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { localOf, tellCustomer, tellOwner, wordsFor } from '../say/say-floor.ts'
import { readShelf, withStock } from '../stock/shelf.ts'
import { takeTurn } from '../talk/hear-customer.ts'

const coated = (order: Order, garment: string): Order => ({
  ...order,
  garments: order.garments.map((one) => (one.id === garment ? { ...one, finish: 'repellent' } : one)),
})

type Offered = { readonly way: string; readonly subject: string | null; readonly inStock: number | null }

const waysIn = (facts: unknown): readonly Offered[] => {
  if (typeof facts !== 'object' || facts === null || !('ways' in facts) || !Array.isArray(facts.ways)) return []
  return facts.ways.filter((one): one is Offered => typeof one === 'object' && one !== null && 'way' in one && 'subject' in one)
}

/** What the heat solver and the rules would do instead, of vinyl that lies in the shop; null when there is no way. */
const wayOut = async ({ desk, shop, life }: Deed, order: Order): Promise<Vinyl | null> => {
  const workshop = withStock(desk.workshop, await readShelf(shop, life.order.orderId))
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const worked = workOut(
    {
      document: order,
      now: localOf(desk, desk.clock.now()),
      job: life.order.orderId,
      floor: (_, __, needBy) => floorFor(desk, plan, { orderId: life.order.orderId, needBy }),
    },
    workshop,
  )
  const offered = worked.problems.flatMap(({ facts }) => waysIn(facts))
  const best = offered.find(({ way, inStock }) => way === 'another-class' && (inStock ?? 0) > 0)
  return workshop.shop.vinyl.find(({ id }) => id === best?.subject) ?? null
}

/** The order as the customer is asked for it: the cloth as it was found, and every vinyl on it of the class that holds. */
const patchesFor = (order: Order, garment: string, vinyl: Vinyl): readonly Patch[] => [
  { path: ['garments', garment, 'finish'], value: 'repellent' },
  ...order.decorations
    .filter(({ on, layers }) => on.includes(garment) && layers.some(({ kind }) => kind === 'vinyl'))
    .map(({ id }): Patch => ({ path: ['styles', `${id}@${garment}`, 'class'], value: vinyl.class })),
]

const askCustomer = async (deed: Deed, order: Order, garment: string): Answered => {
  const { shop, life, desk } = deed
  const vinyl = await wayOut(deed, coated(order, garment))
  const nonce = `beaded-${life.ticket.ticketId}-${garment}`
  await tellCustomer(shop, life.order, {
    nonce,
    text: (language) => {
      const words = floorWords[language]
      const called = customersGarment(deed, order, { id: garment, language })
      if (vinyl === null) return words.beadedNoWay(called)
      const colour = showFor(desk.workshop.shop, language).colour(vinyl.colour)
      return words.beadedCustomer(called, `${words.vinylNames[vinyl.class]} (${colour})`)
    },
  })
  const conversationId = life.order.conversationId
  if (vinyl === null || conversationId === null) return ok(null)
  const said = { id: nonce, kind: 'found', patches: patchesFor(order, garment, vinyl), quote: 'water drops' } as const
  const heard = await takeTurn(desk, shop, { conversationId, said, words: null })
  return heard.ok ? ok(null) : heard
}

/** Its work is planned again with what the customer signs instead; until then others have the time. */
const withHold = (plan: ShopPlan, orderId: string): ShopPlan => ({
  ...plan,
  sold: plan.sold.map((placed) => (placed.id === orderId ? { ...placed, onHold: true } : placed)),
  slots: plan.slots.filter(({ order }) => order !== orderId),
  proposals: plan.proposals.filter((proposal) => proposal.orderId !== orderId),
})

/**
 * Drops that still stand: the ticket is closed, the order waits for its customer, who is shown picture and price with the vinyl that
 * holds on coated cloth. What they sign is a new revision with a new ticket.
 */
export const askAfterBeaded = async (deed: Deed, found: Found): Answered => {
  const { desk, shop, life, by } = deed
  if (dropsVerdict(slowestOf(found.seconds ?? [])) !== 'beaded') return ok(null)
  const garment = found.garment ?? ''
  const { ticketId, orderId, revision } = life.ticket
  const ticket = await shop.tickets.read(ticketId)
  const closed = await shop.tickets.change({ id: ticketId, version: ticket?.version ?? 0 }, { state: 'closed' })
  if (!closed.ok) return closed
  const order = await shop.orders.read(orderId)
  const hold = { why: wordsFor(desk).gateIs.beaded, by: by.name, since: desk.clock.now() }
  const held = await shop.orders.change({ id: orderId, version: order?.version ?? 0 }, { hold })
  if (!held.ok) return held
  await changePlan(shop, (plan) => withHold(plan, orderId))
  await tellOwner(desk, shop, {
    nonce: `closed-${ticketId}`,
    text: wordsFor(desk).ownerNote.beaded(ticketName(life.ticket.number), garmentText(deed.facts, garment)),
  })
  const document = (await shop.orders.revision(orderId, revision))?.document ?? null
  return document === null ? ok(null) : askCustomer(deed, orderFrom(document), garment)
}
