import { canonical } from './content-hash.ts'
import type { Conversation } from './conversation.ts'
import type { Draft } from './draft.ts'
import { takeBack } from './turn.ts'

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** How many values, or whole lines, are other than before. */
const differences = (before: unknown, after: unknown): number => {
  if (canonical(before ?? null) === canonical(after ?? null)) return 0
  if (!isRecord(before) || !isRecord(after)) return 1
  return [...new Set([...Object.keys(before), ...Object.keys(after)])].reduce(
    (total, key) => total + differences(before[key], after[key]),
    0,
  )
}

const isEmpty = ({ rows, garments, tally }: Draft): boolean =>
  [rows, garments, tally].every((part) => Object.keys(part).length === 0)

/**
 * "Undo both": the last two changes, or the last one where that changed two things by itself. What the customer ordered at first is no
 * change of theirs and stays. Null when there is nothing to take back.
 */
export const takeBothBack = (conversation: Conversation): Conversation | null => {
  const last = conversation.past.at(-1)
  const first = takeBack(conversation)
  if (first === null || last === undefined) return null
  const earlier = first.past.at(-1)
  const several = differences(last.draft, conversation.draft) > 1
  return several || earlier === undefined || isEmpty(earlier.draft) ? first : takeBack(first)
}
