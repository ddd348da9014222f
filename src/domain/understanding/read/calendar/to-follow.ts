import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, blanked, fold, tokensOf } from '../text/tokens.ts'

const said = spoken.later
const parts = { sizes: anyOf(said.sizes), names: anyOf(said.names), numbers: anyOf(said.numbers) } as const
const notYet = anyOf(said.notYet)
const gives = anyOf(said.gives)
const others = anyOf(said.others, said.list)
const wanted = anyOf(said.needs)
const theList = new RegExp(`\\b${said.theList}\\b`, 'g')

/** What of the list follows later, and the text without the clauses that say so. */
export type ToFollow = { readonly patches: readonly Patch[]; readonly told: boolean; readonly rest: string }

/** Words that stand beside a part of the list that is not there yet; a colour or a garment tells more. */
const idle: readonly string[] = ['content', 'word', 'own', 'no', 'and', 'in', 'with', 'of', 'count', 'only', 'both']

type Clause = { readonly from: number; readonly to: number; readonly text: string }

const clausesOf = (text: string): readonly Clause[] =>
  [...text.matchAll(/[^.,;\n!?]+/g)].map(({ 0: words, index }) => ({ from: index, to: index + words.length, text: words }))

const whatIn = (folded: string): readonly Patch[] =>
  (['sizes', 'names', 'numbers'] as const).flatMap((what): readonly Patch[] =>
    parts[what].test(folded) ? [{ path: ['later', what], value: true }] : [],
  )

/** "Don't have the numbers yet", "los otros 12 te los paso el lunes". */
const isToFollow = ({ text }: Clause, lexicon: Lexicon): boolean => {
  const folded = fold(text)
  const ofList = whatIn(folded).length > 0 || others.test(folded)
  const later = notYet.test(folded) || gives.test(folded)
  const tokens = tokensOf(text)
  const plain = termsOf(lexicon, tokens).every(({ meaning }) => idle.includes(meaning.kind))
  return ofList && later && plain && !wanted.test(folded.replace(theList, ''))
}

/** "…, I'll send them monday": right behind what is not there yet. */
const goesOn = ({ text }: Clause): boolean =>
  gives.test(fold(text)) && !wanted.test(fold(text)) && whatIn(fold(text)).length === 0

/** What of the list is told to come later is no wish to leave it off, and the day on which it comes is no day of the order. */
export const readToFollow = (text: string, lexicon: Lexicon): ToFollow => {
  let before = false
  return clausesOf(text).reduce<ToFollow>(
    ({ patches, told, rest }, clause) => {
      const own = isToFollow(clause, lexicon)
      const more = !own && before && goesOn(clause)
      before = own || more
      if (!before) return { patches, told, rest }
      return {
        patches: own ? [...patches, ...whatIn(fold(clause.text))] : patches,
        told: true,
        rest: blanked(rest, clause.from, clause.to),
      }
    },
    { patches: [], told: false, rest: text },
  )
}
