import { canonical } from '../../content-hash.ts'
import type { Conversation } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { takesBothBack } from '../intent/intents.ts'
import { hasSize } from '../sizes/sizes.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { stated } from '../text/statements.ts'
import { fold, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { usesOf } from '../things/recolour.ts'
import { refsIn } from '../whom/refs.ts'

const hesitates = `(?:${spoken.intents.hesitates}[,.! ]+)*`
const undo = new RegExp(`^[¡¿ ]*${hesitates}${spoken.takenBack.undo}\\b`)
const dismiss = new RegExp(`^[¡¿ ]*${hesitates}${spoken.takenBack.dismiss}\\b`)
const asWas = new RegExp(`(?:^|[,.;!] *|\\b${spoken.intents.hesitates} )[¡¿ ]*${hesitates}${spoken.takenBack.asWas}`)
const polite = new RegExp(`^[¿\\s]*${hesitates}${spoken.clauses.polite}\\b`)

/**
 * What was so before: `both` of the last two changes, `undo` the last change of all (`tail` and `rest` are what else its sentence and the others say), or the values to
 * which some lines or colours return.
 */
export type TakenBack =
  | { readonly kind: 'both' }
  | { readonly kind: 'undo'; readonly tail: string; readonly rest: string; readonly plainly: boolean }
  | { readonly kind: 'values'; readonly patches: readonly Patch[] }

const differs = (a: Draft, b: Draft, key: string): boolean => canonical(a.rows[key] ?? null) !== canonical(b.rows[key] ?? null)

/** The lines as they were before the last change of each. */
const linesBefore = ({ draft, past }: Conversation, keys: readonly string[]): readonly Patch[] =>
  keys.flatMap((key) => {
    const was = past.findLast((one) => differs(one.draft, draft, key) && one.draft.rows[key] !== undefined)?.draft.rows[key]
    return was === undefined ? [] : [{ path: ['rows', key], value: was }]
  })

const painted = ({ garments, styles, marks }: Draft) => ({ garments, styles, marks })

/** Where a colour stood that was replaced since. */
const hueBefore = ({ draft, past }: Conversation, hue: string): readonly Patch[] => {
  const uses = (one: Draft): readonly (readonly string[])[] => usesOf(painted(one), hue)
  const last = uses(draft).length === 0 ? past.findLast((one) => uses(one.draft).length > 0) : undefined
  return last === undefined ? [] : uses(last.draft).map((path) => ({ path, value: hue }))
}

/** "Back to navy, red is too loud", "the navy was better": the one colour that is named and was replaced, where the words return to it. */
const huesBefore = (tokens: readonly Token[], conversation: Conversation, lexicon: Lexicon): readonly Patch[] => {
  const hues = termsOf(lexicon, tokens).flatMap(({ meaning }) => (meaning.kind === 'colour' ? [meaning] : []))
  const returning = hues.flatMap(({ id, readings = [id] }) => {
    const found = readings.map((one) => hueBefore(conversation, one)).filter((patches) => patches.length > 0)
    return found.length === 1 ? found : []
  })
  const others = hues.filter(({ id }) => usesOf(painted(conversation.draft), id).length > 0)
  const [only = []] = returning
  const spoken = returning.length + others.length
  const whole = others.length === 0 || !termsOf(lexicon, tokens).some(({ meaning }) => meaning.kind === 'content')
  return returning.length === 1 && spoken === hues.length && whole ? only : []
}

const returns = (tokens: readonly Token[]): boolean => tokens.some((token) => isWord(token, ...listed.takenBack.returning))

const longest = 200

/** The end of the sentence in which a place stands. */
const sentenceEnd = (text: string, from: number): number => {
  const end = text.slice(from).search(/[.!?;\n…]/)
  return end < 0 ? text.length : from + end + 1
}

const parted = (text: string, from: number): { readonly tail: string; readonly rest: string } => {
  const end = sentenceEnd(text, from)
  return { tail: text.slice(from, end), rest: text.slice(end) }
}

const ofWhom = new RegExp(`^\\s+(?:${spoken.intents.undoWhat}\\s+)?${spoken.takenBack.ofWhom}\\s`)

/** Whom the words themselves name: "leave 9 as it was", "undo that for 9, …". */
const namedWith = (text: string, to: number, { rows }: Draft): readonly string[] => {
  const behind = /^[^,.;!?\n]*/.exec(text.slice(to))?.[0] ?? ''
  const said = ofWhom.test(fold(behind)) ? `${text.slice(0, to)}${behind}` : text.slice(0, to)
  return [...new Set(refsIn(tokensOf(said), rows).flatMap(({ keys }) => (keys.length === 1 ? keys : [])))]
}

/** Words that take something back, to where they stand; null where there are none, or somebody asks whether it was so. */
const takesBack = (text: string): { readonly to: number; readonly how: 'undo' | 'dismiss' | 'as-was' } | null => {
  const folded = fold(text)
  const plain = undo.exec(folded)
  if (plain !== null) return { to: plain[0].length, how: 'undo' }
  const loose = dismiss.exec(folded)
  if (loose !== null) return { to: loose[0].length, how: 'dismiss' }
  const was = asWas.exec(folded)
  if (was === null) return null
  const to = was.index + was[0].length
  return /\?\s*$/.test(text.slice(0, sentenceEnd(text, to))) && !polite.test(folded) ? null : { to, how: 'as-was' }
}

/** Words that only return to a colour: nothing else of the trade is said. */
const returnsToHue = (text: string, conversation: Conversation, lexicon: Lexicon): readonly Patch[] => {
  const tokens = stated(tokensOf(text))
  const plain = termsOf(lexicon, tokens).every(
    ({ meaning, from }) => besides.includes(meaning.kind) || isWord(tokens[from], ...listed.takenBack.returning),
  )
  return plain && returns(tokens) && text.length <= 90 ? huesBefore(tokens, conversation, lexicon) : []
}

const besides: readonly string[] = ['colour', 'content', 'and', 'in', 'with', 'no', 'only', 'count']

/** "Undo that, his mom says he is fine", "déjalo como estaba", "leave 9 as he was", "the navy was better": what the message takes back. */
export const readTakenBack = (said: string, conversation: Conversation, lexicon: Lexicon): TakenBack | null => {
  const { past } = conversation
  const text = said.trim()
  if (takesBothBack(text)) return { kind: 'both' }
  const last = past.at(-1)?.draft
  if (last === undefined || text.length > longest) return null
  const back = takesBack(text)
  const hues = returnsToHue(text, conversation, lexicon)
  if (back === null) return hues.length === 0 ? null : { kind: 'values', patches: hues }
  return ofNamed(text, back, conversation) ?? ofLast(text, back, { conversation, last, hues })
}

type Back = NonNullable<ReturnType<typeof takesBack>>

/** Those whom the words themselves name are as they were; null where they name nobody who was otherwise. */
const ofNamed = (text: string, { to }: Back, conversation: Conversation): TakenBack | null => {
  const named = sized(parted(text, to).tail) ? [] : namedWith(text, to, conversation.draft)
  const patches = linesBefore(conversation, named)
  return patches.length > 0 ? { kind: 'values', patches } : null
}

type Before = { readonly conversation: Conversation; readonly last: Draft; readonly hues: readonly Patch[] }

/** What the last change was of; values where the words name who was changed before it, or a colour that was. */
const ofLast = (text: string, back: Back, { conversation, last, hues }: Before): TakenBack | null => {
  const { draft } = conversation
  const parts = parted(text, back.to)
  if (back.how === 'as-was' && namedWith(text, back.to, draft).length > 0 && !sized(parts.tail)) return null
  const keys = [
    ...new Set(
      refsIn(tokensOf(`${text.slice(0, back.to)} ${parts.tail}`), draft.rows).flatMap((ref) =>
        ref.keys.length === 1 ? ref.keys : [],
      ),
    ),
  ]
  if (back.how === 'dismiss' && keys.length === 0 && /^\s+\p{L}/u.test(parts.tail) && sized(parts.tail)) return null
  const elsewhere = keys.length > 0 && keys.every((key) => !differs(last, draft, key))
  const patches = elsewhere && !sized(parts.tail) ? linesBefore(conversation, keys) : hues
  if (patches.length > 0) return { kind: 'values', patches }
  const sure = back.how !== 'as-was' || (keys.length > 0 && !elsewhere) || canonical(last) !== canonical(draft)
  return sure ? { kind: 'undo', ...parts, plainly: back.how === 'undo' } : null
}

const sized = (text: string): boolean => {
  const tokens = tokensOf(text)
  return hasSize(tokens)
}
