import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, span } from '../list/change.ts'
import type { Term } from '../text/lexicon.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { garmentIds } from './hear-garment.ts'

const amountAt = (
  tokens: readonly Token[],
  terms: readonly Term[],
  at: number,
): { readonly amount: number; readonly to: number } | null => {
  const term = terms.find((one) => one.from === at && one.meaning.kind === 'count')
  if (term?.meaning.kind === 'count') return { amount: term.meaning.id, to: term.to }
  const text = tokens[at]?.text ?? ''
  return isNumber(tokens[at]) && /^[1-9]\d{0,2}$/.test(text) ? { amount: Number(text), to: at + 1 } : null
}

const ends = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || [',', '.', ';', '!', '('].includes(token.text)

/** "…, not 2", "…, no 2": the amount that it was. */
const pastOld = (tokens: readonly Token[], terms: readonly Term[], at: number): number => {
  const not = tokens[at]?.text === ',' ? at + 1 : at
  const old = isWord(tokens[not], ...listed.days.not, ...listed.days.instead) ? amountAt(tokens, terms, not + 1) : null
  return old?.to ?? at
}

/** The garment of the order that a term names: its only one of that kind. */
const garmentOf = ({ meaning }: Term, draft: Draft): string | null => {
  const id = meaning.kind === 'garment' ? garmentIds[meaning.id] : meaning.kind === 'role' ? meaning.id : null
  return id !== null && draft.garments[id] !== undefined && draft.garments[`${id}-2`] === undefined ? id : null
}

/** "Las polos son 3, no 2", "polos should be 4": how many of a garment of the order there shall be; where several of its sizes are counted they are told apart elsewhere. */
export const readGarmentCounts = (tokens: readonly Token[], terms: readonly Term[], draft: Draft): Change => {
  for (const term of terms) {
    const id = garmentOf(term, draft)
    if (id === null) continue
    let at = term.to
    while (at < term.to + 3 && isWord(tokens[at], ...listed.changes.turning, ...listed.things.are, ...listed.rosters.weAre))
      at += 1
    const found = at === term.to ? null : amountAt(tokens, terms, at)
    const [line, ...lines] = Object.entries(draft.tally).filter(([, entry]) => entry.garment === id)
    if (found === null || lines.length > 0 || !ends(tokens[found.to])) continue
    const patches: readonly Patch[] = [
      { path: ['garments', id, 'count'], value: found.amount },
      ...(line === undefined ? [] : [{ path: ['tally', line[0], 'quantity'], value: found.amount }]),
    ]
    return { ...nothing, patches, taken: span(term.from, pastOld(tokens, terms, found.to)) }
  }
  return nothing
}
