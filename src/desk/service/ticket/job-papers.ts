import { deskWords } from '../../../../templates/desk/words.ts'
import type { Ticket } from '../../../domain/ticket/ticket.ts'
import type { Conversation } from '../../../domain/understanding/conversation.ts'
import type { Attachment } from '../../../ports/chat.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { HashedFile } from '../../../ports/talk-records.ts'
import { conversationChannel, orderFiles, shopChannel, type WorkerDesk } from '../desk.ts'
import type { QuoteBody } from '../records/records.ts'
import { messageWith } from '../say/say-message.ts'

export type BenchPapers = { readonly quote: QuoteBody; readonly called: string }

/** What lies beside a ticket at the bench: the archive for the cutter, and the new templates one to one on paper. */
export const keepBenchPapers = async (
  shop: ShopStore,
  { orderId }: OrderStep<'ticket'>,
  { quote, called }: BenchPapers,
): Promise<readonly Attachment[]> => {
  const wanted = [
    { hash: quote.cutArchive, name: `${called}-cut.zip` },
    { hash: quote.templatePrint ?? null, name: `${called}-templates.pdf` },
  ]
  const paper = async ({ hash, name }: (typeof wanted)[number]): Promise<readonly Attachment[]> => {
    if (hash === null) return []
    const shared = await shop.files.share(orderFiles(orderId), hash, { owner: shopChannel('bench'), name })
    return shared === null ? [] : [{ file: hash, name, mime: shared.mime, bytes: shared.size }]
  }
  return (await Promise.all(wanted.map(paper))).flat()
}

/** A customer's own papers of one order. */
export type CustomerPapers = { readonly price: HashedFile; readonly care: HashedFile }

/** The customer's price slip and care card, printed; null where there is none. */
export const printCustomerPapers = async (
  desk: WorkerDesk,
  { quote, called }: { readonly quote: QuoteBody; readonly called: string },
): Promise<CustomerPapers | null> => {
  const slips = quote.slips ?? null
  if (slips === null) return null
  const print = async (ticket: Ticket, kind: 'price' | 'care'): Promise<HashedFile> => {
    const { bytes } = await desk.press.printer.print(ticket)
    return { hash: desk.ids.hash(bytes), name: `${kind}-${called}.pdf`, mime: 'application/pdf', bytes }
  }
  return { price: await print(slips.price, 'price'), care: await print(slips.care, 'care') }
}

const attached = ({ hash, name, mime, bytes }: HashedFile): Attachment => ({ file: hash, name, mime, bytes: bytes.length })

type Offer = { readonly conversation: Pick<Conversation, 'id' | 'language'>; readonly papers: CustomerPapers }

/** Keeps them in the conversation and offers them there, once for each revision that was signed. */
export const offerCustomerPapers = async (
  shop: ShopStore,
  { orderId, revision }: OrderStep<'ticket'>,
  { conversation, papers: { price, care } }: Offer,
): Promise<void> => {
  const { id, language } = conversation
  const channel = conversationChannel(id)
  for (const file of [price, care]) await shop.files.keep(channel, file)
  const text = deskWords[language].papers
  const blocks = [{ kind: 'text', text, tone: 'plain' }] as const
  const body = messageWith(language, { blocks, file: attached(price), papers: [attached(care)] })
  await shop.messages.say({ channel, nonce: `papers-${orderId}-${revision}`, by: 'bot', body })
  await shop.tell('channel', channel)
}
