import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { numberListAt } from '../list/number-lists.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { isWord, tokensOf } from '../text/tokens.ts'
import { refKeys } from './letters.ts'

const longSleeve = new RegExp(`\\b${spoken.rowMarks.longSleeve}\\b`, 'iu')

const others: readonly string[] = [...listed.players.every, ...listed.players.except, ...listed.leftOff.refusing]

/** Lines that words name, over ranges of numbers too. */
const named = (text: string, draft: Draft): readonly string[] => {
  const tokens = tokensOf(text)
  const ranges = [...tokens.keys()].flatMap((at) => {
    const list = numberListAt(tokens, at)
    return list?.ranged === true ? list.numbers : []
  })
  const ranged = Object.entries(draft.rows).flatMap(([key, { number }]) => (ranges.includes(number ?? '') ? [key] : []))
  return [...new Set([...refKeys(tokens, draft), ...ranged])]
}

const ofSentence = (sentence: string, draft: Draft, lexicon: Lexicon): readonly Patch[] => {
  const isOfThings = (text: string): boolean => termsOf(lexicon, tokensOf(text)).some(({ meaning }) => meaning.kind === 'garment')
  const clause = sentence.split(',').find((part) => longSleeve.test(part)) ?? sentence
  const part = isOfThings(sentence) ? clause : sentence
  const words = longSleeve.exec(part)?.[0]
  if (words === undefined || isOfThings(part) || tokensOf(part).some((token) => isWord(token, ...others))) return []
  const keys = named(part, draft)
  if (keys.length === Object.keys(draft.rows).length) return []
  return keys.map((key): Patch => ({ path: ['rows', key, 'note'], value: words }))
}

/** "Numbers 1 to 8 … 1 and 2 are the goalies, long sleeves for those two": a note on lines that the same message made out of a sentence. */
export const readLongSleeves = (
  text: string,
  { before, draft, lexicon }: { readonly before: Draft; readonly draft: Draft; readonly lexicon: Lexicon },
): readonly Patch[] =>
  Object.keys(draft.rows).some((key) => before.rows[key] === undefined)
    ? text.split(/[.;!?\n]+/).flatMap((sentence) => (longSleeve.test(sentence) ? ofSentence(sentence, draft, lexicon) : []))
    : []
