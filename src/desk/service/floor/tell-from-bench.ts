import * as z from 'zod'
import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { ok } from '../../../domain/result/result.ts'
import { ticketName } from '../records/ticket-names.ts'
import { tellCustomer, tellOwner, wordsFor } from '../say/say-floor.ts'
import { type Answered, type Deed, readValues } from './deed.ts'

const askSchema = z.object({ note: z.string().trim().min(1).max(500) })
const shortSchema = z.object({ subject: z.string().trim().min(1).max(100), note: z.string().trim().max(200).default('') })

const find = ({ desk, shop, life, act, by }: Deed, facts: object): Promise<void> =>
  shop.tickets.find(life.ticket.ticketId, { code: act, facts, by: by.name, at: desk.clock.now() })

/** A question from the bench stands in the order's conversation; that it was asked, not what, stays with the ticket. */
export const askCustomer = async (deed: Deed): Answered => {
  const read = readValues(deed, askSchema)
  if (!read.ok) return ok(read.said)
  const { desk, shop, life } = deed
  if (life.order.conversationId === null) return ok(wordsFor(desk).noConversation)
  const nonce = `ask-${life.ticket.ticketId}-${life.findings.length}`
  await tellCustomer(shop, life.order, { nonce, text: (language) => floorWords[language].asked(read.value.note) })
  await find(deed, {})
  return ok(null)
}

/** Something ran out at the bench: the owner hears of it at once. */
export const tellShort = async (deed: Deed): Answered => {
  const read = readValues(deed, shortSchema)
  if (!read.ok) return ok(read.said)
  const { desk, shop, life } = deed
  const { subject, note } = read.value
  const what = [subject, note].filter((part) => part !== '').join(', ')
  const nonce = `short-${life.ticket.ticketId}-${life.findings.length}`
  await tellOwner(desk, shop, { nonce, text: wordsFor(desk).ownerNote.short(ticketName(life.ticket.number), what) })
  await find(deed, { subject, note })
  return ok(null)
}
