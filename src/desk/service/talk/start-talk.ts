import { startConversation } from '../../../domain/understanding/conversation.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { replyMessage } from '../say/say-message.ts'

/** A new conversation with its greeting. Who the customer is stands with the chat they use, never in the conversation. */
export const startTalk = async (
  desk: Desk,
  shop: ShopStore,
  { id, language }: { readonly id: string; readonly language: Language },
): Promise<void> => {
  await shop.conversations.add(id, startConversation({ id, person: { id, name: null }, language }))
  const body = replyMessage({ code: 'greeting', facts: {} }, language, desk.workshop.shop)
  await shop.messages.say({ channel: conversationChannel(id), nonce: `greeting-${id}`, by: 'bot', body })
}
