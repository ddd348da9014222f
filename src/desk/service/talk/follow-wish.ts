import { deskWords } from '../../../../templates/desk/words.ts'
import type { Order } from '../../../domain/order/order.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Conversation, EarlierAsked, Want } from '../../../domain/understanding/conversation.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { orderIdOf } from '../records/order-id.ts'
import { deskWordsFor, tellOwner } from '../say/say-floor.ts'
import { textMessage } from '../say/say-message.ts'
import { showProgress } from '../say/show-progress.ts'
import { cancelOrder } from './cancel-order.ts'
import { earlierOrders, withoutAddresses } from './earlier-orders.ts'
import { orderStatus } from './order-status.ts'

/** What a conversation wishes for besides signing, which is `signOff`. */
export type Wish = {
  readonly conversation: Conversation
  readonly wish: Exclude<Want, { readonly kind: 'sign-off' }>
  readonly saidId: string
}
type Followed = Promise<Result<null, Problem>>

const orderOf = async (shop: ShopStore, conversationId: string): Promise<Result<StoredOrder, Problem>> => {
  const orderId = orderIdOf(conversationId)
  const known = await shop.orders.read(orderId)
  return known === null ? shop.orders.add({ orderId, conversationId }) : ok(known)
}

/** A new revision is written down and its quote wanted; progress is one message that is edited as the work goes on. */
const wantQuote = async (
  desk: Desk,
  shop: ShopStore,
  { conversation, document, hash }: { readonly conversation: Conversation; readonly document: Order; readonly hash: string },
): Followed => {
  const order = await orderOf(shop, conversation.id)
  if (!order.ok) return order
  const { orderId, version } = order.value
  const revised = await shop.orders.revise({ id: orderId, version }, { document, hash })
  if (!revised.ok) return revised
  const { revision } = revised.value
  await shop.steps.want({ step: 'quote', orderId, revision })
  await shop.events.add({ code: 'asked', orderId, ticketId: null, by: 'customer', at: desk.clock.now(), facts: { revision } })
  await showProgress(shop, conversation, { orderId, revision, stage: 'drawing' })
  return ok(null)
}

const sayStatus = async (desk: Desk, shop: ShopStore, { conversation, saidId }: Wish): Followed => {
  const { language } = conversation
  const text = await orderStatus(desk, shop, conversation)
  const channel = conversationChannel(conversation.id)
  await shop.messages.say({ channel, nonce: `status-${saidId}`, by: 'bot', body: textMessage(text, language) })
  return ok(null)
}

/** The team is the one just named, else the one that the conversation is about. */
const earlierOfTeam = async (shop: ShopStore, { id, draft }: Conversation, said: string | null) => {
  const team = said ?? draft.team ?? null
  return team === null ? [] : earlierOrders(shop, { team, but: orderIdOf(id) })
}

/** Nothing of an earlier order is shown to somebody who only knows its team: the owner is asked and may hand it over. */
const askForEarlier = async (
  desk: Desk,
  shop: ShopStore,
  { conversation, saidId, asks }: Omit<Wish, 'wish'> & { readonly asks: EarlierAsked },
): Followed => {
  const words = deskWordsFor(desk)
  const { id, language, signed } = conversation
  const found = await earlierOfTeam(shop, conversation, asks.team)
  const actions =
    signed !== null
      ? []
      : found.map(({ orderId, revision, team, needBy }) => ({
          id: `o:${orderId}:release-${id}:${revision}`,
          label: words.releaseEarlier(team, needBy.slice(0, 10)),
          weight: 'plain' as const,
        }))
  await tellOwner(desk, shop, {
    nonce: `owner-${saidId}`,
    text: words.ownerNote.earlier(withoutAddresses(asks.text), found),
    tone: 'plain',
    actions,
  })
  if (signed !== null) return ok(null)
  const body = textMessage(deskWords[language].earlierAsked, language)
  await shop.messages.say({ channel: conversationChannel(id), nonce: `earlier-${saidId}`, by: 'bot', body })
  return ok(null)
}

/** How a colleague can tell whose conversation it is. */
const whoIn = ({ draft: { team, orders } }: Conversation, orderId: string): string =>
  [team, orders, orderId].filter((part) => part !== undefined).join(', ')

/** Does what a conversation asks of the desk, inside the turn's transaction. */
export const followWish = async (desk: Desk, shop: ShopStore, about: Wish): Followed => {
  const { conversation, wish, saidId } = about
  const owner = deskWordsFor(desk).ownerNote
  const orderId = orderIdOf(conversation.id)
  const event = { orderId, ticketId: null, by: 'customer', at: desk.clock.now() }
  const note = `owner-${saidId}`
  switch (wish.kind) {
    case 'quote':
      return wantQuote(desk, shop, { conversation, document: wish.order, hash: wish.hash })
    case 'variant':
      await shop.steps.renew({ step: 'price', orderId, revision: wish.revision })
      return ok(null)
    case 'status':
      return sayStatus(desk, shop, about)
    case 'cancel':
      return cancelOrder(desk, shop, { conversation, orderId, saidId })
    case 'person':
      await shop.events.add({ ...event, code: 'person-asked', facts: { note } })
      await tellOwner(desk, shop, { nonce: note, text: owner.person(whoIn(conversation, orderId), wish.about), tone: 'plain' })
      return ok(null)
    case 'complaint':
      await shop.events.add({
        ...event,
        code: wish.adds ? 'complaint-told' : 'complaint',
        facts: { kind: wish.complaint.kind, note },
      })
      await tellOwner(desk, shop, {
        nonce: note,
        text: owner.complaint(wish.complaint.kind, wish.complaint.text),
        tone: 'plain',
      })
      return ok(null)
    case 'earlier-order':
      await shop.events.add({ ...event, code: 'earlier-order-asked', facts: { note } })
      return askForEarlier(desk, shop, { ...about, asks: wish.asks })
  }
}
