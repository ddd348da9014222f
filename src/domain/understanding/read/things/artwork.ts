import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { artworkWords, spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, fold, type Token, tokensOf } from '../text/tokens.ts'

/** A drawing spoken of: kept in the customer's words for a person to look at; `rest` is the text without them. */
export type ArtworkFound = { readonly patches: readonly Patch[]; readonly said: boolean; readonly rest: string }

const sentencesOf = (text: string): readonly { readonly text: string; readonly at: number }[] =>
  [...text.matchAll(/[^.\n!?;]+[.!?;]?/g)].map((match) => ({ text: match[0], at: match.index }))

const isPause = ({ text }: Token): boolean => [',', '(', ')', ':'].includes(text)

const things = new Set(['content', 'garment', 'role', 'sport', 'colour', 'stones', 'use', 'word'])

/** From the pause before the drawing's word, or the garment it goes on, to the next pause behind which other things of the order are spoken of. */
const stretch = (tokens: readonly Token[], at: number, lexicon: Lexicon): readonly [from: number, to: number] => {
  const pause = tokens.slice(0, at).findLastIndex(isPause) + 1
  const garment = termsOf(lexicon, tokens).findLast(
    ({ meaning, from, to }) => meaning.kind === 'garment' && from >= pause && to <= at,
  )
  const from = garment?.to ?? pause
  for (const [index, token] of tokens.entries()) {
    if (index <= at || !isPause(token)) continue
    if (termsOf(lexicon, tokens.slice(index + 1)).some((term) => things.has(term.meaning.kind))) return [from, index]
  }
  return [from, tokens.length]
}

const isLettered = (tokens: readonly Token[], { text, from, to }: { text: string; from: number; to: number }): boolean =>
  /"|\b\p{Lu}{3,}\b/u.test(text.slice(tokens[from]?.start, tokens[to - 1]?.end)) ||
  artworkWords.lettered.has(tokens.slice(from, to).find((token) => artworkWords.lettered.has(token.key))?.key ?? '')

/** Who looks at the artwork and approves it is a person of the order, no drawing. */
const deciding = new RegExp(`\\b${spoken.things.decides}\\b`)

/** A sentence after the drawing's that speaks of it still: "it's a horse head on the left chest". */
const goesOn = new RegExp(`^\\s*(?:${spoken.rosters.and} )?${spoken.things.drawingGoesOn}\\b`)

const isRefused = (tokens: readonly Token[], from: number, at: number): boolean =>
  tokens.slice(from, at).some((token) => artworkWords.refused.has(token.key))

/** "Our logo is a wolf head, can you put that on the front?": a person decides; nothing is put anywhere. */
export const readArtwork = (text: string, draft: Draft, lexicon: Lexicon): ArtworkFound => {
  let rest = text
  const notes: string[] = []
  let said = false
  for (const sentence of sentencesOf(text)) {
    const tokens = tokensOf(sentence.text)
    const named = tokens.findIndex((token) => artworkWords.words.has(token.key))
    const at = named < 0 && said && goesOn.test(fold(sentence.text)) ? 0 : named
    if (at < 0) continue
    const [from, to] = stretch(tokens, at, lexicon)
    if (deciding.test(fold(sentence.text)) || isLettered(tokens, { text: sentence.text, from, to })) continue
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    rest = blanked(rest, sentence.at + start, sentence.at + end)
    if (isRefused(tokens, from, at)) continue
    said = true
    notes.push(sentence.text.slice(start, end).trim().slice(0, 160))
  }
  const known = new Set(draft.notes.map(fold))
  const fresh = notes.filter((note) => !known.has(fold(note)))
  return { patches: fresh.length === 0 ? [] : [{ path: ['notes'], value: [...draft.notes, ...fresh].slice(-20) }], said, rest }
}
