import { cleanText } from './clean-text.ts'
import type { Complaint, Conversation } from './conversation.ts'
import type { Heard } from './proceed.ts'
import { complaintWith } from './read/intent/complaint.ts'

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
