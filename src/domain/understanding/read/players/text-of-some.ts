import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'

const ofSome = new RegExp(`(?<![\\p{L}\\d])${spoken.things.someSay}(?![\\p{L}])`, 'u')
const every = anyOf(spoken.ages.everybody, spoken.ages.all)
/** Words between quotes or in capitals: what is to be written. */
const written = /["“«]|(?<!\p{L})\p{Lu}{2,}/u

/** "The other 3 say BOSS": another word than is on all of them, and nobody is named who wears it. */
export const isTextOfSome = (words: string, { marks }: Draft): boolean => {
  const worn = Object.values(marks).some(
    ({ content, text, wanted }) => content === 'text' && text !== undefined && wanted !== false,
  )
  const folded = fold(words)
  return worn && ofSome.test(folded) && !every.test(folded) && written.test(words)
}
