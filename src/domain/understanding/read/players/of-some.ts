import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { faceWords, listed, spoken } from '../../words/languages.ts'
import { isAdd } from '../list/change.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { blanked, fold, isCapital, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { type Ref, refsIn } from '../whom/refs.ts'
import { isDrop } from './drops.ts'

/** What a message says of the print of some players; `unheard` are clauses that ask of it what only all can have. */
export type OfSome = { readonly patches: readonly Patch[]; readonly unheard: readonly string[]; readonly rest: string }

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }
type Content = 'name' | 'number'

const mostBetween = 5
const between: readonly string[] = [...listed.leftOff.between, ...listed.things.articles, ...listed.clauses.small]

/** In the words right before a thing that name whose it is: "Ida's name". */
const isOwner = (refs: readonly Ref[], at: number, content: number): boolean =>
  refs.some(({ from, to }) => at >= from && at < to && to >= content)

/** A clause with whom it names and what of theirs it speaks of. */
type Part = {
  readonly tokens: readonly Token[]
  readonly keys: readonly string[]
  readonly contents: readonly Content[]
  readonly terms: readonly Term[]
  readonly refs: readonly Ref[]
  /** Where the first of their things is spoken of. */
  readonly at: number
}

const said = listed.leftOff

/** No height, no amount, no day: what stands around a figure lets it be a player's number. */
const isPlayers = (tokens: readonly Token[], terms: readonly Term[], { from, to, by }: Ref): boolean => {
  if (by === 'name') return true
  const [before, next] = [tokens[from - 1], tokens[to]]
  if (to > from + 1 || before?.text === '#') return true
  const led = before === undefined || before.kind === 'sign' || isWord(before, ...said.whose) || faceWords.numbers.has(before.key)
  const ends = next === undefined || next.kind !== 'word' || isWord(next, ...said.theirs, ...said.refusing, ...listed.again.and)
  const made = terms.some((term) => term.from === to && term.meaning.kind === 'colour')
  return led && (ends || made) && !isNumber(next)
}

/** "number 9" is a player; "the number on 9" is what they wear. */
const labelsFigure = (tokens: readonly Token[], { to }: Term): boolean =>
  isNumber(tokens[to]) || (tokens[to]?.text === '#' && isNumber(tokens[to + 1]))

/** A colour or a make; "Green" is a name where names are told. */
const isMade = (tokens: readonly Token[], terms: readonly Term[]): boolean =>
  terms.some(({ meaning: { kind }, from }) => ['colour', 'class', 'outline', 'stones'].includes(kind) && !isCapital(tokens[from]))

const partOf = (text: string, { draft, lexicon }: Scene): Part => {
  const tokens = tokensOf(text)
  const terms = termsOf(lexicon, tokens)
  const refs = refsIn(tokens, draft.rows)
  const sure = refs.every((ref) => ref.keys.length === 1 && isPlayers(tokens, terms, ref))
  const spoken = terms.filter(
    ({ meaning, from }) => meaning.kind === 'content' && !refs.some((ref) => from >= ref.from && from < ref.to),
  )
  const worn = refs
    .flatMap(({ from, to }) => tokens.slice(from + 1, to))
    .flatMap(({ key }): readonly Content[] => {
      if (faceWords.names.has(key)) return ['name']
      return faceWords.numbers.has(key) ? ['number'] : []
    })
  const plain = spoken.flatMap((term): readonly Content[] => {
    const { meaning } = term
    const own = meaning.kind === 'content' && (meaning.id === 'name' || meaning.id === 'number') ? meaning.id : null
    return own === null || (labelsFigure(tokens, term) && !isMade(tokens, terms)) ? [] : [own]
  })
  const own = refs.find(({ from, to }) =>
    tokens.slice(from + 1, to).some(({ key }) => faceWords.names.has(key) || faceWords.numbers.has(key)),
  )
  const at = spoken[0]?.from ?? (own === undefined ? 0 : own.to - 1)
  return {
    tokens,
    terms,
    refs,
    at,
    keys: sure ? refs.flatMap(({ keys }) => keys) : [],
    contents: [...new Set([...worn, ...plain])],
  }
}

/** "Quita el nombre de Ana": off her piece, or Ana off the list? */
const unsure = new RegExp(`(?<!\\p{L})${spoken.rowMarks.unsureOff}`, 'u')

