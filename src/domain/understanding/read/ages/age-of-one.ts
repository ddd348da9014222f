import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { fold, isNumber, tokensOf } from '../text/tokens.ts'
import { classOf } from './age-answer.ts'

const said = spoken.ages
const end = `(?=[.,;!?\\n]|$| ${said.behindAge}\\b)`
/** "My son is 9", "she is 2", "mi nieta que tiene 20 meses"; in months where that is said. */
const told = new RegExp(
  `(?<!\\w)${said.theOne},? ?(?:${said.isOld}) ?(\\d{1,2})(?:[ -]?(?:(${said.months})|${said.years}))?${end}`,
)
/** "Turns 7", "cumple 5": a year less until then. */
const turning = new RegExp(`(?<!\\w)${said.theOne},? ?(?:${said.turnsOne}) (\\d{1,2})(?: (?:${said.years}))?${end}`)
const monthsInYear = 12
const grownUp = 13

/** A number is worn. */
const isNumbered = (text: string, { marks }: Draft, lexicon: Lexicon): boolean =>
  Object.values(marks).some(({ content }) => content === 'number') ||
  termsOf(lexicon, tokensOf(text)).some(({ meaning }) => meaning.kind === 'content' && meaning.id === 'number')

/** One piece is ordered, as far as it is known: no list of several, no amount, no plural. */
const isOne = (text: string, { rows, tally, garments, count }: Draft, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(text)
  const plural = termsOf(lexicon, tokens).some(
    ({ meaning, from, to }) => meaning.kind === 'garment' && (/s$/.test(tokens[to - 1]?.key ?? '') || isNumber(tokens[from - 1])),
  )
  const counted = [
    ...Object.values(tally).map(({ quantity }) => quantity),
    ...Object.values(garments).map((wish) => wish.count ?? 1),
  ]
  return (
    !plural &&
    Object.keys(rows).length + Object.keys(tally).length < 2 &&
    [count ?? 1, ...counted].every((amount) => amount === 1)
  )
}

/** The age of the one who wears the only piece of an order. */
export const readAgeOfOne = (text: string, draft: Draft, lexicon: Lexicon): readonly Patch[] => {
  if (!isOne(text, draft, lexicon)) return []
  const folded = fold(text)
  const born = turning.exec(folded)
  const found = told.exec(folded)
  if (born === null && found === null) return []
  const years = born === null ? Number(found?.[1]) / (found?.[2] === undefined ? 1 : monthsInYear) : Number(born[1])
  // "He's 23" may be his number, and a child's number frees no stones.
  if (
    born === null &&
    found?.[2] === undefined &&
    found?.[3] === undefined &&
    years >= grownUp &&
    isNumbered(text, draft, lexicon)
  )
    return []
  const [now, then] = [classOf(born === null ? years : years - 1), classOf(years)]
  return [{ path: ['ages'], value: now === then ? now : 'mixed' }]
}
