import { type PlaceId, placeIds } from '../../../garment/place.ts'
import type { Draft, Mark } from '../../draft.ts'
import { languages, listed } from '../../words/languages.ts'
import type { Spot } from '../../words/word-list.ts'
import type { Term } from '../text/lexicon.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { fold, isWord, type Token } from '../text/tokens.ts'
import { placesAt } from './groups.ts'
import type { Move } from './moves.ts'

type Side = 'left' | 'right'
const other: Readonly<Record<Side, Side>> = { left: 'right', right: 'left' }

const every = Object.values(languages)
const sideWords: Readonly<Record<Side, readonly string[]>> = {
  left: every.flatMap(({ sides }) => sides.left),
  right: every.flatMap(({ sides }) => sides.right),
}

const sideOf = (token: Token | undefined): Side | null =>
  isWord(token, ...sideWords.left) ? 'left' : isWord(token, ...sideWords.right) ? 'right' : null

/** "left-sleeve" is the left one of two sleeves. */
const sidedOf = (place: string): { readonly side: Side; readonly part: string } | null => {
  const [side, part, ...more] = place.split('-')
  return (side === 'left' || side === 'right') && part !== undefined && more.length === 0 ? { side, part } : null
}

/** What has two sides, by the words that stand beside "left" and "right": "manga" and "sleeve" of "left-sleeve". */
const parts: ReadonlyMap<string, string> = new Map(
  every.flatMap(({ list }) =>
    list.flatMap(({ means, words }) => {
      const part = means.kind === 'place' ? sidedOf(means.id)?.part : undefined
      return words.flatMap((phrase) => {
        const own = phrase.split(' ').filter((word) => ![...sideWords.left, ...sideWords.right].includes(fold(word)))
        return part !== undefined && own.length === 1 && phrase.includes(' ') ? [[fold(own[0] ?? ''), part] as const] : []
      })
    }),
  ),
)

/** A place that is spoken of: a spot, or a side of something that is named beside it; `refused`: "not the right". */
type Mention = Stretch & { readonly spot: Spot | null; readonly side: Side | null; readonly refused: boolean }

const small: readonly string[] = [...listed.changes.the, ...listed.told.carrying, ...listed.things.small, ...listed.things.past]

const isRefused = (tokens: readonly Token[], from: number): boolean => {
  let at = from - 1
  while (at >= 0 && (isWord(tokens[at], ...small) || parts.has(tokens[at]?.key ?? ''))) at -= 1
  return isWord(tokens[at], ...listed.anew.not, ...listed.again.refusing) && !isWord(tokens[at], ...listed.things.past)
}

/** A side alone is one where an article, "side" or "one" says so: "la izquierda", "the left one"; not "that's right". */
const isSideAlone = (tokens: readonly Token[], at: number): boolean =>
  sideOf(tokens[at]) !== null &&
  (isWord(tokens[at - 1], ...listed.changes.the, ...listed.things.sideNoun, ...listed.told.carrying, ...listed.changes.not) ||
    isWord(tokens[at + 1], ...listed.things.sideNoun))

const mentionsIn = (tokens: readonly Token[], terms: readonly Term[]): readonly Mention[] =>
  [...tokens.keys()].flatMap((at): readonly Mention[] => {
    const term = terms.find((one) => one.meaning.kind === 'place' && one.from <= at && one.to > at)
    const refused = isRefused(tokens, at)
    if (term?.meaning.kind === 'place') {
      const isPartAlone = term.to === term.from + 1 && parts.has(tokens[at]?.key ?? '')
      return term.from === at && !isPartAlone ? [{ from: at, to: term.to, spot: term.meaning.id, side: null, refused }] : []
    }
    return isSideAlone(tokens, at) ? [{ from: at, to: at + 1, spot: null, side: sideOf(tokens[at]), refused }] : []
  })

const isPlaceId = (id: string): id is PlaceId => placeIds.some((one) => one === id)

const partOf = (place: string): string | undefined => sidedOf(place)?.part

/** The places that a mention means of a thing that stands somewhere; a side alone is that of what is named beside it, or of what has it. */
const meantBy = ({ spot, side }: Mention, mark: Mark, part: string | null): readonly PlaceId[] => {
  if (spot !== null) return placesAt(mark.content, spot)
  const id = `${side}-${part ?? partOf(mark.place ?? '') ?? ''}`
  return isPlaceId(id) ? [id] : []
}

const opposite = (place: PlaceId): string => {
  const sided = sidedOf(place)
  return sided === null ? place : `${other[sided.side]}-${sided.part}`
}

type Said = {
  readonly wanted: Mention
  readonly refused: readonly Mention[]
  readonly part: string | null
  /** It is said that something was a mistake, or of which side the sleeve is. */
  readonly corrects: boolean
  readonly shifts: boolean
  readonly content: string | null
}

