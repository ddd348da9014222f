import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { isWord, type Token, tokensOf } from '../text/tokens.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

const meaningOf = ({ entries }: Lexicon, token: Token | undefined) => {
  const meaning = entries.get(token?.key ?? '')
  return meaning?.kind === 'garment' ? meaning : null
}

/** "Shirts", "camisetas": a word for any top. */
const isAnyTop = (lexicon: Lexicon, token: Token | undefined): boolean => {
  const meaning = meaningOf(lexicon, token)
  return meaning !== null && (meaning.loose === true || meaning.unnumbered !== undefined)
}

/** The only garment that was ordered before, where it is no top that is called a shirt anyway, by its own word. */
const onlyOne = ({ draft, lexicon }: Scene): { readonly one: string; readonly several: string } | null => {
  const [wish, ...more] = Object.values(draft.garments)
  if (wish === undefined || more.length > 0 || wish.kind === 't-shirt' || wish.kind === 'jersey') return null
  const words = [...lexicon.entries].flatMap(([key, meaning]) =>
    meaning.kind === 'garment' && meaning.id === wish.kind && meaning.loose !== true && !key.includes(' ') ? [key] : [],
  )
  const one = words.find((word) => words.includes(`${word}s`))
  return one === undefined ? null : { one, several: `${one}s` }
}

/** "Names on the shirts", "en las camisetas": with an article and nothing else said of them they are the polos that were ordered. */
export const withKnownGarment = (text: string, scene: Scene): string => {
  const { lexicon } = scene
  const word = onlyOne(scene)
  const tokens = tokensOf(text)
  const others = tokens.some((token) => meaningOf(lexicon, token) !== null && !isAnyTop(lexicon, token))
  if (word === null || others) return text
  const isColour = (token: Token | undefined): boolean => lexicon.entries.get(token?.key ?? '')?.kind === 'colour'
  const places = [...tokens.keys()].filter(
    (at) => isAnyTop(lexicon, tokens[at]) && isWord(tokens[at - 1], ...listed.things.known) && !isColour(tokens[at + 1]),
  )
  return places.reduceRight((left, at) => {
    const [start, end] = [tokens[at]?.start ?? 0, tokens[at]?.end ?? 0]
    return `${left.slice(0, start)}${tokens[at]?.key.endsWith('s') === true ? word.several : word.one}${left.slice(end)}`
  }, text)
}
