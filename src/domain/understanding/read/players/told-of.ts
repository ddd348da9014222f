import type { Draft } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { type Change, isAdd, joined, nothing, type Scene } from '../list/change.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { sentencesOf } from '../text/statements.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'
import { type Group, groupsIn } from '../whom/whom.ts'
import { isDrop } from './drops.ts'
import type { Told } from './told.ts'
import { nameTold } from './told-name.ts'
import { numberTold } from './told-number.ts'
import { sizeTold } from './told-size.ts'

const clitic = new RegExp(`^${spoken.again.clitic}$`, 'u')

const speaksOfThem = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => isWord(token, ...listed.told.spoken) || clitic.test(token.key))

/** "Put Ida on the list", "agrega el 10"; not "put M down for Josiah" or "put 4 and 9 in XL". */
const putsOn = (tokens: readonly Token[], at: number, { rows }: Draft): boolean => {
  const next = tokens[at + 1]
  const fresh = isCapital(next) || (isNumber(next) && rowsByNumber(rows, next?.text ?? '').length === 0)
  return isAdd(tokens[at]) && fresh && sizeAt(tokens, at + 1) === null
}

/** What is known where changes of a roster are heard; `trade`: the places of words that speak of cloth and print. */
export type Heard = Scene & { readonly trade: ReadonlySet<number> }

/** Sentences that put somebody on the list or off it, or speak of cloth and print, are read elsewhere. */
const isElsewhere = (tokens: readonly Token[], { trade, draft }: Heard, from: number): boolean =>
  tokens.some((token, at) => trade.has(from + at) || putsOn(tokens, at, draft) || isDrop(token))

const moved = (change: Change, by: number): Change => ({ ...change, taken: new Set([...change.taken].map((at) => at + by)) })

const readSentence = (told: Told): Change => {
  const name = nameTold(told)
  return name.taken.size > 0 ? name : joined([sizeTold(told), numberTold(told)])
}

/** Whom a sentence speaks of: those it names, and where it names nobody, "him" or "lo" is whoever the one before spoke of. */
const groupOf = (tokens: readonly Token[], scene: Scene, last: Group | null): Group | null => {
  const [own, ...others] = groupsIn(tokens, scene.draft)
  if (others.length > 0) return null
  if (own !== undefined) return own
  return last !== null && speaksOfThem(tokens) ? { ...last, places: [] } : null
}

/** The only one of the list is "him" or "lo" without being named. */
const onlyOne = ({ draft }: Scene): Group | null => {
  const [key, ...more] = Object.keys(draft.rows)
  return key === undefined || more.length > 0 ? null : { refs: [{ keys: [key], from: 0, to: 0, by: 'name' }], places: [] }
}

/** "Ay perdón, es talla G": a short sentence of a size that names nobody. */
const tellsSizeAlone = (tokens: readonly Token[], { draft }: Scene): boolean => {
  const words = tokens.filter(({ kind }) => kind === 'word')
  const sized = tokens.filter((_, at) => sizeAt(tokens, at)?.size !== undefined)
  const stranger = tokens.some((token, at) => {
    const spoken = isWord(token, ...listed.told.alone) || sizeAt(tokens, at) !== null || isWord(token, ...listed.again.small)
    return (isCapital(token) && !spoken) || (isNumber(token) && sizeAt(tokens, at) === null)
  })
  const led = words.some((token) => isWord(token, ...listed.told.alone))
  const other = words.some((token) => isWord(token, ...listed.told.anotherOne))
  return sized.length > 0 && led && !stranger && !other && words.length <= 9 && Object.keys(draft.tally).length === 0
}

/**
 * What a sentence tells of whom it names, in any words: one size, number or name that is not theirs yet. Nothing where two of the list are
 * spoken of apart, or two values could be meant.
 */
export const readToldOf = (tokens: readonly Token[], scene: Heard): Change => {
  const found: Change[] = []
  const only = onlyOne(scene)
  let last: Group | null = only
  for (const { from, to } of sentencesOf(tokens)) {
    const sentence = tokens.slice(from, to)
    last = groupOf(sentence, scene, last)
    if (isElsewhere(sentence, scene, from)) continue
    if (last === null && only !== null && tellsSizeAlone(sentence, scene))
      found.push(moved(sizeTold({ tokens: sentence, group: only, scene }), from))
    if (last === null) continue
    found.push(moved(readSentence({ tokens: sentence, group: last, scene }), from))
  }
  return found.length === 0 ? nothing : joined(found)
}

/** "del 9 al 12 son L": a size told of everybody from one number to another, before their figures are taken for anything else. */
export const readRanges = (tokens: readonly Token[], scene: Heard): Change => {
  const found = sentencesOf(tokens).flatMap(({ from, to }) => {
    const sentence = tokens.slice(from, to)
    const group = groupOf(sentence, scene, null)
    const heard = group?.range === true && !isElsewhere(sentence, scene, from)
    return heard ? [moved(sizeTold({ tokens: sentence, group, scene }), from)] : []
  })
  return found.length === 0 ? nothing : joined(found)
}
