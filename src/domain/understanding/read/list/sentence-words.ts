import { listed } from '../../words/languages.ts'
import { isCapital, type Token } from '../text/tokens.ts'
import { isAdd } from './change.ts'

/** Words that stand in sentences about orders and hardly in a name. */
export const sentenceWords: ReadonlySet<string> = new Set(listed.rosters.sentence)

/** Small words of changes: in capitals they may be a name's ("Page Not Found"). */
const changeWords: ReadonlySet<string> = new Set(listed.anew.sentence)

/** Whether a word stands in sentences about orders and in no name. */
export const isSentence = (token: Token): boolean =>
  sentenceWords.has(token.key) || (!isCapital(token) && (changeWords.has(token.key) || isAdd(token)))
