import { cleanText } from './clean-text.ts'
import type { Complaint, Conversation } from './conversation.ts'
import type { Heard } from './proceed.ts'
import { complaintWith } from './read/intent/complaint.ts'
import type { Intent, Understood } from './understood.ts'

/** A complaint is a record and never an order: kept in the conversation, told to the owner. */
export const noteComplaint = (conversation: Conversation, complaint: Complaint, adds: boolean): Heard => ({
  conversation: { ...conversation, complaint, asked: { code: 'complaint', path: '' } },
  replies: [{ code: 'complaint-noted', facts: { complaint } }],
  wants: { kind: 'complaint', complaint, adds },
})

/** Right after a complaint the next message may tell more of it: whose, which number, how it was washed. */
export const moreOfComplaint = (conversation: Conversation, text: string): Heard | null => {
  const { asked, complaint } = conversation
  if (asked?.code !== 'complaint' || complaint === null || complaint === undefined) return null
  const more = complaintWith(complaint, cleanText(text).text, null)
  return more === null ? null : noteComplaint(conversation, more, true)
}

const longest = 2_000
/** What is no order and no other wish. */
const strange: readonly Intent['kind'][] = ['order', 'off-topic']

/** Words of which nothing else came, right after a complaint: the owner reads them with it. */
export const wordsOfComplaint = (conversation: Conversation, { intent }: Understood, text: string): Heard | null => {
  const { asked, complaint } = conversation
  if (asked?.code !== 'complaint' || !complaint || !strange.includes(intent.kind)) return null
  return noteComplaint(conversation, { ...complaint, text: `${complaint.text}\n${cleanText(text).text}`.slice(0, longest) }, true)
}
