import type { Conversation, Kept, SaidFile } from './conversation.ts'
import type { Context } from './document.ts'
import { readTable } from './read/list/table.ts'
import type { Reply } from './replies.ts'
import { takeTurn } from './turn.ts'

type Taken = { readonly conversation: Conversation; readonly replies: readonly Reply[] }

const kindOf = (file: SaidFile): Kept['kind'] => {
  if (file.mediaType.startsWith('audio/')) return 'voice'
  if (/svg|postscript|pdf|illustrator/.test(file.mediaType)) return 'artwork'
  if (file.mediaType.startsWith('image/')) return 'photo'
  return 'other'
}

const keep = (conversation: Conversation, file: SaidFile): Taken => {
  const kind = kindOf(file)
  return {
    conversation: { ...conversation, kept: [...conversation.kept, { file: file.name, kind }] },
    replies: [{ code: 'file-kept', facts: { file: file.name, kind } }],
  }
}

const takeFile = (conversation: Conversation, file: SaidFile, context: Context): Taken => {
  if (file.unread !== undefined) {
    const { conversation: kept } = keep(conversation, file)
    return { conversation: kept, replies: [{ code: 'file-unread', facts: { file: file.name, why: file.unread } }] }
  }
  if (file.table === undefined) return keep(conversation, file)
  const { patches, pasted } = readTable(file.table, conversation)
  if (pasted === 0) return { conversation, replies: [{ code: 'file-unread', facts: { file: file.name, why: 'not-a-table' } }] }
  const turn = takeTurn(conversation, { patches, open: [], how: 'said', quote: file.name }, context)
  const rows = Object.values(turn.conversation.draft.rows)
  const facts = {
    rows: pasted,
    withoutName: rows.filter((row) => row.name === undefined).length,
    withoutNumber: rows.filter((row) => row.number === undefined).length,
    withoutSize: rows.filter((row) => row.size === undefined).length,
  }
  return { conversation: turn.conversation, replies: [{ code: 'roster-read', facts }] }
}

/** Files that came with a message: a table read under limits becomes roster lines, everything else is kept and said to be unread. */
export const hearFiles = (conversation: Conversation, files: readonly SaidFile[], context: Context): Taken =>
  files.reduce<Taken>(
    (taken, file) => {
      const next = takeFile(taken.conversation, file, context)
      return { conversation: next.conversation, replies: [...taken.replies, ...next.replies] }
    },
    { conversation, replies: [] },
  )
