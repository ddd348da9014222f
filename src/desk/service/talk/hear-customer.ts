import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Conversation, Earlier, EarlierAsked, Said, SaidFile } from '../../../domain/understanding/conversation.ts'
import { hear } from '../../../domain/understanding/hear.ts'
import type { Incoming } from '../../../ports/chat.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { conversationChannel, type Desk } from '../desk.ts'
import { editTicketsOf } from '../floor/edit-tickets.ts'
import { hearAnswer } from '../plan/ask-customer.ts'
import { orderIdOf } from '../records/order-id.ts'
import { conversationFrom } from '../records/records.ts'
import { saidFrom, wordsOf } from '../say/said.ts'
import { replyMessage, textMessage } from '../say/say-message.ts'
import { earlierOf, ownEarlierOrder } from './earlier-orders.ts'
import { followWish } from './follow-wish.ts'
import { signOff } from './sign-off.ts'

/** How often a turn is tried again when somebody else changed the conversation meanwhile. */
const mostTries = 8

/** What the domain's `hear` is told besides the words. */
const contextOf = (desk: Desk) => ({ shop: desk.workshop.shop, now: writeLocal(desk.zone, desk.clock.now()) })

export type Turn = { readonly conversationId: string; readonly said: Said; readonly words: string | null }

/** The turn's name in the whole shop: two customers who send the same delivery id are two turns. */
const turnName = ({ conversationId, said }: Turn): string => `${conversationId}-${said.id}`

type HeardTurn = Turn & { readonly heard: ReturnType<typeof hear> }

/** Puts the customer's words into the conversation's channel; the nonce makes a repeated turn post nothing twice. */
const postWords = async (shop: ShopStore, { heard, words, ...turn }: HeardTurn): Promise<void> => {
  if (words === null || words === '') return
  const channel = conversationChannel(turn.conversationId)
  const body = textMessage(words, heard.conversation.language)
  await shop.messages.say({ channel, nonce: `in-${turnName({ ...turn, words })}`, by: 'customer', body })
}

/** Puts the replies into the conversation's channel, each of them once. */
const postReplies = async (desk: Desk, shop: ShopStore, turn: HeardTurn): Promise<void> => {
  const channel = conversationChannel(turn.conversationId)
  const { conversation, replies } = turn.heard
  for (const [index, reply] of replies.entries()) {
    const body = replyMessage(reply, conversation.language, desk.workshop.shop)
    await shop.messages.say({ channel, nonce: `re-${turnName(turn)}-${index}`, by: 'bot', body })
  }
  await shop.tell('channel', channel)
}

/** The earlier order that was asked for, where the customer may see it and has none yet in this talk. */
const ownEarlier = async (
  desk: Desk,
  shop: ShopStore,
  { conversation, asks }: { readonly conversation: Conversation; readonly asks: EarlierAsked },
): Promise<Earlier | null> => {
  if (conversation.signed !== null || conversation.draft.from !== undefined) return null
  const own = await ownEarlierOrder(desk, shop, { id: conversation.id, asks })
  return own === null ? null : earlierOf(shop, own, asks)
}

/** Answers and does what was wished for. Whether a signature holds is known only when it is sold: no thanks for a place that is gone. */
const answerTurn = async (desk: Desk, shop: ShopStore, turn: HeardTurn): Promise<Result<null, Problem>> => {
  const { conversation, wants: wish } = turn.heard
  await postWords(shop, turn)
  if (wish?.kind === 'sign-off') {
    const signed = await signOff(desk, shop, { conversation, revision: wish.revision, hash: wish.hash })
    if (!signed.ok) return signed
    if (signed.value === 'sold') await postReplies(desk, shop, turn)
    return ok(null)
  }
  await postReplies(desk, shop, turn)
  const earlier = wish?.kind === 'earlier-order' ? await ownEarlier(desk, shop, { conversation, asks: wish.asks }) : null
  if (earlier !== null) {
    const said = { id: `own-${turnName(turn)}`, kind: 'earlier', ...earlier } as const
    const taken = await takeTurn(desk, shop, { conversationId: turn.conversationId, said, words: null })
    return taken.ok ? ok(null) : taken
  }
  return wish === null ? ok(null) : followWish(desk, shop, { conversation, wish, saidId: turnName(turn) })
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
  const answered = await answerTurn(desk, shop, { ...turn, heard })
  return answered.ok ? ok(heard.conversation) : answered
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
  await editTicketsOf(desk, shop, orderIdOf(conversationId))
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
