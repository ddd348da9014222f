import { canonical } from '../content-hash.ts'
import type { Conversation } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { refsIn } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { fold, isNumber, tokensOf } from './tokens.ts'

const hesitates = `(?:${spoken.intents.hesitates}[,.! ]+)*`
const undo = new RegExp(`^[¡ ]*${hesitates}${spoken.clauses.undo}\\b`)
const asWas = new RegExp(`(?:^|[,.;!] *|\\b${spoken.intents.hesitates} )[¡ ]*${hesitates}${spoken.clauses.asWas}`)

/** What was so before: `undo` the last change of all, or what the lines named were before they were changed last. */
export type TakenBack = { readonly kind: 'undo' } | { readonly kind: 'lines'; readonly patches: readonly Patch[] }

const differs = (a: Draft, b: Draft, key: string): boolean => canonical(a.rows[key] ?? null) !== canonical(b.rows[key] ?? null)

/** A value that stood nowhere before and stands nowhere now: the message says something new. */
const saysMore = (text: string, drafts: readonly Draft[]): boolean => {
  const tokens = tokensOf(text)
  const rows = drafts.flatMap(({ rows: all, tally }) => [...Object.values(all), ...Object.values(tally)])
  const values: readonly string[] = rows.flatMap((row) => [
    row.size ?? '',
    'number' in row ? (row.number ?? '') : '',
    String(row.quantity ?? ''),
  ])
  return [...tokens.keys()].some((at) => {
    const said = sizeAt(tokens, at)?.size ?? (isNumber(tokens[at]) ? tokens[at]?.text : undefined)
    return said !== undefined && !values.includes(said)
  })
}

/** The lines as they were before the last change of each. */
const linesBefore = ({ draft, past }: Conversation, keys: readonly string[]): readonly Patch[] =>
  keys.flatMap((key) => {
    const was = past.findLast((one) => differs(one.draft, draft, key) && one.draft.rows[key] !== undefined)?.draft.rows[key]
    return was === undefined ? [] : [{ path: ['rows', key], value: was }]
  })

const longest = 160

/** "Undo that, his mom says he is fine", "déjalo como estaba", "leave 9 as he was": what the message takes back, and nothing else is said in it. */
export const readTakenBack = (text: string, conversation: Conversation): TakenBack | null => {
  const { draft, past } = conversation
  const folded = fold(text).trim()
  const last = past.at(-1)?.draft
  const back = undo.test(folded)
  if (last === undefined || text.length > longest || text.includes('?') || !(back || asWas.test(folded))) return null
  if (saysMore(text, [draft, last])) return null
  const keys = [...new Set(refsIn(tokensOf(text), draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : [])))]
  const touched = keys.filter((key) => differs(last, draft, key))
  if (keys.length === 0 || touched.length > 0)
    return back || keys.length > 0 || canonical(last) !== canonical(draft) ? { kind: 'undo' } : null
  const patches = linesBefore(conversation, keys)
  return patches.length === 0 ? null : { kind: 'lines', patches }
}
