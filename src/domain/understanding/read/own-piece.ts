import type { Draft, Player } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { type Clause, clausesOf, isSentenceEnd } from './clauses.ts'
import { type Lexicon, termsOf } from './lexicon.ts'
import { type Ref, refsIn } from './refs.ts'
import { blanked, fold, isCapital, isNumber, tokensOf } from './tokens.ts'

/** What is told of one player's own piece: changes, clauses that nothing here can do, and the text without either. */
export type OwnPiece = { readonly patches: readonly Patch[]; readonly unheard: readonly string[]; readonly rest: string }

const said = spoken.rowMarks
const noun = `(?:(${said.ownName})|(${said.ownNumber}))(?!\\p{L}| ?#?\\d)`
const refusing = new RegExp(`(?<!\\p{L})${said.ownOff} ${noun}`, 'u')
const offBehind = new RegExp(`(?<!\\p{L})${noun} ${said.ownOffBehind}(?!\\p{L})`, 'u')
const having = new RegExp(`(?<!\\p{L})${said.ownOn} ${noun}`, 'u')
const spokenOf = new RegExp(`(?<!\\p{L})${noun}`, 'u')
const onlyThat = new RegExp(`^${said.ownOnly} ${noun}$`, 'u')
/** "Quita el nombre de Ana": off her piece, or off the list? */
const unsure = new RegExp(`(?<!\\p{L})${said.ownUnsure}`, 'u')
const everyone = new RegExp(`(?<!\\p{L})${said.ownAll}(?!\\p{L})`, 'u')
const except = new RegExp(`(?<!\\p{L})${said.ownExcept}(?!\\p{L})`, 'u')
const marked = new RegExp(`(?:#|(?<!\\p{L})${said.ownLead}) ?$`, 'u')

type Kind = 'name' | 'number'

/** Rows that a clause names, by name or by a number that is said to be one. */
const named = (text: string, { rows }: Draft): readonly Ref[] => {
  const tokens = tokensOf(text)
  return refsIn(tokens, rows).filter((ref) => {
    const ahead = fold(text.slice(0, tokens[ref.from]?.start ?? 0))
    return ref.keys.length === 1 && (ref.by === 'name' || ahead.trim() === '' || marked.test(ahead))
  })
}

const keysIn = (text: string, draft: Draft): readonly string[] => [...new Set(named(text, draft).flatMap(({ keys }) => keys))]

/** A clause that names somebody and says nothing else: "Ana", "y el 12". */
const isBareName = (text: string, draft: Draft): boolean => {
  const tokens = tokensOf(text)
  const refs = refsIn(tokens, draft.rows)
  const others = tokens.filter((_, at) => !refs.some(({ from, to }) => at >= from && at < to))
  return refs.length > 0 && others.every(({ key }) => bareLead.test(key))
}

const bareLead = new RegExp(`^(?:#|${said.ownLead})$`, 'u')

const kindOf = (match: RegExpExecArray | null): Kind | null =>
  match === null ? null : match[1] === undefined ? 'number' : 'name'

const withKind = (row: Player | undefined, kind: Kind, off: boolean): readonly string[] => {
  const others = (row?.without ?? []).filter((one) => one !== kind)
  return off ? [...others, kind] : others
}

const patchesFor = (keys: readonly string[], draft: Draft, { kind, off }: { readonly kind: Kind; readonly off: boolean }) =>
  keys.flatMap((key): readonly Patch[] => {
    const without = withKind(draft.rows[key], kind, off)
    return [{ path: ['rows', key, 'without'], value: without.length === 0 ? null : without }]
  })

/** Clauses around one that name somebody and nothing else: "Ana y Diego sin nombre", "sin nombre el 12 y el 4". */
const together = (clauses: readonly Clause[], at: number, draft: Draft): readonly Clause[] => {
  const joined = (clause: Clause | undefined): boolean => clause !== undefined && !isSentenceEnd(clause.joint)
  let [from, to] = [at, at + 1]
  while (from > 0 && joined(clauses[from]) && isBareName(clauses[from - 1]?.text ?? '', draft)) from -= 1
  while (joined(clauses[to]) && isBareName(clauses[to]?.text ?? '', draft)) to += 1
  const next = clauses[to]
  return clauses.slice(from, next !== undefined && onlyThat.test(fold(next.text)) ? to + 1 : to)
}

/** Whom a refusal is of: those named with it, or all but those behind "except". */
const whose = (texts: readonly string[], draft: Draft): readonly string[] => {
  const keys = texts.flatMap((text) => keysIn(text, draft))
  const all = texts.some((text) => everyone.test(fold(text)))
  const apart = texts.some((text) => except.test(fold(text)))
  if (!all) return keys
  return apart && keys.length > 0 ? Object.keys(draft.rows).filter((key) => !keys.includes(key)) : []
}

type Found = { readonly patches: readonly Patch[]; readonly unheard: readonly string[]; readonly taken: readonly Clause[] }

/** "El nombre de Ana en dorado": a colour of one player's own name or number, which all others share. */
const isOwnColour = (text: string, draft: Draft, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(text)
  const terms = termsOf(lexicon, tokens)
  const coloured = terms.some(({ meaning, from }) => meaning.kind === 'colour' && !isCapital(tokens[from]))
  const things = terms.some(({ meaning }) => ['garment', 'text', 'place'].includes(meaning.kind))
  return coloured && !things && spokenOf.test(fold(text)) && keysIn(text, draft).length > 0
}

const readClause = (clauses: readonly Clause[], at: number, { draft, lexicon }: Scene): Found | null => {
  const text = clauses[at]?.text ?? ''
  const folded = fold(text)
  const off = kindOf(refusing.exec(folded) ?? offBehind.exec(folded))
  const kind = off ?? kindOf(having.exec(folded))
  const [one] = clauses.slice(at, at + 1)
  if (one !== undefined && unsure.test(folded) && keysIn(text, draft).length > 0)
    return { patches: [], unheard: [text], taken: [one] }
  if (kind !== null) {
    const taken = together(clauses, at, draft)
    const keys = whose(
      taken.map((one) => one.text),
      draft,
    )
    const owned = keys.filter((key) => off !== null || draft.rows[key]?.without?.includes(kind) === true)
    if (owned.length > 0) return { patches: patchesFor(owned, draft, { kind, off: off !== null }), unheard: [], taken }
  }
  return one !== undefined && isOwnColour(text, draft, lexicon) ? { patches: [], unheard: [text], taken: [one] } : null
}

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

/**
 * "La 12 sin nombre", "Ana y Diego sin número": what one player's piece goes without, or has again. A colour of one player's name alone is
 * said back, because it would be everybody's.
 */
export const readOwnPiece = (text: string, scene: Scene): OwnPiece => {
  if (Object.keys(scene.draft.rows).length === 0 || text.split('\n').some((line) => isList(line)))
    return { patches: [], unheard: [], rest: text }
  const clauses = clausesOf(text)
  const found = clauses.flatMap((_, at) => readClause(clauses, at, scene) ?? [])
  return {
    patches: found.flatMap(({ patches }) => patches),
    unheard: found.flatMap(({ unheard }) => unheard),
    rest: found.flatMap(({ taken }) => taken).reduce((left, { from, to }) => blanked(left, from, to), text),
  }
}

/** Long lines are descriptions, read in their own way. */
const isList = (line: string): boolean => line.length > 240 || tokensOf(line).filter(isNumber).length > 8
