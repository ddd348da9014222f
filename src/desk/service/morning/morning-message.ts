import { serverWords } from '../../../../templates/desk/server.ts'
import { showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Block, Message } from '../../../ports/chat.ts'
import type { Morning } from '../../../ports/counter-desk.ts'
import type { Desk } from '../desk.ts'
import { messageWith } from '../say/say-message.ts'

/** The morning sheet as a message: its sections in their order, empty ones left out. */
export const morningMessage = (desk: Desk, morning: Morning, language: Language): Message => {
  const words = serverWords[language]
  const title = words.morning(showFor(desk.workshop.shop, language).day(morning.date))
  const sections = morning.sections.filter(({ lines }) => lines.length > 0)
  const blocks: readonly Block[] = sections.map((section) => ({
    kind: 'list',
    title: section.title,
    items: section.lines.map(({ text, todo }) => words.todo(text, todo)),
  }))
  const nothing: Block = { kind: 'text', text: words.nothing, tone: 'good' }
  return messageWith(language, {
    blocks: [{ kind: 'text', text: title, tone: 'plain' }, ...(blocks.length === 0 ? [nothing] : blocks)],
  })
}
