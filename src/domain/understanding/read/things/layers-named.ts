import { listed } from '../../words/languages.ts'
import type { Meaning, Spot } from '../../words/word-list.ts'
import { isDrop } from '../players/drops.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { isCapital, isEnd, isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { stonesOnly } from './colour-target.ts'

export type LayerKind = 'outline' | 'stones' | 'shadow'

/** One layer as words name it: its kinds ("the stone outline" has two) and its colours, by id. */
export type LayerNamed = { readonly kinds: readonly LayerKind[]; readonly hues: readonly string[] }

/** Layers that a stretch of tokens takes off, or `keeps`, and of what. `plainly`: by a mere "no" or "without". */
export type LayersNamed = {
  readonly layers: readonly LayerNamed[]
  readonly contents: readonly ('number' | 'name' | 'text')[]
  readonly spots: readonly Spot[]
  readonly plainly: boolean
  readonly keeps: boolean
  /** Somebody who is not on the list is named behind it: "off Abel". */
  readonly ofOne: boolean
  readonly from: number
  readonly to: number
}

type Part = { readonly meaning: Meaning; readonly to: number } | { readonly meaning: null; readonly to: number }

const said = listed.leftOff
const lifting = phrasesOf(said.lifting)
const bareOf = phrasesOf(said.bareOf)
const goes = phrasesOf(said.goes)
const keeping = phrasesOf(said.keeping)
const stays = phrasesOf(said.stays)
const amid: readonly string[] = [...said.amid, ...said.lifted]

const kinds: readonly Meaning['kind'][] = [
  'outline',
  'stones',
  'shadow',
  'colour',
  'content',
  'word',
  'place',
  'stone-size',
  'around',
]
/** What may follow in the same clause and says nothing of print. */
const idle: readonly Meaning['kind'][] = ['count', 'and', 'in', 'with', 'no', 'only']
const links: readonly Meaning['kind'][] = ['in', 'both']

const isLayer = (meaning: Meaning): meaning is Extract<Meaning, { kind: LayerKind }> =>
  ['outline', 'stones', 'shadow'].includes(meaning.kind)

/** What stands at a token: a word of the trade, a small word, or (null) nothing of such a clause. */
const partAt = (tokens: readonly Token[], at: number, lexicon: Lexicon): Part | null => {
  if (phraseEnd(tokens, at, goes) !== null || phraseEnd(tokens, at, stays) !== null) return null
  const [term] = termsOf(lexicon, tokens.slice(at, at + 5))
  if (term !== undefined && term.from === 0) {
    const { meaning } = term
    if (kinds.includes(meaning.kind) || meaning.kind === 'and') return { meaning, to: at + term.to }
    if (links.includes(meaning.kind)) return { meaning: null, to: at + term.to }
  }
  return isWord(tokens[at], ...amid) ? { meaning: null, to: at + 1 } : null
}

type Run = { readonly segments: readonly (readonly Meaning[])[]; readonly to: number; readonly lifted: boolean }

/** Words of layers and of what has them, from a token on, up to an "and". */
const segmentFrom = (
  tokens: readonly Token[],
  from: number,
  lexicon: Lexicon,
): { readonly meanings: readonly Meaning[]; readonly to: number } => {
  const meanings: Meaning[] = []
  let to = from
  for (
    let part = partAt(tokens, from, lexicon);
    part !== null && part.meaning?.kind !== 'and';
    part = partAt(tokens, to, lexicon)
  ) {
    if (part.meaning !== null) meanings.push(part.meaning)
    to = part.to
  }
  return { meanings, to }
}

/** Such words with what follows behind an "and": what names another layer too, or what has it, but no bare colour. */
const runFrom = (tokens: readonly Token[], from: number, lexicon: Lexicon): Run => {
  const first = segmentFrom(tokens, from, lexicon)
  const segments = [first.meanings]
  let to = first.to
  for (let link = partAt(tokens, to, lexicon); link?.meaning?.kind === 'and'; link = partAt(tokens, to, lexicon)) {
    const next = segmentFrom(tokens, link.to, lexicon)
    if (!isOwnSegment(next.meanings)) break
    segments.push(next.meanings)
    to = next.to
  }
  return { segments, to, lifted: tokens.slice(from, to).some((token) => isWord(token, ...said.lifted)) }
}

const isOwnSegment = (meanings: readonly Meaning[]): boolean =>
  meanings.some(isLayer) || (meanings.length > 0 && meanings.every(({ kind }) => ['content', 'place', 'word'].includes(kind)))

const hueIds = (meaning: Meaning): readonly string[] => (meaning.kind === 'colour' ? (meaning.readings ?? [meaning.id]) : [])

const layerOf = (meanings: readonly Meaning[]): readonly LayerNamed[] => {
  const hues = meanings.flatMap(hueIds)
  const named = [...new Set(meanings.filter(isLayer).map(({ kind }) => kind))]
  if (named.length > 0) return [{ kinds: named, hues }]
  return hues.some((hue) => stonesOnly.includes(hue)) ? [{ kinds: ['stones'], hues }] : []
}