/** "No name on 12's", "skip Ida's name", "take the name off 12's": what refuses stands close before their thing, with nobody between. */
const isRefused = ({ tokens, refs, at: content }: Part): boolean =>
  !tokens.some((token) => isWord(token, ...listed.changes.swap)) &&
  tokens.some((token, at) => {
    if (isExcept(token)) return true
    if (at > content) return isWord(token, ...said.off)
    const words = tokens.slice(at + 1, content)
    const small = words.every((word, index) => isWord(word, ...between) || isOwner(refs, at + 1 + index, content))
    return at < content && words.length < mostBetween && small && (isWord(token, ...said.refusing) || isDrop(token))
  })

const speaksOfAll = ({ tokens }: Part): boolean => tokens.some((token) => isWord(token, ...listed.players.every))
const isExcept = (token: Token): boolean => isWord(token, ...listed.players.except)
const isForAll = (part: Part): boolean => speaksOfAll(part) && !part.tokens.some(isExcept)

/** "All without names except 12": it is everybody else's that stays off. */
const othersOf = (part: Part, { rows }: Draft): Part => {
  const { tokens, at, keys } = part
  const refused = tokens
    .slice(Math.max(0, at - mostBetween), at)
    .some((token) => isWord(token, ...said.refusing) || isDrop(token))
  if (!speaksOfAll(part) || !refused || !tokens.slice(at).some(isExcept)) return part
  return { ...part, keys: Object.keys(rows).filter((key) => !keys.includes(key)) }
}

const isPlural = ({ tokens }: Part): boolean =>
  tokens.some(({ key }) => key.endsWith('s') && (faceWords.names.has(key) || faceWords.numbers.has(key)))

const isWornByAll = ({ marks }: Draft, content: Content): boolean =>
  Object.values(marks).some((mark) => mark.content === content && mark.wanted !== false)

const without = (draft: Draft, part: Part): readonly Patch[] =>
  part.keys.flatMap((key): readonly Patch[] => {
    const had = draft.rows[key]?.without ?? []
    const worn = part.contents.filter((content) => isWornByAll(draft, content))
    return worn.length === 0 ? [] : [{ path: ['rows', key, 'without'], value: [...new Set([...had, ...worn])] }]
  })

/** "put the name back on 12". */
const again = (draft: Draft, part: Part): readonly Patch[] =>
  part.keys.flatMap((key): readonly Patch[] => {
    const had = draft.rows[key]?.without ?? []
    const left = had.filter((one) => !part.contents.some((content) => content === one))
    return left.length === had.length ? [] : [{ path: ['rows', key, 'without'], value: left.length === 0 ? null : left }]
  })

/** A comma before a figure goes on: "on 9, 12 and 4". */
const clause = /(?:[^,.;!?\n]|,(?= ?#?\d))+/g

const ofPart = (text: string, scene: Scene): { readonly patches: readonly Patch[]; readonly unheard: boolean } => {
  const part = partOf(text, scene)
  const none = { patches: [], unheard: false }
  const all = Object.keys(scene.draft.rows).length
  const ofName = part.tokens.some((token) => isWord(token, ...said.ofName, ...listed.told.surname))
  if (ofName || part.keys.length === 0 || part.contents.length === 0 || part.keys.length === all || isForAll(part)) return none
  if (isMade(part.tokens, part.terms)) return { patches: [], unheard: !isPlural(part) && !isRefused(part) }
  if (unsure.test(fold(text))) return { patches: [], unheard: true }
  if (isRefused(part)) return { patches: without(scene.draft, othersOf(part, scene.draft)), unheard: false }
  return part.tokens.some(isAdd) || part.tokens.some((token) => isWord(token, ...said.restoring))
    ? { ...none, patches: again(scene.draft, part) }
    : none
}

/**
 * The print of some players of a list: a name or number taken off theirs ("9 and 12 without names") is theirs alone, and another colour of
 * one player's ("12's name in gold") is nobody else's, so that it is said back instead. `rest` is the text without these clauses.
 */
export const readOfSome = (text: string, scene: Scene): OfSome => {
  if (Object.keys(scene.draft.rows).length < 2 || text.length > 600) return { patches: [], unheard: [], rest: text }
  return [...text.matchAll(clause)].reduce<OfSome>(
    (found, { 0: words, index }) => {
      const { patches, unheard } = ofPart(words, scene)
      if (patches.length === 0 && !unheard) return found
      return {
        patches: [...found.patches, ...patches],
        unheard: unheard ? [...found.unheard, words.trim()] : found.unheard,
        rest: blanked(found.rest, index, index + words.length),
      }
    },
    { patches: [], unheard: [], rest: text },
  )
}
