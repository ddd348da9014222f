import { deskWords } from '../../../templates/desk/words.ts'
import type { Ticket } from '../../domain/ticket/ticket.ts'
import type { Attachment } from '../../ports/chat.ts'
import type { OrderStep } from '../../ports/queue.ts'
import type { ShopStore } from '../../ports/store.ts'
import { conversationChannel, orderFiles, shopChannel, type WorkerDesk } from './desk.ts'
import { conversationFrom, type QuoteBody } from './records.ts'
import { messageWith } from './say-message.ts'

/** What lies beside a ticket at the bench: the archive for the cutter, and the new templates one to one on paper. */
export const keepBenchPapers = async (
  shop: ShopStore,
  { orderId }: OrderStep<'ticket'>,
  about: { readonly quote: QuoteBody; readonly called: string },
): Promise<readonly Attachment[]> => {
  const { quote, called } = about
  const wanted = [
    { hash: quote.cutArchive, name: `${called}-cut.zip` },
    { hash: quote.templatePrint ?? null, name: `${called}-templates.pdf` },
  ]
  const papers: Attachment[] = []
  for (const { hash, name } of wanted) {
    const file = hash === null ? null : await shop.files.read(orderFiles(orderId), hash)
    if (hash === null || file === null) continue
    await shop.files.keep(shopChannel('bench'), { ...file, hash, name })
    papers.push({ file: hash, name, mime: file.mime, bytes: file.bytes.length })
  }
  return papers
}

/** A customer's own papers of one order, and the conversation they lie in. */
export type CustomerPapers = { readonly conversationId: string; readonly price: Attachment; readonly care: Attachment }

/** The customer's price slip and care card, printed and kept in their conversation; null where there is none. */
export const printCustomerPapers = async (
  desk: WorkerDesk,
  { orderId }: OrderStep<'ticket'>,
  { quote, called }: { readonly quote: QuoteBody; readonly called: string },
): Promise<CustomerPapers | null> => {
  const shop = desk.store.shop(desk.shopId)
  const conversationId = (await shop.orders.read(orderId))?.conversationId ?? null
  const slips = quote.slips ?? null
  if (conversationId === null || slips === null) return null
  const print = async (ticket: Ticket, kind: 'price' | 'care'): Promise<Attachment> => {
    const { bytes } = await desk.press.printer.print(ticket)
    const file = { hash: desk.ids.hash(bytes), name: `${kind}-${called}.pdf`, mime: 'application/pdf', bytes }
    await shop.files.keep(conversationChannel(conversationId), file)
    return { file: file.hash, name: file.name, mime: file.mime, bytes: bytes.length }
  }
  return { conversationId, price: await print(slips.price, 'price'), care: await print(slips.care, 'care') }
}

/** Offers them in the conversation, once for each revision that was signed. */
export const offerCustomerPapers = async (
  shop: ShopStore,
  { orderId, revision }: OrderStep<'ticket'>,
  { conversationId, price, care }: CustomerPapers,
): Promise<void> => {
  const stored = await shop.conversations.read(conversationId)
  if (stored === null) return
  const { language } = conversationFrom(stored.state)
  const channel = conversationChannel(conversationId)
  const text = deskWords[language].papers
  const body = messageWith(language, { blocks: [{ kind: 'text', text, tone: 'plain' }], file: price, papers: [care] })
  await shop.messages.say({ channel, nonce: `papers-${orderId}-${revision}`, by: 'bot', body })
  await shop.tell('channel', channel)
}
