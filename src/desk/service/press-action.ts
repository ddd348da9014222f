import type { Member } from '../../ports/counter-desk.ts'
import { actOnTicket } from './act-on-ticket.ts'
import type { Desk } from './desk.ts'
import { freezeRate } from './plan/learn-pace.ts'
import { mend } from './plan/mend.ts'
import { retryStep } from './retry-step.ts'
import { isTicketAct } from './ticket-life.ts'

/** Tried again when somebody else changed the same record meanwhile. */
const mostTries = 5

/**
 * Something staff or owner did with a button of the shop's channels; the id of an action carries no authority, the member
 * does. Answers with a word for whoever did it, null when there is nothing to say.
 */
export const pressAction = async (desk: Desk, member: Member, action: string): Promise<string | null> => {
  const [kind, id = '', name = '', revision = ''] = action.split(':')
  if (kind === 'o' && name.startsWith('again-'))
    return retryStep(desk, { orderId: id, step: name.slice('again-'.length), revision })
  if (kind === 'o' && name.startsWith('mend-'))
    return mend(desk, member, { orderId: id, code: name.slice('mend-'.length), revision })
  if (kind === 'r') return freezeRate(desk, member, { stage: id, word: name })
  if (kind !== 't' || !isTicketAct(name)) return null
  for (let tries = 1; ; tries += 1) {
    const done = await desk.store.together(desk.shopId, (shop) =>
      actOnTicket(desk, shop, { ticketId: id, act: name, by: member }),
    )
    if (done.ok) return done.value
    if (tries >= mostTries)
      throw new Error(`the ticket ${id} could not be changed: ${done.problems.map((one) => one.code).join(', ')}`)
  }
}
