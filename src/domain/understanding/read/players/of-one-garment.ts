import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { addPlayers } from '../list/table.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { isCapital, isWord, paused, type Token } from '../text/tokens.ts'
import { rowsByName } from '../whom/refs.ts'
import { groupsIn } from '../whom/whom.ts'

type Role = 'home' | 'away'
type Fields = Pick<Player, 'size' | 'fit' | 'number' | 'name'>

/** What is told of somebody's piece for home or away. */
type Wish = { readonly role: Role; readonly keys: readonly string[]; readonly fields: Fields }

type Given = Scene & { readonly lexicon: Lexicon; readonly read: (tokens: readonly Token[]) => Change }

type Clause = Stretch & {
  readonly keys: readonly string[]
  readonly roles: readonly Placed<Role>[]
  readonly sizes: readonly Placed<SizeFound>[]
}
type Placed<Value> = { readonly value: Value; readonly at: number }

const parts: readonly string[] = [',', '/', ';', '(', ')', ':']

const clausesIn = (tokens: readonly Token[], { from, to }: Stretch): readonly Stretch[] => {
  const ends = Array.from({ length: to - from }, (_, step) => from + step).filter(
    (at) => parts.includes(tokens[at]?.text ?? '') || isWord(tokens[at], ...listed.again.and),
  )
  return [from, ...ends.map((at) => at + 1)]
    .map((start, index) => ({ from: start, to: ends[index] ?? to }))
    .filter((one) => one.to > one.from)
}

const sizesIn = (tokens: readonly Token[], { from, to }: Stretch): readonly Placed<SizeFound>[] => {
  const found: Placed<SizeFound>[] = []
  for (let at = from; at < to; ) {
    const size = sizeAt(tokens, at)
    if (size?.size !== undefined) found.push({ value: size, at })
    at = size?.to ?? at + 1
  }
  return found
}

const within = ({ from }: Term, clause: Stretch): boolean => from >= clause.from && from < clause.to

const keysIn = (tokens: readonly Token[], { from, to }: Stretch, draft: Draft): readonly string[] =>
  groupsIn(tokens.slice(from, to), draft).flatMap(({ refs }) => refs.flatMap(({ keys }) => keys))

/** A clause with whom, which piece and which sizes it names; null where it speaks of how things are made. */
const clauseOf = (tokens: readonly Token[], stretch: Stretch, { draft, lexicon }: Given): Clause | null => {
  const terms = termsOf(lexicon, tokens).filter((term) => within(term, stretch))
  const made = terms.some(({ meaning }) => ['colour', 'place', 'outline', 'stones', 'class'].includes(meaning.kind))
  const roles = terms.flatMap(({ meaning, from }) => (meaning.kind === 'role' ? [{ value: meaning.id, at: from }] : []))
  return made ? null : { ...stretch, keys: keysIn(tokens, stretch, draft), roles, sizes: sizesIn(tokens, stretch) }
}

const fieldsOf = ({ size, fit }: SizeFound): Fields => ({
  ...(size === undefined ? {} : { size }),
  ...(fit === undefined ? {} : { fit }),
})

/** "Ruiz wears 8 on the away": what is told of rows when the piece is left out of the words. */
const otherwise = (tokens: readonly Token[], clause: Clause, { read }: Given): readonly Wish[] => {
  const own = tokens.map((token, at) =>
    at < clause.from || at >= clause.to || clause.roles.some((one) => one.at === at) ? paused(token) : token,
  )
  return clause.roles.flatMap(({ value: role }) => wishesFor(role, read(own).patches))
}

const wishesFor = (role: Role, patches: readonly Patch[]): readonly Wish[] =>
  patches.flatMap(({ path: [root, key, field], value }): readonly Wish[] =>
    root === 'rows' && key !== undefined && field !== undefined && value !== null
      ? [{ role, keys: [key], fields: { [field]: value } }]
      : [],
  )

const wishesIn = (tokens: readonly Token[], clause: Clause, given: Given): readonly Wish[] => {
  const { roles, sizes, keys } = clause
  if (roles.length === 0) return []
  if (roles.length === sizes.length)
    return sizes.flatMap(({ value }, index): readonly Wish[] => {
      const piece = roles[index]
      return piece === undefined ? [] : [{ role: piece.value, keys, fields: fieldsOf(value) }]
    })
  return roles.length === 1 && sizes.length === 0 ? otherwise(tokens, clause, given) : []
}

