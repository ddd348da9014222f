import { canonical } from '../../content-hash.ts'
import type { Conversation } from '../../conversation.ts'
import { readSecondPiece } from '../players/second-piece.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { type Reading, readLeft } from './left-clauses.ts'

/** Lines that the change before this message was of. */
const lately = ({ draft, past }: Conversation): readonly string[] => {
  const before = past.at(-1)?.draft.rows ?? {}
  return Object.keys(draft.rows).filter((key) => canonical(before[key] ?? null) !== canonical(draft.rows[key] ?? null))
}

/** A message read as ever, and then each of its clauses of which nothing came. */
export const readAll = <Order extends Reading & { readonly pasted: number; readonly unheard: readonly string[] }>(
  said: string,
  read: (words: string) => Order,
  { conversation, lexicon }: { readonly conversation: Conversation; readonly lexicon: Lexicon },
) => {
  const { rest: text, unheard: another } = readSecondPiece(said, conversation.draft)
  const first = read(text)
  const scene = { before: conversation.draft, lexicon, read, lately: lately(conversation) }
  const left = first.pasted === 0 ? readLeft(text, first, scene) : { patches: [], open: [], unheard: [], rest: text }
  const order = left.rest === text ? first : read(left.rest)
  const unheard = [...new Set([...another, ...first.unheard, ...left.unheard])]
  return { order, patches: [...order.patches, ...left.patches], open: [...order.open, ...left.open], unheard }
}
