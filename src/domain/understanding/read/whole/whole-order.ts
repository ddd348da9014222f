import type { Conversation } from '../../conversation.ts'
import type { Understood } from '../../understood.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isCancelling, keepsOrder } from './cancelling.ts'
import { excepted, exceptionIn, isBareException } from './exceptions.ts'

/** What is said of the order as a whole: it is given up, or kept after all, or right but for somebody who is only named. */
export const ofWholeOrder = (text: string, { draft, asked }: Conversation, lexicon: Lexicon): Partial<Understood> | null => {
  if (isCancelling(text, draft, lexicon)) return { intent: { kind: 'cancel' } }
  if (asked?.code === 'cancel' && keepsOrder(text)) return { intent: { kind: 'no' } }
  const exception = exceptionIn(text, draft)
  return exception !== null && isBareException(exception, draft, lexicon) ? excepted(exception) : null
}
