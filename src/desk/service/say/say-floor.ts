import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { deskWords } from '../../../../templates/desk/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { type Show, showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Action } from '../../../ports/chat.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import { conversationChannel, type Desk, shopChannel } from '../desk.ts'
import { conversationFrom } from '../records/records.ts'
import { messageWith, textMessage } from './say-message.ts'

/** The language the shop's own people read. */
export const shopLanguage = (desk: Desk): Language => desk.workshop.shop.profile.languages[0] ?? 'en'

export const wordsFor = (desk: Desk) => floorWords[shopLanguage(desk)]
export const deskWordsFor = (desk: Desk) => deskWords[shopLanguage(desk)]
export const showOf = (desk: Desk): Show => showFor(desk.workshop.shop, shopLanguage(desk))

/** 'YYYY-MM-DDTHH:MM' on the shop's clock. */
export const localOf = (desk: Desk, at: number): string => writeLocal(desk.zone, minutes(at))
export const hourOf = (desk: Desk, at: number): string => showOf(desk).hour(localOf(desk, at).slice(11))
export const momentOf = (desk: Desk, at: number): string => showOf(desk).moment(localOf(desk, at))

export type OwnerNote = {
  readonly nonce: string
  readonly text: string
  readonly tone?: 'caution' | 'plain'
  readonly actions?: readonly Action[]
}

/** A note in the owner's channel, once for each nonce. */
export const tellOwner = async (desk: Desk, shop: ShopStore, note: OwnerNote): Promise<void> => {
  const { nonce, text, tone = 'caution', actions = [] } = note
  const channel = shopChannel('owner')
  const body = messageWith(shopLanguage(desk), { blocks: [{ kind: 'text', text, tone }], actions })
  await shop.messages.say({ channel, nonce, by: 'bot', body })
  await shop.tell('channel', channel)
}

/** A word in the order's conversation, in the customer's language; an order without one hears nothing. */
export const tellCustomer = async (
  shop: ShopStore,
  order: Pick<StoredOrder, 'conversationId'>,
  note: { readonly nonce: string; readonly text: (language: Language) => string },
): Promise<void> => {
  const id = order.conversationId
  const stored = id === null ? null : await shop.conversations.read(id)
  if (id === null || stored === null) return
  const { language } = conversationFrom(stored.state)
  const channel = conversationChannel(id)
  await shop.messages.say({ channel, nonce: note.nonce, by: 'bot', body: textMessage(note.text(language), language) })
  await shop.tell('channel', channel)
}
