import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { isEnd, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'

const said = listed.parts
const refusals = phrasesOf(said.refusedBehind)
const idle = phrasesOf(said.refusedIdly)

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }
type Refused = { readonly text: string; readonly tokens: readonly Token[]; readonly numbered: boolean }
type Told = { readonly text: string; readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly draft: Draft }
type Found = { readonly from: number; readonly to: number; readonly words: string }

const isPause = (token: Token | undefined): boolean => token === undefined || token.text === ',' || isEnd(token)

const isEndBefore = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens[at - 1]
  return before !== undefined && isEnd(before)
}

const small = (token: Token | undefined): boolean => isWord(token, ...said.ones, ...said.refusedLead)

/** The place at a token, or the side that is one beside a number; where it ends. */
const placeAt = (terms: readonly Term[], at: number): Term | null =>
  terms.find(({ from, meaning }) => from === at && meaning.kind === 'place') ?? null

/** Behind the place small words at most, perhaps a pause, and the refusal that ends the clause. */
const refusedTo = (tokens: readonly Token[], from: number, opens: boolean): number | null => {
  let at = from
  while (small(tokens[at])) at += 1
  if (tokens[at]?.text === ',') at += 1
  const to = phraseEnd(tokens.map(withoutStop), at, refusals)
  // "Make the back ones 20 cm, the front ones no" spares them and takes nothing off.
  if (to === at + 1 && !opens) return null
  return to !== null && (isPause(tokens[to]) || tokens[to - 1]?.text.endsWith('.') === true) ? to : null
}

/** "siempre no. Mejor …": a full stop that looks like that of "no." for a number. */
const withoutStop = (token: Token): Token => ({ ...token, key: token.key.replace(/\.$/, '') })

/** A number stands on that side, and what else is there stays. */
const isNumbered = ({ meaning }: Term, { marks }: Draft): boolean => {
  const mark = meaning.kind === 'place' ? marks[`${meaning.id}-number`] : undefined
  return mark !== undefined && mark.wanted !== false
}

/** Words that refuse what is on a place, before the place as it is said: "nada en la espalda", "nothing on the front". */
const refusing = ({ text, tokens, numbered }: Refused, { from, to }: Term): string => {
  const words = text.slice(tokens[from]?.start, tokens[to - 1]?.end)
  const [plain = '', inside = '', on = ''] = numbered ? said.noNumberThere : said.nothingThere
  if (isWord(tokens[from], ...said.sideWords)) return `${plain} ${words}`
  return isWord(tokens[from - 1], ...said.placeArticle) ? `${inside} ${tokens[from - 1]?.text} ${words}` : `${on} ${words}`
}

const foundAt = ({ text, tokens, terms, draft }: Told, at: number): Found | null => {
  if (!isPause(tokens[at - 1])) return null
  let start = at
  while (start < at + 5 && small(tokens[start]) && placeAt(terms, start) === null) start += 1
  const place = start > at ? placeAt(terms, start) : null
  const to = place === null ? null : refusedTo(tokens, place.to, at === 0 || isEndBefore(tokens, at))
  if (place === null || to === null) return null
  const stop = tokens[to - 1]?.text.endsWith('.') === true ? '.' : ''
  return { from: at, to, words: `${refusing({ text, tokens, numbered: isNumbered(place, draft) }, place)}${stop}` }
}

/** "the front one, never mind", "el de adelante siempre no": what is refused behind its place, in the words that the readers know. */
export const withRefusedBehind = (text: string, scene: Scene): string => {
  const plain = withoutIdle(text)
  const tokens = tokensOf(plain)
  if (Object.keys(scene.draft.marks).length === 0) return plain
  const told = { text: plain, tokens, terms: termsOf(scene.lexicon, tokens), draft: scene.draft }
  const found = [...tokens.keys()].flatMap((at) => foundAt(told, at) ?? [])
  return found.reduceRight(
    (left, { from, to, words }) => `${left.slice(0, tokens[from]?.start)}${words}${left.slice(tokens[to - 1]?.end)}`,
    plain,
  )
}

/** "adelante siempre no va": a word that only says that it was otherwise before. */
const withoutIdle = (text: string): string => {
  const tokens = tokensOf(text)
  const places = [...tokens.keys()].filter((at) => {
    const to = phraseEnd(tokens, at, idle)
    return to !== null && !isPause(tokens[to])
  })
  return places.reduceRight((left, at) => `${left.slice(0, tokens[at]?.start)}${left.slice(tokens[at + 1]?.start)}`, text)
}