/** Of two lines of one player the one of that piece. */
const isOf = (row: Player | undefined, role: Role): boolean =>
  row !== undefined && (row.garment === undefined || row.garment === role)

/** A line with what is told of one of its pieces. */
const lineOf = (wishes: readonly Wish[], role: Role, [key, row]: readonly [string, Player]): Player => {
  const told = wishes.filter((wish) => wish.role === role && wish.keys.includes(key) && isOf(row, role))
  return Object.assign({}, row, ...told.map(({ fields }) => fields))
}

/** The lines with what is told of each piece: a line for both becomes one for each where they differ. */
const patchesOf = (wishes: readonly Wish[], draft: Draft): readonly Patch[] => {
  const fresh: Player[] = []
  const patches: Patch[] = []
  for (const key of new Set(wishes.flatMap(({ keys }) => keys))) {
    const row = draft.rows[key]
    if (row === undefined) continue
    const [home, away] = [lineOf(wishes, 'home', [key, row]), lineOf(wishes, 'away', [key, row])]
    if (row.garment !== undefined) patches.push({ path: ['rows', key], value: row.garment === 'home' ? home : away })
    else if (JSON.stringify(home) === JSON.stringify(away)) patches.push({ path: ['rows', key], value: home })
    else {
      patches.push({ path: ['rows', key], value: { ...home, garment: 'home' } })
      fresh.push({ ...away, garment: 'away' })
    }
  }
  return [...patches, ...addPlayers(draft.rows, fresh)]
}

/** "Yoders away": the piece of somebody whose 's is written together. */
const withOwners = (tokens: readonly Token[], { draft, lexicon }: Given): readonly Token[] => {
  const roles = new Set(termsOf(lexicon, tokens).flatMap(({ meaning, from }) => (meaning.kind === 'role' ? [from] : [])))
  return tokens.map((token, at) => {
    const owner = token.text.replace(/s$/, '')
    const owns = roles.has(at + 1) && isCapital(token) && owner !== token.text && rowsByName(draft.rows, token.text).length === 0
    return owns && rowsByName(draft.rows, owner).length > 0 ? { ...token, text: owner, key: token.key.slice(0, -1) } : token
  })
}

const wornTwice = ({ garments }: Draft): boolean => garments['home'] !== undefined && garments['away'] !== undefined

/** Changes of lines that a clause tells of one piece only, where it names home or away. */
export const ofItsPiece = (patches: readonly Patch[], terms: readonly Term[], draft: Draft): readonly Patch[] => {
  const roles = new Set(terms.flatMap(({ meaning }) => (meaning.kind === 'role' ? [meaning.id] : [])))
  const [role, ...more] = roles
  const own = role === undefined || more.length > 0 || !wornTwice(draft) ? [] : wishesFor(role, patches)
  return own.length < patches.length || own.length === 0 ? patches : patchesOf(own, draft)
}

/**
 * What is told of somebody's piece for home or for away and not of both: "Yoder's away is M, home stays S", "12 home L away XL", "Ruiz
 * wears 8 on the away". A sentence that names one of the two pieces never changes the other.
 */
export const readOfOneGarment = (said: readonly Token[], given: Given): Change => {
  const { draft } = given
  if (!wornTwice(draft) || Object.keys(draft.rows).length === 0) return nothing
  const tokens = withOwners(said, given)
  const found = sentencesOf(tokens).flatMap((sentence) => inSentence(tokens, sentence, given))
  const patches = patchesOf(
    found.flatMap(({ wishes }) => wishes),
    draft,
  )
  const taken = found.flatMap(({ clause }) => [...span(clause.from, clause.to)])
  return patches.length === 0 ? nothing : { patches, open: [], taken: new Set(taken) }
}

type Found = { readonly clause: Clause; readonly wishes: readonly Wish[] }

/** The clauses of a sentence that tell of one piece; a clause that names nobody is of all whom the sentence names. */
const inSentence = (tokens: readonly Token[], sentence: Stretch, given: Given): readonly Found[] => {
  const clauses = clausesIn(tokens, sentence).flatMap((stretch) => clauseOf(tokens, stretch, given) ?? [])
  const named = clauses.flatMap(({ keys }) => keys)
  return clauses
    .map((clause) => ({ ...clause, keys: clause.keys.length > 0 ? clause.keys : named }))
    .map((clause) => ({ clause, wishes: wishesIn(tokens, clause, given) }))
    .filter(({ wishes }) => wishes.length > 0)
}
