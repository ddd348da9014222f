import { deskWords } from '../../../templates/desk/words.ts'
import type { Conversation } from '../../domain/understanding/conversation.ts'
import type { ShopStore } from '../../ports/store.ts'
import { conversationChannel } from './desk.ts'
import { messageWith } from './say-message.ts'

const stages = ['drawing', 'done'] as const

/** The progress of a proof: the same message, edited. */
export const showProgress = async (
  shop: ShopStore,
  conversation: Pick<Conversation, 'id' | 'language'>,
  at: { readonly orderId: string; readonly revision: number; readonly stage: (typeof stages)[number] },
): Promise<void> => {
  const text = deskWords[conversation.language].progress[at.stage]
  const block = { kind: 'progress', text, done: stages.indexOf(at.stage), of: stages.length - 1 } as const
  const channel = conversationChannel(conversation.id)
  const body = messageWith(conversation.language, { blocks: [block] })
  await shop.messages.put({ channel, nonce: `progress-${at.orderId}-${at.revision}`, by: 'bot', body })
  await shop.tell('channel', channel)
}
