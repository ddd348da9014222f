import { serverWords } from '../../../templates/desk/server.ts'
import type { Action, Delivery, Message } from '../../ports/chat.ts'
import type { GuildSettings } from '../../ports/platform-desk.ts'
import type { WaitingDelivery } from '../../ports/platform-records.ts'
import { channelFrom, type Desk } from '../service/desk.ts'
import { messageFrom } from '../service/records.ts'
import { answerForm } from './hear-in-talk.ts'

/** A ticket's message opens the ticket as it is now; by this it is also found again where it stands. */
const withOpen = (message: Message): Message => {
  const [, ticket, revision] = message.actions.map(({ id }) => /^t:([^:]+):[^:]+:(\d+)$/.exec(id)).find(Boolean) ?? []
  if (ticket === undefined || revision === undefined) return message
  const open: Action = { id: `t:${ticket}:open:${revision}`, label: serverWords[message.language].open, weight: 'plain' }
  return { ...message, actions: [...message.actions, open] }
}

const isProgress = (message: Message): boolean => message.blocks.some(({ kind }) => kind === 'progress')

/** In a thread plain words do not always reach us, so that what is said there can be answered by a form. */
const withAnswer = (message: Message, server: GuildSettings | null): Message =>
  server?.talks !== 'thread' || message.form !== null || isProgress(message)
    ? message
    : { ...message, form: answerForm(message.language) }

/** A message of the records as it stands on the platform; null: its channel is none that stands there. */
export const readyDelivery = async (desk: Desk, waiting: WaitingDelivery): Promise<Delivery | null> => {
  const channel = channelFrom(waiting.channel)
  if (channel === null) return null
  const message = messageFrom(waiting.body)
  const dressed =
    channel.kind === 'shop' ? withOpen(message) : withAnswer(message, await desk.store.shop(waiting.shopId).server.read())
  return { shop: waiting.shopId, channel, nonce: waiting.nonce, message: dressed }
}
