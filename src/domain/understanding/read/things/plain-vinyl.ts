import type { Draft, Mark } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { stated } from '../text/statements.ts'
import { anyOf, fold, isEnd, type Token, tokensOf } from '../text/tokens.ts'
import { placesAt } from './groups.ts'
import { offOf, wears, wornIn } from './worn-layers.ts'

/** `stone`: the colour of stones of which none is said. */
type Scene = { readonly draft: Draft; readonly lexicon: Lexicon; readonly stone: string }

const insteadOf = anyOf(spoken.things.vinylInstead)
const stones = { kind: 'stones', hues: [], into: null } as const

const sentences = (tokens: readonly Token[]): readonly (readonly Token[])[] => {
  const end = tokens.findIndex(isEnd)
  return end < 0 ? [tokens] : [tokens.slice(0, end), ...sentences(tokens.slice(end + 1))]
}

type Vinyl = { readonly isAt: (mark: Mark) => boolean; readonly of: 'all' | 'place' }

/** "Just plain vinyl", "vinyl instead", "puro vinil": nothing but vinyl, everywhere or at the places that are named. */
const vinylIn = (tokens: readonly Token[], lexicon: Lexicon): Vinyl | null => {
  const meanings = termsOf(lexicon, tokens).map(({ meaning }) => meaning)
  const has = (kind: string): boolean => meanings.some((one) => one.kind === kind)
  const words = fold(tokens.map(({ text }) => text).join(' '))
  const plain = meanings.some((one) => one.kind === 'class' && one.id === 'standard') || has('only') || insteadOf.test(words)
  const refused = tokens.some(({ key }) => listed.leftOff.keeps.includes(key))
  if (!has('vinyl') || !plain || has('stones') || refused) return null
  const spots = meanings.flatMap((one) => (one.kind === 'place' ? [one.id] : []))
  const isAt = ({ content, place }: Mark): boolean =>
    spots.length === 0 || (place !== undefined && spots.some((spot) => placesAt(content, spot).includes(place)))
  return { isAt, of: spots.length === 0 ? 'all' : 'place' }
}

/** What is to be of plain vinyl has no stones any more; its colour is read as ever. */
export const readPlainVinyl = (text: string, { draft, lexicon, stone }: Scene): readonly Patch[] => {
  const stoned = wornIn(draft).filter((worn) => wears(worn, stones, stone))
  if (stoned.length === 0 || text.length > 400) return []
  return sentences(stated(tokensOf(text))).flatMap((tokens) => {
    const vinyl = vinylIn(tokens, lexicon)
    if (vinyl === null) return []
    return stoned
      .filter(({ mark }) => vinyl.isAt(mark))
      .flatMap((worn) => [
        ...offOf(worn, stones, vinyl.of),
        ...(worn.mark.style?.vinyl === false ? [{ path: ['marks', worn.id, 'style', 'vinyl'], value: null }] : []),
      ])
  })
}
