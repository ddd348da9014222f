import { writeLocal } from '../../../domain/calendar/local-time.ts'
import { shopChannel, type WorkerDesk } from '../desk.ts'
import { loadMessage } from '../shop/load-picture.ts'
import { morningMessage } from './morning-message.ts'
import { morningSheet } from './morning-sheet.ts'

/** The owner opens it at seven; a service that was down then still posts it before noon. */
const from = '07:00'
const to = '12:00'

/** The load and the morning sheet in the owner's channel, once a day; the sheet is last, it says that the day was posted. */
export const postMorning = async (desk: WorkerDesk): Promise<void> => {
  const [day = '', hour = ''] = writeLocal(desk.zone, desk.clock.now()).split('T')
  const shop = desk.store.shop(desk.shopId)
  const nonce = `morning-${day}`
  if (hour < from || hour >= to || (await shop.messages.of(nonce)) !== null) return
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const body = morningMessage(desk, await morningSheet(desk, language), language)
  const channel = shopChannel('owner')
  await shop.messages.say({ channel, nonce: `load-${day}`, by: 'bot', body: await loadMessage(desk, language) })
  await shop.messages.say({ channel, nonce, by: 'bot', body })
  await shop.tell('channel', channel)
}