/** "Switch the right sleeve to the left", "cambia la manga derecha por la izquierda": the second place takes over from the first. */
const isTurned = (tokens: readonly Token[], { from }: Mention): boolean =>
  tokens.some((token) => isWord(token, ...listed.things.shifting)) &&
  tokens.slice(Math.max(0, from - 3), from).some((token) => isWord(token, ...listed.told.rangeTo, ...listed.things.into))

/** What one sentence says of places; null where it wants none or several. */
const saidIn = (tokens: readonly Token[], terms: readonly Term[]): Said | null => {
  const mentions = mentionsIn(tokens, terms)
  const [first, second, ...more] = mentions
  const two = first !== undefined && second !== undefined && more.length === 0 && !mentions.some((one) => one.refused)
  const turned = two && isTurned(tokens, second)
  const all = turned ? [{ ...first, refused: true }, second] : mentions
  const [wanted, ...others] = all.filter(({ refused }) => !refused)
  if (wanted === undefined || others.length > 0) return null
  const alone = [...tokens.keys()].filter((at) => mentions.every(({ from, to }) => at < from || at >= to))
  const [part = null, ...rest] = new Set(alone.flatMap((at) => parts.get(tokens[at]?.key ?? '') ?? []))
  const content = terms.find(({ meaning }) => meaning.kind === 'content')?.meaning
  return {
    wanted,
    refused: all.filter(({ refused }) => refused),
    part: rest.length > 0 ? null : part,
    corrects: tokens.some((token) => isWord(token, ...listed.things.mistaken)) || (wanted.spot === null && part !== null),
    shifts: tokens.some((token) => isWord(token, ...listed.things.shifting)),
    content: content?.kind === 'content' ? content.id : null,
  }
}

type Placed = { readonly id: string; readonly mark: Mark; readonly to: PlaceId }

/** The things that stand where it was said not to be, on the other side, or where they are taken from ("move the sleeve number to …"). */
const wronglyPlaced = ({ wanted, refused, part, ...said }: Said, { marks }: Draft): readonly Placed[] =>
  Object.entries(marks).flatMap(([id, mark]) => {
    if (mark.wanted === false || mark.place === undefined || (said.content !== null && mark.content !== said.content)) return []
    const [to, ...others] = meantBy(wanted, mark, part)
    if (to === undefined || others.length > 0 || to === mark.place) return []
    const own = part ?? partOf(wanted.spot ?? '') ?? null
    const isThere = refused.some((one) => meantBy(one, mark, own).includes(mark.place ?? 'other'))
    const isOpposite = refused.length === 0 && said.corrects && opposite(to) === mark.place
    const isOfPart = said.shifts && part !== null && partOf(mark.place) === part && partOf(to) !== part
    return isThere || isOpposite || isOfPart ? [{ id, mark, to }] : []
  })

/** Such a thing stands already where it is to go. */
const hasAlready = ({ marks }: Draft, { to, mark }: Placed): boolean =>
  marks[to] !== undefined && marks[to].wanted !== false && marks[to].content === mark.content

/** Whether anything but places is said. */
const isMixed = (terms: readonly Term[]): boolean =>
  terms.some(({ meaning }) => ['colour', 'unit', 'class', 'garment'].includes(meaning.kind))

/** "Stones on the front, not the back": where a part of the make goes is another matter. */
const isOfMake = (terms: readonly Term[]): boolean =>
  terms.some(({ meaning }) => ['stones', 'stone-size', 'outline', 'shadow'].includes(meaning.kind))

/**
 * "Perdón, la manga es la izquierda, no la derecha", "the name goes above the number, not below": a thing that stands at the place that
 * is refused, or on the other side, goes where it was meant with all that was said of it.
 */
export const readPlaceCorrected = (tokens: readonly Token[], terms: readonly Term[], draft: Draft): Move => {
  for (const { from, to } of sentencesOf(tokens)) {
    const own = terms.filter((term) => term.from >= from && term.to <= to)
    const local = own.map((term) => ({ ...term, from: term.from - from, to: term.to - from }))
    const said = isOfMake(own) ? null : saidIn(tokens.slice(from, to), local)
    const [only, ...more] = said === null ? [] : wronglyPlaced(said, draft)
    if (said === null || only === undefined || more.length > 0) continue
    const places = [said.wanted, ...said.refused]
    const isThere = hasAlready(draft, only)
    // "The back ones 20 cm, not the front ones": both stand there, and one is changed.
    if (isThere && isMixed(own)) continue
    const taken = isMixed(own)
      ? { from: Math.min(...places.map((one) => one.from)), to: Math.max(...places.map((one) => one.to)) }
      : { from: 0, to: to - from }
    return {
      patches: [
        { path: ['marks', only.id], value: null },
        ...(isThere ? [] : [{ path: ['marks', only.to], value: { ...only.mark, place: only.to } }]),
      ],
      taken: new Set(Array.from({ length: taken.to - taken.from }, (_, step) => from + taken.from + step)),
    }
  }
  return { patches: [], taken: new Set() }
}
