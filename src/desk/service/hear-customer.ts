import { writeLocal } from '../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import type { Conversation, Said, SaidFile } from '../../domain/understanding/conversation.ts'
import { hear } from '../../domain/understanding/hear.ts'
import type { Incoming } from '../../ports/chat.ts'
import type { ShopStore } from '../../ports/store.ts'
import { conversationChannel, type Desk } from './desk.ts'
import { followWish } from './follow-wish.ts'
import { hearAnswer } from './plan/ask-customer.ts'
import { conversationFrom } from './records.ts'
import { saidFrom, wordsOf } from './said.ts'
import { replyMessage, textMessage } from './say-message.ts'

/** How often a turn is tried again when somebody else changed the conversation meanwhile. */
const mostTries = 8

/** What the domain's `hear` is told besides the words. */
const contextOf = (desk: Desk) => ({ shop: desk.workshop.shop, now: writeLocal(desk.zone, desk.clock.now()) })

export type Turn = { readonly conversationId: string; readonly said: Said; readonly words: string | null }

/** The turn's name in the whole shop: two customers who send the same delivery id are two turns. */
const turnName = ({ conversationId, said }: Turn): string => `${conversationId}-${said.id}`

/** Puts the replies into the conversation's channel; the nonce makes a repeated turn post nothing twice. */
const postTurn = async (desk: Desk, shop: ShopStore, turn: Turn & { readonly heard: ReturnType<typeof hear> }): Promise<void> => {
  const channel = conversationChannel(turn.conversationId)
  const { language } = turn.heard.conversation
  if (turn.words !== null && turn.words !== '') {
    const body = textMessage(turn.words, language)
    await shop.messages.put({ channel, nonce: `in-${turnName(turn)}`, by: 'customer', body })
  }
  for (const [index, reply] of turn.heard.replies.entries()) {
    const body = replyMessage(reply, language, desk.workshop.shop)
    await shop.messages.put({ channel, nonce: `re-${turnName(turn)}-${index}`, by: 'bot', body })
  }
  await shop.tell('channel', channel)
}

/** One turn inside a transaction: hear, keep, answer, follow. A turn whose id was heard before changes nothing. */
export const takeTurn = async (desk: Desk, shop: ShopStore, turn: Turn): Promise<Result<Conversation, Problem>> => {
  const stored = await shop.conversations.read(turn.conversationId)
  if (stored === null) {
    return {
      ok: false,
      problems: [{ code: 'store-missing', at: '', severity: 'stop', facts: { what: 'conversation', id: turn.conversationId } }],
    }
  }
  const before = conversationFrom(stored.state)
  if (before.seen.includes(turn.said.id)) return ok(before)
  const heard = hear(before, turn.said, contextOf(desk))
  const saved = await shop.conversations.save({ id: turn.conversationId, version: stored.version }, heard.conversation)
  if (!saved.ok) return saved
  await postTurn(desk, shop, { ...turn, heard })
  if (heard.wants === null) return ok(heard.conversation)
  const followed = await followWish(desk, shop, { conversation: heard.conversation, wish: heard.wants, saidId: turnName(turn) })
  return followed.ok ? ok(heard.conversation) : followed
}

const isVersionChange = (problems: readonly Problem[]): boolean =>
  problems.some((problem) => problem.code === 'store-version-changed')

const isAnswer = (incoming: Incoming): incoming is Incoming & { readonly kind: 'pressed' } =>
  incoming.kind === 'pressed' && incoming.action.startsWith('p:')

/** An answer to a question about the promise; a yes to a change of the order goes on as a turn in the customer's words. */
const takeAnswer = async (
  desk: Desk,
  shop: ShopStore,
  answer: { readonly conversationId: string; readonly id: string; readonly action: string },
): Promise<Result<Conversation, Problem>> => {
  const { conversationId, id } = answer
  const stored = await shop.conversations.read(conversationId)
  if (stored === null) return takeTurn(desk, shop, { conversationId, said: { id, kind: 'said', text: '' }, words: null })
  const before = conversationFrom(stored.state)
  if (before.seen.includes(id)) return ok(before)
  const heard = await hearAnswer(desk, shop, { ...answer, language: before.language })
  if (!heard.ok) return heard
  if (heard.value !== null) {
    const said = { id, kind: 'said', text: heard.value } as const
    return takeTurn(desk, shop, { conversationId, said, words: heard.value })
  }
  const after = { ...before, seen: [...before.seen, id] }
  const saved = await shop.conversations.save({ id: conversationId, version: stored.version }, after)
  return saved.ok ? ok(after) : saved
}

/** Something a customer did, heard once whatever arrives twice; conflicts with a turn made meanwhile are tried again. */
export const hearCustomer = async (
  desk: Desk,
  conversationId: string,
  about: { readonly incoming: Incoming; readonly files: readonly SaidFile[] },
): Promise<Result<Conversation, Problem>> => {
  const turn = { conversationId, said: saidFrom(about.incoming, about.files), words: wordsOf(about.incoming) }
  for (let tries = 1; ; tries += 1) {
    const taken = await desk.store.together(desk.shopId, (shop) =>
      isAnswer(about.incoming)
        ? takeAnswer(desk, shop, { conversationId, id: about.incoming.id, action: about.incoming.action })
        : takeTurn(desk, shop, turn),
    )
    if (taken.ok || !isVersionChange(taken.problems) || tries >= mostTries) return taken
  }
}
