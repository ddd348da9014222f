import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, fold, tokensOf } from '../text/tokens.ts'

const said = spoken.complaints
const made = anyOf(said.madeBefore)
const wishes = anyOf(said.orders, said.wantsAgain)

const most = 18
const plain: readonly string[] = [
  'garment',
  'colour',
  'in',
  'of',
  'with',
  'and',
  'content',
  'role',
  'use',
  'sport',
  'own',
  'unit',
]

/** "The shirts you made us in July", and nothing is told or wished of them: a complaint or an order may follow. */
export const isEarlierMentioned = (text: string, { garments, marks }: Draft, lexicon: Lexicon): boolean => {
  const folded = fold(text)
  const blank = Object.keys(garments).length + Object.keys(marks).length === 0
  if (!blank || !made.test(folded) || wishes.test(folded)) return false
  const tokens = tokensOf(text)
  const kinds = termsOf(lexicon, tokens).map(({ meaning }) => meaning.kind)
  return tokens.length <= most && kinds.includes('garment') && kinds.every((kind) => plain.includes(kind))
}
