import type { Conversation } from '../../conversation.ts'
import type { Intent } from '../../understood.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isEarlierMentioned } from './earlier-mentioned.ts'

/** "You spelled Ida wrong" of a list that nobody signed yet is a correction of the list, not a complaint. */
const isOwnSpelling = (intent: Intent, { draft, signed }: Conversation): boolean =>
  intent.kind === 'complaint' && intent.complaint.kind === 'wrong-name' && signed === null && Object.keys(draft.rows).length > 0

/** What a message is for, where the list or the order so far tells it from what its words alone would mean. */
export const intentOf = (
  heard: Intent,
  { text, conversation, lexicon }: { readonly text: string; readonly conversation: Conversation; readonly lexicon: Lexicon },
): Intent => {
  if (isOwnSpelling(heard, conversation)) return { kind: 'order' }
  const mentions = ['order', 'greeting'].includes(heard.kind) && isEarlierMentioned(text, conversation.draft, lexicon)
  return mentions ? { kind: 'earlier-mentioned' } : heard
}
