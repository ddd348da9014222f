import type { Language } from '../../../domain/units/language.ts'
import type { Message } from '../../../ports/chat.ts'
import { shopChannel, type WorkerDesk } from '../desk.ts'
import { messageWith } from '../say/say-message.ts'
import { loadSheet } from './load-sheet.ts'

const picturePixels = 1_200

/**
 * The load as a message for a chat: the picture as PNG, kept as a file of the owner's channel, its figures that matter in words, and
 * every late or tight job.
 */
export const loadMessage = async (desk: WorkerDesk, language: Language): Promise<Message> => {
  const sheet = await loadSheet(desk, language)
  const bytes = desk.press.picture.render(sheet.picture, picturePixels)
  const file = desk.ids.hash(bytes)
  await desk.store.shop(desk.shopId).files.keep(shopChannel('owner'), { hash: file, name: 'load.png', mime: 'image/png', bytes })
  const late = sheet.late.jobs.map(({ text }) => text)
  return messageWith(language, {
    blocks: [
      { kind: 'text', text: sheet.lead, tone: 'plain' },
      late.length === 0
        ? { kind: 'text', text: sheet.late.none, tone: 'good' }
        : { kind: 'list', title: sheet.late.title, items: late },
    ],
    picture: { file, alt: sheet.pictureAlt },
  })
}
