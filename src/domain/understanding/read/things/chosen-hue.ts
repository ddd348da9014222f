import type { Asked } from '../../conversation.ts'
import type { Patch } from '../../patch.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { blanked, tokensOf } from '../text/tokens.ts'

export type Chosen = { readonly patches: readonly Patch[]; readonly rest: string }

/** "Light yellow is fine, and we need …": one of the colours asked about, named among other words; `rest` is the text without it. */
export const chosenHue = (text: string, asked: Asked | null, lexicon: Lexicon): Chosen => {
  const tokens = tokensOf(text)
  for (const { meaning, from, to } of asked?.code === 'colour' ? termsOf(lexicon, tokens) : []) {
    const reading = (asked?.readings ?? []).find((one) => meaning.kind === 'colour' && one.value === meaning.id)
    const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
    if (reading !== undefined) return { patches: reading.patches, rest: blanked(text, start, end) }
  }
  return { patches: [], rest: text }
}
