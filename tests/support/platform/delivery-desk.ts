import type { DeliveryDesk } from '../../../src/adapters/chat/platform/deliver.ts'
import type { Channel } from '../../../src/ports/chat.ts'
import type { StoredFile } from '../../../src/ports/counter-desk.ts'
import type { Postings, PostingTrouble } from '../../../src/ports/platform-desk.ts'

export const placeName = (channel: Channel): string => (channel.kind === 'shop' ? channel.name : channel.id)

/** What delivering asks of the desk, from plain maps. */
export const deliveryDesk = (postings: Postings) => {
  const places = new Map<string, string>()
  const files = new Map<string, StoredFile>()
  const troubles: { readonly code: PostingTrouble; readonly nonce: string }[] = []
  const desk: DeliveryDesk = {
    postings,
    file: async (_shop, _channel, id) => files.get(id) ?? null,
    placeOf: async (_shop, channel) => {
      const found = places.get(placeName(channel))
      return found === undefined ? null : { channel: found, language: 'en' }
    },
    troubled: async (_shop, { code, nonce }) => {
      troubles.push({ code, nonce })
      return { about: 'Ticket 9' }
    },
  }
  return { desk, places, files, troubles }
}
