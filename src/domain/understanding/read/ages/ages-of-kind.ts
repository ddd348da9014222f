import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { hasSize } from '../sizes/sizes.ts'
import { blanked, fold, tokensOf } from '../text/tokens.ts'
import { classOf } from './age-answer.ts'

const said = spoken.ages

/** Children of one team are seldom further apart; numbers of a list are: "girls 2-14". */
const furthest = { led: 9, bare: 4 }
const eldest = 19

/** "Chavos de 13 a 15", "kids 8-10": children, and two years that end the clause. */
const told = new RegExp(
  `(?<!\\w)${said.youngsters},?(${said.youngOnes})? ?(\\d{1,2}) ?(?:-|–|${said.to}) ?(\\d{1,2})(?: (?:${said.years}))?(?= *(?:[.,;!\\n]|$))`,
  'g',
)

const between = (low: number, high: number): string => (classOf(low) === classOf(high) ? classOf(low) : 'mixed')

/** Years of the children of a team as they are told unasked; `rest` is the text without them, for they are no numbers of the list. */
export const readAgesOfKind = (text: string): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const [found] = fold(text).matchAll(told)
  if (found === undefined) return { patches: [], rest: text }
  // "The YS kids are 6 and 7" is of a size.
  const start = Math.max(...['.', '!', '?', '\n', ';'].map((sign) => text.lastIndexOf(sign, found.index)))
  if (hasSize(tokensOf(text.slice(start + 1, found.index)))) return { patches: [], rest: text }
  const [low, high] = [Number(found[2]), Number(found[3])]
  const most = found[1] === undefined ? furthest.bare : furthest.led
  if (low >= high || high > eldest || high - low > most) return { patches: [], rest: text }
  const rest = blanked(text, found.index, found.index + found[0].length)
  return { patches: [{ path: ['ages'], value: between(low, high) }], rest }
}
