import { canonical } from '../../content-hash.ts'
import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { blanked, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { choose } from './drop-rows.ts'

export type TwiceListed = { readonly patches: readonly Patch[]; readonly open: readonly Open[]; readonly rest: string }

const said = spoken.rowMarks
const repeated = new RegExp(`(?<!\\p{L})${said.listedTwice}(?!\\p{L})`, 'u')
const single = new RegExp(`(?<!\\p{L})${said.listedOnce}(?!\\p{L})`, 'u')
const meant = new RegExp(`(?<!\\p{L})${said.twiceMeant}(?!\\p{L})`, 'u')

/** Lines of one name or number that a sentence names. */
const alike = (text: string, { rows }: Draft): readonly string[] =>
  refsIn(tokensOf(text), rows).find(({ keys }) => keys.length > 1)?.keys ?? []

/** "Puse dos veces al Monsiváis, es uno nomás": of lines that are quite alike one stays; of others it is asked which is too many. */
export const readTwiceListed = (text: string, draft: Draft): TwiceListed => {
  const none = { patches: [], open: [], rest: text }
  const folded = fold(text)
  if (
    text.length > 160 ||
    /\?/.test(text) ||
    meant.test(folded) ||
    !repeated.test(folded) ||
    !(single.test(folded) || sure.test(folded))
  )
    return none
  const [first, ...others] = alike(text, draft)
  if (first === undefined) return none
  const same = others.every((key) => canonical(draft.rows[key] ?? null) === canonical(draft.rows[first] ?? null))
  const rest = blanked(text, 0, text.length)
  if (!same) return { patches: [], open: [choose([first, ...others], { draft, quote: text.trim().slice(0, 80) })], rest }
  return { patches: others.map((key): Patch => ({ path: ['rows', key], value: null })), open: [], rest }
}

/** Words that say by themselves that it was a mistake: "repetido", "twice by mistake". */
const sure = new RegExp(`(?<!\\p{L})${said.listedByMistake}(?!\\p{L})`, 'u')
