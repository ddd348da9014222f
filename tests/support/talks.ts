import { conversationChannel, type WorkerDesk } from '../../src/desk/service/desk.ts'
import { conversationFrom, messageFrom } from '../../src/desk/service/records/records.ts'
import { type Conversation, startConversation } from '../../src/domain/understanding/conversation.ts'
import type { Message } from '../../src/ports/chat.ts'
import { presses, says, work } from './desk.ts'
import { unwrap } from './embedded.ts'

/** Customers' talks with a test desk, and what they are told. */
export const talkOf = async (desk: WorkerDesk, id: string): Promise<Conversation> =>
  conversationFrom((await desk.store.shop(desk.shopId).conversations.read(id))?.state)

export const openTalk = async (desk: WorkerDesk, id: string): Promise<void> => {
  const state = startConversation({ id, person: { id, name: null }, language: 'en' })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
}

/** Says it all, works off what is due, and signs nothing. */
export const talkToProof = async (desk: WorkerDesk, id: string, words: string): Promise<void> => {
  await openTalk(desk, id)
  await says(desk, id, words)
  await work(desk)
}

export const signShown = async (desk: WorkerDesk, id: string): Promise<void> => {
  const { shown } = await talkOf(desk, id)
  if (shown === null) throw new Error(`nothing was shown to ${id}`)
  await presses(desk, id, `c:sign-off:${shown.revision}:${shown.hash}`)
}

export const messagesOf = async (desk: WorkerDesk, id: string): Promise<readonly Message[]> =>
  (await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0)).map(({ body }) => messageFrom(body))

/** The words of a message, its fields as "name: value". */
export const wordsIn = (message: Message | undefined): string =>
  (message?.blocks ?? [])
    .map((block) => {
      if (block.kind === 'text') return block.text
      return block.kind === 'fields' ? block.fields.map(({ name, value }) => `${name}: ${value}`).join('\n') : ''
    })
    .join('\n')
