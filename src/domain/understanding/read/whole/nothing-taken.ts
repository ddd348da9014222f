import type { Conversation } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Understood } from '../../understood.ts'
import { spoken } from '../../words/languages.ts'
import { readToFollow } from '../calendar/to-follow.ts'
import { hasSize } from '../sizes/sizes.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { mayTellAges } from './ages-answered.ts'
import { excepted, exceptionIn } from './exceptions.ts'

/** Terms that stand in any sentence. */
const idleTerms: readonly string[] = ['and', 'in', 'with', 'no', 'count', 'only']

const business = anyOf(spoken.intents.business)

/** Words of nothing that is made here, nor of an order: no term of the trade, no size, nobody of the list. */
const isStrange = (text: string, draft: Draft, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(text)
  const idle = termsOf(lexicon, tokens).every(({ meaning }) => idleTerms.includes(meaning.kind))
  return tokens.length > 2 && idle && !business.test(fold(text)) && !hasSize(tokens) && refsIn(tokens, draft.rows).length === 0
}

/** What becomes of a message of which nothing was taken: what is not right must be said again, and words of nothing here are off the subject. */
export const ofNothing = (
  text: string,
  { intent, signing }: Understood,
  { conversation, lexicon }: { readonly conversation: Conversation; readonly lexicon: Lexicon },
): Partial<Understood> => {
  const exception = exceptionIn(text, conversation.draft)
  if (exception !== null) return excepted(exception)
  const ordinary = intent.kind !== 'order' || signing !== null || mayTellAges(text, conversation)
  if (!ordinary && readToFollow(text, lexicon).told) return { intent: { kind: 'waits' } }
  return !ordinary && isStrange(text, conversation.draft, lexicon) ? { intent: { kind: 'off-topic' } } : {}
}
