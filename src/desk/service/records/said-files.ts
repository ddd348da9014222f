import type { SaidFile } from '../../../domain/understanding/conversation.ts'
import type { Attachment } from '../../../ports/chat.ts'
import { conversationChannel, type Desk } from '../desk.ts'

/** What may be a roster: tables by name or kind; pictures and sound are kept and never read. */
const mayBeTable = ({ name, mime }: Attachment): boolean =>
  /\.(csv|tsv|txt|xlsx)$/i.test(name) || /csv|spreadsheet|^text\/plain/.test(mime)

/** A file as the conversation hears of it, with the cells of a table, read under limits. */
const saidFile = async (desk: Desk, owner: string, attachment: Attachment): Promise<SaidFile> => {
  const { name, mime, bytes } = attachment
  const said = { name, mediaType: mime, bytes }
  if (!mayBeTable(attachment)) return said
  const kept = await desk.store.shop(desk.shopId).files.read(owner, attachment.file)
  return kept === null ? { ...said, unread: 'broken' } : { ...said, ...(await desk.readSheet({ name, bytes: kept.bytes })) }
}

/** Files that came with a customer's words; they were kept for their conversation before. */
export const saidFiles = (desk: Desk, conversationId: string, files: readonly Attachment[]): Promise<readonly SaidFile[]> =>
  Promise.all(files.map((file) => saidFile(desk, conversationChannel(conversationId), file)))
