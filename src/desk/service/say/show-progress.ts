import { deskWords } from '../../../../templates/desk/words.ts'
import type { Conversation } from '../../../domain/understanding/conversation.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { conversationChannel } from '../desk.ts'
import { messageWith } from './say-message.ts'

/** What is being made and how far it is: a proof, then the work that was signed. */
const stages = {
  drawing: { of: 'proof', done: 0, all: 1 },
  done: { of: 'proof', done: 1, all: 1 },
  planning: { of: 'work', done: 1, all: 3 },
  printing: { of: 'work', done: 2, all: 3 },
} as const

const nonces = {
  proof: (orderId: string, revision: number) => `progress-${orderId}-${revision}`,
  work: (orderId: string, revision: number) => `work-${orderId}-${revision}`,
} as const

export type Progress = { readonly orderId: string; readonly revision: number; readonly stage: keyof typeof stages }

/** Progress is one message that is edited as the work goes on. */
export const showProgress = async (
  shop: ShopStore,
  conversation: Pick<Conversation, 'id' | 'language'>,
  { orderId, revision, stage }: Progress,
): Promise<void> => {
  const text = deskWords[conversation.language].progress[stage]
  const { of, done, all } = stages[stage]
  const body = messageWith(conversation.language, { blocks: [{ kind: 'progress', text, done, of: all }] })
  const channel = conversationChannel(conversation.id)
  await shop.messages.say({ channel, nonce: nonces[of](orderId, revision), by: 'bot', body })
  await shop.tell('channel', channel)
}

/** The last word of the work's progress stands in its message: the ticket is on the bench. */
export const endProgress = async (
  shop: ShopStore,
  { id, language }: Pick<Conversation, 'id' | 'language'>,
  ended: { readonly orderId: string; readonly revision: number; readonly ticket: string },
): Promise<void> => {
  const text = deskWords[language].onBench(ended.ticket)
  const body = messageWith(language, { blocks: [{ kind: 'progress', text, done: 3, of: 3 }] })
  const channel = conversationChannel(id)
  await shop.messages.say({ channel, nonce: nonces.work(ended.orderId, ended.revision), by: 'bot', body })
  await shop.tell('channel', channel)
}
