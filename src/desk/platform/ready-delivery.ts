import { serverWords } from '../../../templates/desk/server.ts'
import type { Action, Delivery, Message } from '../../ports/chat.ts'
import type { GuildSettings } from '../../ports/platform-desk.ts'
import type { WaitingDelivery } from '../../ports/platform-records.ts'
import { channelFrom, type WorkerDesk } from '../service/desk.ts'
import { messageFrom } from '../service/records/records.ts'
import { messageWith } from '../service/say/say-message.ts'
import { loadMessage } from '../service/shop/load-picture.ts'
import { answerForm } from './hear-in-talk.ts'
import type { Tenants } from './tenants.ts'

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

const toDraw = 'to-draw:load'

/** Stands for the load until a worker has drawn it. */
export const loadToDraw = (text: string, language: Message['language']): Message =>
  messageWith(language, { blocks: [{ kind: 'text', text, tone: 'plain' }], picture: { file: toDraw, alt: text } })

/** The drawn load takes the place of the message that asked for it, and is delivered in its turn. */
const drawLoad = async (desk: WorkerDesk, waiting: WaitingDelivery, { language }: Message): Promise<null> => {
  const shop = desk.store.shop(waiting.shopId)
  const body = await loadMessage(desk, language)
  await shop.messages.say({ channel: waiting.channel, nonce: waiting.nonce, by: 'bot', body })
  await shop.tell('channel', waiting.channel)
  return null
}

/** A message of the records as it stands on the platform; null: its channel is none that stands there, or it is not drawn yet. */
export const readyDelivery = async (tenants: Tenants<WorkerDesk>, waiting: WaitingDelivery): Promise<Delivery | null> => {
  const desk = await tenants(waiting.shopId)
  const channel = channelFrom(waiting.channel)
  if (channel === null) return null
  const message = messageFrom(waiting.body)
  if (message.picture?.file === toDraw) return drawLoad(desk, waiting, message)
  const dressed =
    channel.kind === 'shop' ? withOpen(message) : withAnswer(message, await desk.store.shop(waiting.shopId).server.read())
  return { shop: waiting.shopId, channel, nonce: waiting.nonce, message: dressed }
}