const namedIn = ({ segments }: Run): Pick<LayersNamed, 'layers' | 'contents' | 'spots'> => {
  const all = segments.flat()
  return {
    layers: segments.flatMap(layerOf),
    contents: all.flatMap((meaning) => {
      if (meaning.kind === 'content') return [meaning.id]
      return meaning.kind === 'word' ? ['text'] : []
    }),
    spots: all.flatMap((meaning) => (meaning.kind === 'place' ? [meaning.id] : [])),
  }
}

/** "don't remove the outline": nothing is taken off. */
const isRefused = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 2), at).some((token) => isWord(token, ...said.keeps))

type Lead = { readonly to: number; readonly needsOff: boolean; readonly plainly: boolean; readonly keeps: boolean }

const leadAt = (tokens: readonly Token[], at: number): Lead | null => {
  const token = tokens[at]
  if (token === undefined) return null
  const kept = phraseEnd(tokens, at, keeping)
  const keeps = isRefused(tokens, at)
  const lead = { needsOff: false, plainly: false, keeps }
  const lifted = phraseEnd(tokens, at, lifting) ?? (isDrop(token) ? at + 1 : null)
  if (lifted !== null) return { ...lead, to: lifted }
  if (kept !== null) return { ...lead, to: kept, keeps: !keeps }
  if (isWord(token, ...said.lifts)) return { ...lead, to: at + 1, needsOff: true }
  const bare = keeps ? null : phraseEnd(tokens, at, bareOf)
  return bare === null ? null : { ...lead, to: bare, plainly: true }
}

/** No word of the trade and no figure in what is left of the clause: "the stones we spoke of", not "the stones on the hoodies". */
const endsThere = (tokens: readonly Token[], to: number, lexicon: Lexicon): boolean => {
  const end = tokens.findIndex((token, at) => at >= to && (isEnd(token) || token.text === ',' || isWord(token, ...said.turns)))
  const left = tokens.slice(to, end < 0 ? tokens.length : end)
  const trade = termsOf(lexicon, left).some(({ meaning }) => !idle.includes(meaning.kind))
  return !trade && !left.some(isNumber)
}

/** "keep the navy one": a colour of a layer named before. */
const pronounEnd = (tokens: readonly Token[], { to, segments }: Run): number | null =>
  segments.flat().some(({ kind }) => kind === 'colour') && isWord(tokens[to], ...said.pronouns) ? to + 1 : null

/** Where a name that nobody of the list has ends behind what is taken off; else the same place. */
const pastName = (tokens: readonly Token[], to: number, lexicon: Lexicon): number => {
  let end = to
  while (isCapital(tokens[end]) && termsOf(lexicon, tokens.slice(end, end + 1)).length === 0) end += 1
  return end
}

const ledAt = (tokens: readonly Token[], at: number, lexicon: Lexicon): LayersNamed | null => {
  const lead = leadAt(tokens, at)
  if (lead === null) return null
  const run = runFrom(tokens, lead.to, lexicon)
  const named = namedIn(run)
  // "Leave the stones off" takes them off, "leave the stones" does not.
  const keeps = lead.keeps && !(run.lifted && !isRefused(tokens, at))
  const again = keeps && named.layers.length === 0 ? pronounEnd(tokens, run) : null
  if (again !== null) return { ...named, plainly: false, keeps, ofOne: false, from: at, to: again }
  if (named.layers.length === 0 || (lead.needsOff && !run.lifted) || !endsThere(tokens, run.to, lexicon)) return null
  const to = pastName(tokens, run.to, lexicon)
  return { ...named, plainly: lead.plainly, keeps, ofOne: to > run.to, from: at, to }
}

/** "The navy outline can go", "the outline is enough". */
const goneAt = (tokens: readonly Token[], at: number, lexicon: Lexicon): LayersNamed | null => {
  const before = tokens[at - 1]
  if (before !== undefined && before.kind === 'word' && !isWord(before, ...said.turns)) return null
  const run = runFrom(tokens, at, lexicon)
  const gone = phraseEnd(tokens, run.to, goes)
  const end = gone ?? phraseEnd(tokens, run.to, stays)
  const named = namedIn(run)
  return named.layers.length === 0 || end === null || !endsThere(tokens, end, lexicon)
    ? null
    : { ...named, plainly: false, keeps: gone === null, ofOne: false, from: at, to: end }
}

/** The layers that a message takes off by name: "remove the crystal outline", "take the stones off the numbers". */
export const layersNamed = (tokens: readonly Token[], lexicon: Lexicon): readonly LayersNamed[] => {
  const found: LayersNamed[] = []
  for (const at of tokens.keys()) {
    if (at < (found.at(-1)?.to ?? 0)) continue
    const one = ledAt(tokens, at, lexicon) ?? goneAt(tokens, at, lexicon)
    if (one !== null) found.push(one)
  }
  return found
}
