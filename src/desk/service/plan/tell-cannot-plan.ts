import { deskWords } from '../../../../templates/desk/words.ts'
import { sayProblem } from '../../../../templates/replies/say.ts'
import type { Problem } from '../../../domain/result/result.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { textMessage } from '../say/say-message.ts'

/** Tells the owner, once a revision, what in the shop's own hours and stations kept an order from being planned. */
export const tellCannotPlan = async (
  desk: Desk,
  shop: ShopStore,
  about: { readonly orderId: string; readonly revision: number; readonly why: readonly Problem[] },
): Promise<void> => {
  if (about.why.length === 0) return
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const show = showFor(desk.workshop.shop, language)
  const reasons = about.why.map((problem) => sayProblem(problem, language, show)).join(' ')
  const channel = shopChannel('owner')
  const body = textMessage(deskWords[language].ownerNote.cannotPlan(reasons), language)
  await shop.messages.say({ channel, nonce: `cannot-plan-${about.orderId}-${about.revision}`, by: 'bot', body })
  await shop.tell('channel', channel)
}
