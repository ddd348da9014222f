import { type Desk, shopChannel } from '../desk.ts'
import { messageWith } from '../say/say-message.ts'
import { tightJobs } from './tight-jobs.ts'

/** A job that became tight or late stands in the owner's channel once a revision, with what would mend it. */
export const warnTight = async (desk: Desk): Promise<void> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const shop = desk.store.shop(desk.shopId)
  const channel = shopChannel('owner')
  for (const job of await tightJobs(desk, language)) {
    const nonce = `${job.kind}-${job.orderId}-${job.revision}`
    if ((await shop.messages.of(nonce)) !== null) continue
    const items = [...job.causes, ...job.fixes.map(({ text }) => text)]
    const body = messageWith(language, {
      blocks: [
        { kind: 'text', text: job.text, tone: 'caution' },
        ...(items.length === 0 ? [] : [{ kind: 'list', title: null, items } as const]),
      ],
      actions: job.fixes.flatMap(({ action }) => (action === null ? [] : [action])),
    })
    await shop.messages.say({ channel, nonce, by: 'bot', body })
    await shop.tell('channel', channel)
  }
}
