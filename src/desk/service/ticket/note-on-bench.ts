import type { Incoming } from '../../../ports/chat.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { textMessage } from '../say/say-message.ts'

/** Something staff say to one another stands in the bench channel under their name. */
export const noteOnBench = async (desk: Desk, member: Member, said: Extract<Incoming, { kind: 'said' }>): Promise<void> => {
  const text = said.text.trim()
  if (text === '') return
  const shop = desk.store.shop(desk.shopId)
  const channel = shopChannel('bench')
  const body = textMessage(text, desk.workshop.shop.profile.languages[0] ?? 'en')
  await shop.messages.say({ channel, nonce: `note-${said.id}`, by: member.name, body })
  await shop.tell('channel', channel)
}
