import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { type Token, tokensOf } from '../text/tokens.ts'
import { itemsOf } from './items.ts'

type Cut = { readonly from: number; readonly to: number; readonly words: string }

const isAbove = ({ meaning }: Term): boolean => meaning.kind === 'place' && meaning.id === 'above'
const isPlace = ({ meaning }: Term): boolean => meaning.kind === 'place' && meaning.id !== 'above' && meaning.id !== 'below'

/** "Above the front number": it is on the front. */
const ofPlace = (above: Term, place: Term, number: Term | undefined): boolean =>
  place.from >= above.to && place.from <= above.to + 1 && number?.from === place.to

/** "PANTHERS on the front above the number": what is to be written has its place, and stands above what is there. */
const cutIn = (text: string, terms: readonly Term[], tokens: readonly Token[]): Cut | null => {
  const above = terms.find(isAbove)
  const place = terms.find(isPlace)
  const named = terms.some(({ meaning }) => meaning.kind === 'content' && meaning.id === 'name')
  const items = itemsOf({ text, tokens, terms, shouted: false })
  if (above === undefined || place === undefined || named || !items.some(({ kind }) => kind === 'text')) return null
  const number = terms.find(({ meaning, from }) => meaning.kind === 'content' && meaning.id === 'number' && from === place.to)
  const [from, to] = [tokens[above.from]?.start ?? 0, tokens[above.to - 1]?.end ?? 0]
  if (!ofPlace(above, place, number)) return { from, to, words: '' }
  return {
    from,
    to: tokens[(number?.to ?? 0) - 1]?.end ?? to,
    words: text.slice(tokens[place.from]?.start, tokens[place.to - 1]?.end),
  }
}

/** "…, above the number": a clause of its own right behind that of the text. */
const joined = /[^.;!?\n]+/g

const sentence = (words: string, lexicon: Lexicon): string => {
  if (!termsOf(lexicon, tokensOf(words)).some(isAbove)) return words
  const parts = words.split(',')
  const whole = parts.flatMap((part, at) => {
    const next = parts[at + 1]
    const alone = (one: string | undefined): boolean => one !== undefined && isAlone(one, lexicon)
    if (alone(part) && at > 0) return []
    return [alone(next) ? `${part} ${next}` : part]
  })
  return whole
    .map((part) => {
      const tokens = tokensOf(part)
      const cut = cutIn(part, termsOf(lexicon, tokens), tokens)
      return cut === null ? part : `${part.slice(0, cut.from)}${cut.words}${part.slice(cut.to)}`
    })
    .join(',')
}

const isAlone = (part: string, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(part)
  const terms = termsOf(lexicon, tokens)
  return terms.length === 1 && terms.some((term) => isAbove(term) && term.from === 0 && term.to === tokens.length)
}

/** A text above the number of the front is on the front, and nowhere else. */
export const withoutAboveBeside = (text: string, lexicon: Lexicon): string =>
  text.replace(joined, (words) => sentence(words, lexicon))
