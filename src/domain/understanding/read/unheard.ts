import { canonical } from '../content-hash.ts'
import type { Open } from '../conversation.ts'
import type { Draft, Player } from '../draft.ts'
import { type Patch, preview } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { type Ref, refAt } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { blanked, isNumber, type Token, tokensOf } from './tokens.ts'

type Reading = { readonly patches: readonly Patch[]; readonly open: readonly Open[] }

type Clause = { readonly text: string; readonly from: number; readonly to: number }

const joint = new RegExp(`[,;!?\\n]|\\.(?= |$)| (?:${spoken.rosters.and}) |&`, 'gu')

const clausesOf = (text: string): readonly Clause[] => {
  const joints = [...text.matchAll(joint)].map((match) => ({ from: match.index, to: match.index + match[0].length }))
  const starts = [0, ...joints.map(({ to }) => to)]
  return starts
    .map((from, index) => ({ from, to: joints[index]?.from ?? text.length }))
    .map(({ from, to }) => ({ text: text.slice(from, to).trim(), from, to }))
}

/** What a clause says besides who it names: sizes and figures. */
type Telling = { readonly refs: readonly Ref[]; readonly values: readonly string[] }

const tellingOf = (tokens: readonly Token[], rows: Draft['rows']): Telling => {
  const refs: Ref[] = []
  const values: string[] = []
  let at = 0
  while (at < tokens.length) {
    const ref = refAt(tokens, at, rows)
    const size = ref === null ? sizeAt(tokens, at) : null
    const token = tokens[at]
    if (ref !== null) refs.push(ref)
    else if (size?.size !== undefined) values.push(size.size)
    else if (token !== undefined && isNumber(token) && /^\d{1,3}$/.test(token.text)) values.push(token.text)
    at = ref?.to ?? size?.to ?? at + 1
  }
  return { refs, values }
}

const known = ({ number, size }: Player): readonly (string | undefined)[] => [number, size]

/** Somebody of the list is named with a size or a figure that is theirs neither before the message nor after it. */
const tellsOfRow = ({ refs, values }: Telling, before: Draft, after: Draft): boolean => {
  const keys = refs.flatMap((ref) => ref.keys)
  const theirs = keys.flatMap((key) => [...known(before.rows[key] ?? {}), ...known(after.rows[key] ?? {})])
  return keys.length > 0 && values.some((value) => !theirs.includes(value))
}

/** A counted size is named with another size or with a figure that is no amount of it. */
const tellsOfCount = ({ values }: Telling, before: Draft, after: Draft): boolean => {
  const entries = [before, after].flatMap(({ tally }) => Object.values(tally))
  const counted = entries.filter(({ size }) => values.includes(size))
  const theirs = counted.flatMap(({ size, quantity }) => [size, String(quantity)])
  return counted.length > 0 && values.some((value) => !theirs.includes(value))
}

const said = ({ patches, open }: Reading): string => canonical([patches, open.map(({ readings }) => readings)])

/** Longer messages are lists and descriptions, whose lines are told of in their own way. */
const longest = 400
const most = 8

/**
 * The clauses of a correction that tell something of a player or a counted size of the list and were used by nothing: without them the
 * message says the same. Nothing where the message changes nothing at all, which is answered as a whole.
 */
export const unheardClauses = (text: string, before: Draft, read: (text: string) => Reading): readonly string[] => {
  if (text.length > longest || Object.keys(before.rows).length + Object.keys(before.tally).length === 0) return []
  const clauses = clausesOf(text)
  if (clauses.length < 2 || clauses.length > most) return []
  const whole = read(text)
  if (whole.patches.length + whole.open.length === 0) return []
  const after = preview(before, whole.patches)
  return clauses.flatMap((clause) => {
    const telling = tellingOf(tokensOf(clause.text), before.rows)
    if (!tellsOfRow(telling, before, after) && !tellsOfCount(telling, before, after)) return []
    return said(read(blanked(text, clause.from, clause.to))) === said(whole) ? [clause.text] : []
  })
}
