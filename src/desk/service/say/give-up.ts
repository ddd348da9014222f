import { deskWords } from '../../../../templates/desk/words.ts'
import type { GivenUp } from '../../../ports/queue.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { messageWith } from './say-message.ts'

/** Staff see which step gave up and why, with a retry. */
export const tellGivenUp = async (desk: Desk, { step, reason }: GivenUp): Promise<void> => {
  if (step.step === 'remind') return
  const shop = desk.store.shop(desk.shopId)
  const { orderId, revision } = step
  await shop.steps.giveUp({ step: step.step, orderId, revision }, reason)
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const words = deskWords[language]
  const body = messageWith(language, {
    blocks: [{ kind: 'text', text: words.ownerNote.stuck(`${step.step} ${orderId} r${revision}`, reason), tone: 'caution' }],
    actions: [{ id: `o:${orderId}:again-${step.step}:${revision}`, label: words.again, weight: 'main' }],
  })
  const channel = shopChannel('bench')
  await shop.messages.say({ channel, nonce: `stuck-${step.step}-${orderId}-${revision}-${step.attempt}`, by: 'bot', body })
  await shop.tell('channel', channel)
}
