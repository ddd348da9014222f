import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { fold, tokensOf } from '../text/tokens.ts'

const said = spoken.elsewhere

/** "Need 12 navy caps", "do you do tote bags": an amount or a wish, at most three words, and the thing. */
const wished = new RegExp(
  `\\b(?:${said.wants}|${said.some})(?: (?!${said.passing}\\b)\\w+){0,3}? (${said.things})\\b(?! ${said.drawn})`,
  'g',
)
const cloths = new RegExp(`\\b(${said.ofCloth})\\b`, 'g')

/** What a customer wants that is no garment of this trade, in their words, and whether no garment is wanted beside it. */
export type Elsewhere = { readonly things: readonly string[]; readonly alone: boolean }

const none: Elsewhere = { things: [], alone: false }

/** Caps, bags, leather and the like: nothing is known of what holds on them, so they must never be taken for the usual jersey. */
export const readElsewhere = (text: string, { garments }: Draft, lexicon: Lexicon): Elsewhere => {
  const folded = fold(text)
  const found = [wished, cloths].flatMap((pattern) => [...folded.matchAll(pattern)])
  if (found.length === 0) return none
  const rest = found.reduce((words, [part]) => words.replace(part, ' '), folded)
  const isNamed = termsOf(lexicon, tokensOf(rest)).some(({ meaning }) => meaning.kind === 'garment')
  return {
    things: [...new Set(found.map(([, thing = '']) => thing))],
    alone: !isNamed && Object.keys(garments).length === 0,
  }
}

/** Parts of an order that speak of garments and of what goes on them. */
const ofGarments: readonly string[] = ['garments', 'styles', 'marks', 'rows', 'tally', 'later']

/** What is left of the changes where nothing but such things was wanted: day, team and people. */
export const withoutThem = ({ alone }: Elsewhere, patches: readonly Patch[]): readonly Patch[] =>
  alone ? patches.filter(({ path: [root = ''] }) => !ofGarments.includes(root)) : patches
