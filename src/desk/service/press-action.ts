import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import { isShopAct, isTicketAct } from '../../domain/ticket/acts.ts'
import type { Member, Told } from '../../ports/counter-desk.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { Desk } from './desk.ts'
import { actOnShop } from './floor/act-on-shop.ts'
import type { Values } from './floor/deed.ts'
import { decidePromise } from './floor/move-promise.ts'
import { freezeRate } from './plan/learn-pace.ts'
import { mend } from './plan/mend.ts'
import { retryStep } from './records/retry-step.ts'
import { toldWhy } from './say/told.ts'
import { cancelBegun } from './talk/cancel-order.ts'
import { releaseEarlier } from './talk/release-earlier.ts'
import { actOnTicket } from './ticket/act-on-ticket.ts'

/** Tried again when somebody else changed the same record meanwhile. */
const mostTries = 5

export type Pressing = { readonly action: string; readonly values?: Values }

type Work = (shop: ShopStore) => Promise<Result<Told, Problem>>

/** Of work that answers with a sentence only when it was not done. */
const why =
  (run: (shop: ShopStore) => Promise<Result<string | null, Problem>>): Work =>
  async (shop) => {
    const done = await run(shop)
    return done.ok ? ok(toldWhy(done.value)) : done
  }

/** What an action does inside a transaction; null when nobody knows it. */
const workOf = (desk: Desk, member: Member, { action, values = {} }: Pressing): Work | null => {
  const [kind, id = '', name = '', revision = ''] = action.split(':')
  if (kind === 'o' && name.startsWith('promise-'))
    return (shop) => decidePromise(desk, shop, { orderId: id, to: name.slice('promise-'.length), revision, by: member })
  if (kind === 'o' && name === 'cancel') return why((shop) => cancelBegun(desk, shop, { orderId: id, revision, by: member }))
  if (kind === 'o' && name.startsWith('release-'))
    return why((shop) =>
      releaseEarlier(desk, shop, { orderId: id, revision, conversationId: name.slice('release-'.length), by: member }),
    )
  if (kind === 's' && isShopAct(id)) return why((shop) => actOnShop({ desk, shop, act: id, by: member, values }))
  if (kind === 't' && isTicketAct(name))
    return why((shop) => actOnTicket(desk, shop, { ticketId: id, act: name, by: member, values }))
  return null
}

/**
 * Something staff or owner did with a button or a form of the shop's channels; the id of an action carries no authority, the
 * member does. Answers with a word for whoever did it, null when there is nothing to say, and whether it was done.
 */
export const pressAndTell = async (desk: Desk, member: Member, pressing: Pressing): Promise<Told> => {
  const [kind, id = '', name = '', revision = ''] = pressing.action.split(':')
  if (kind === 'o' && name.startsWith('again-'))
    return toldWhy(await retryStep(desk, { orderId: id, step: name.slice('again-'.length), revision }))
  if (kind === 'o' && name.startsWith('mend-'))
    return mend(desk, member, { orderId: id, code: name.slice('mend-'.length), revision })
  if (kind === 'r') return toldWhy(await freezeRate(desk, member, { stage: id, word: name }))
  const work = workOf(desk, member, pressing)
  if (work === null) return toldWhy(null)
  for (let tries = 1; ; tries += 1) {
    const done = await desk.store.together(desk.shopId, work)
    if (done.ok) return done.value
    if (tries >= mostTries)
      throw new Error(`${pressing.action} could not be done: ${done.problems.map((one) => one.code).join(', ')}`)
  }
}

/** The same where the word is all that is shown. */
export const pressAction = async (desk: Desk, member: Member, pressing: Pressing): Promise<string | null> =>
  (await pressAndTell(desk, member, pressing)).said
