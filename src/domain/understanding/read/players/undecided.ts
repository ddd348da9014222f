import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { hasSize } from '../sizes/sizes.ts'
import { anyOf, blanked, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

/** What is said of players and pieces that may yet come; `rest` is the message without it. */
export type Undecided = { readonly undecided: readonly string[]; readonly rest: string }

type Stretch = { readonly from: number; readonly to: number; readonly text: string }

const said = spoken.undecided
const doubt = anyOf(said.doubt)
const condition = anyOf(said.condition)
const open = anyOf(said.open)
const held = anyOf(said.held)
const further = anyOf(said.further)
const clauseStart = new RegExp(`(?:[,;:–]|\\b${said.joins})\\s+[^,;:–]*$`)

const sentencesOf = (text: string): readonly Stretch[] =>
  [...text.matchAll(/[^.!?;\n]+(?:\.(?=\S)[^.!?;\n]+)*[.!?;\n]*/g)].map((found) => ({
    from: found.index,
    to: found.index + found[0].length,
    text: fold(found[0]),
  }))

/** A piece, a size or a number that is not on the list yet. */
const isOfMore = (one: Stretch, text: string, { rows }: Draft): boolean => {
  const tokens = tokensOf(text.slice(one.from, one.to))
  return refsIn(tokens, rows).length === 0 && (hasSize(tokens) || further.test(one.text))
}

/** Said to be open, or doubted and held back, or one more that may be: no statement that something is ordered. */
const isUndecided = (one: Stretch, next: Stretch | undefined): boolean => {
  const isHeld = held.test(one.text) || (next !== undefined && held.test(next.text))
  if (open.test(one.text)) return doubt.test(one.text) || condition.test(one.text) || isHeld || further.test(one.text)
  if (doubt.test(one.text)) return isHeld || further.test(one.text)
  return condition.test(one.text) && isHeld
}

/** Where in its sentence it begins: at the clause that doubts; where it is said afterwards that it is open, with the sentence. */
const startOf = ({ from, text }: Stretch): number => {
  const first = Math.min(...[doubt, condition].flatMap((pattern) => pattern.exec(text)?.index ?? []))
  if (!Number.isFinite(first)) return from
  const clause = clauseStart.exec(text.slice(0, first))
  return clause === null ? from : from + clause.index
}

/** "If Walt makes the team we'd want one more in 3XL, but that's not decided": nobody is put on the list before it is; what is ordered beside it is. */
export const readUndecided = (text: string, draft: Draft): Undecided => {
  const sentences = sentencesOf(text)
  const found = sentences.flatMap((one, at): readonly Stretch[] => {
    const next = sentences[at + 1]
    if (one.text.includes('?') || !isOfMore(one, text, draft) || !isUndecided(one, next)) return []
    const follows = next !== undefined && held.test(next.text) && !hasSize(tokensOf(next.text))
    const from = startOf(one)
    return [{ from, to: follows ? next.to : one.to, text: text.slice(from, one.to).replace(/^[\s,;:–]+|\s+$/g, '') }]
  })
  return { undecided: found.map((one) => one.text), rest: found.reduce((left, { from, to }) => blanked(left, from, to), text) }
}
