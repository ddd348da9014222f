import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { hasSize } from '../sizes/sizes.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

const said = spoken.cancelling
const { hesitates } = spoken.intents

const anywhere = new RegExp(`\\b${said.anywhere}\\b`, 'g')
const alone = new RegExp(
  `(?:^|[,.;!?\\n…-])[¡¿ ]*(?:(?:${hesitates}|${said.opens})[,.!… ]+)*(${said.alone})(?=[,.;!?\\n…)]|\\s*$| ${said.ends}\\b)`,
  'g',
)
const kept = new RegExp(`\\b${said.not}(?: \\p{L}+){0,2} *$`, 'u')

/** Things of the trade that are changed or taken off by themselves, beside which nobody gives the whole order up. */
const things: readonly string[] = ['content', 'colour', 'place', 'stones', 'class', 'outline', 'shadow', 'vinyl', 'height']

type Stretch = { readonly from: number; readonly to: number }

const stretchesOf = (folded: string): readonly Stretch[] => [
  ...[...folded.matchAll(anywhere)].map(({ index, 0: words }) => ({ from: index, to: index + words.length })),
  ...[...folded.matchAll(alone)].map(({ index, 0: words, 1: own = '' }) => ({
    from: index + words.length - own.length,
    to: index + words.length,
  })),
]

/** Something else is told: of somebody on the list, of a size, of what is put on. */
const tellsMore = (text: string, draft: Draft, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(text)
  return (
    hasSize(tokens) ||
    refsIn(tokens, draft.rows).length > 0 ||
    termsOf(lexicon, tokens).some(({ meaning: { kind } }) => things.includes(kind))
  )
}

const longest = 240

/** Whether a message gives the whole order up, in whatever words: "ok cancel, too late for us", "ya no lo queremos". */
export const isCancelling = (text: string, draft: Draft, lexicon: Lexicon): boolean => {
  if (text.length > longest) return false
  const folded = fold(text)
  return stretchesOf(folded).some(
    ({ from, to }) => !kept.test(folded.slice(0, from)) && !tellsMore(blanked(text, from, to), draft, lexicon),
  )
}

const keeps = new RegExp(`^[¡¿ ]*${said.keeps}(?=[^\\p{L}]|$)`, 'u')

/** "No, keep it": what answers the question whether the order shall be cancelled with no. */
export const keepsOrder = (text: string): boolean => keeps.test(fold(text).trim())
