import type { Fit } from '../../garment/garment.ts'
import type { Player } from '../draft.ts'
import type { Term } from './lexicon.ts'
import { cutAt, sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

/** Sizes counted in a sentence: "3 small, 4 medium", "una M de niña". `garment` is the kind named before them. */
export type Counted = {
  readonly size: Player['size']
  readonly fit: Fit | undefined
  readonly quantity: number
  readonly garment: number | null
}
export type TallyFound = { readonly counted: readonly Counted[]; readonly taken: ReadonlySet<number> }

type Scene = { readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly taken: ReadonlySet<number> }

const amountAt = ({ tokens, terms, taken }: Scene, at: number): { readonly amount: number; readonly to: number } | null => {
  const token = tokens[at]
  if (token === undefined || taken.has(at) || tokens[at - 1]?.text === '#') return null
  if (isWord(tokens[at - 1], 'number', 'numero', 'no', 'the', 'el', 'la')) return null
  const term = terms.find((one) => one.from === at)
  if (term?.meaning.kind === 'count') return { amount: term.meaning.id, to: term.to }
  if (!isNumber(token) || !/^[1-9]\d{0,2}$/.test(token.text)) return null
  const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token.end
  return joined ? null : { amount: Number(token.text), to: at + 1 }
}

const fillers: readonly string[] = ['of', 'them', 'are', 'de', 'x', 'in', 'en', 'talla', 'size', 'son', 'ellas', 'ellos', '-']

const skipFillers = (tokens: readonly Token[], at: number): number => {
  let next = at
  while (next < at + 3 && (isWord(tokens[next], ...fillers) || tokens[next]?.text === '-') && sizeAt(tokens, next) === null)
    next += 1
  return next
}

const everyone: readonly string[] = ['all', 'todas', 'todos', 'both']

/** "all women's", "todas de dama" after the sizes holds for all of them; "women's:" before holds until the next. */
const cutAround = (
  tokens: readonly Token[],
  at: number,
): { readonly fit: Fit; readonly kind: 'all' | 'head'; readonly to: number } | null => {
  if (isWord(tokens[at], ...everyone)) {
    const cut = cutAt(tokens, at + 1)
    return cut === null || sizeAt(tokens, at + 1) !== null ? null : { fit: cut.fit, kind: 'all', to: cut.to }
  }
  const cut = cutAt(tokens, at)
  return cut !== null && tokens[cut.to]?.text === ':' ? { fit: cut.fit, kind: 'head', to: cut.to + 1 } : null
}

/** Reads counted sizes out of a sentence. */
export const readTally = (scene: Scene): TallyFound => {
  const { tokens, terms } = scene
  const counted: Counted[] = []
  const taken = new Set<number>()
  let head: Fit | undefined
  let all: Fit | undefined
  let at = 0
  while (at < tokens.length) {
    const around = cutAround(tokens, at)
    if (around !== null) {
      if (around.kind === 'head') head = around.fit
      else all = around.fit
      at = around.to
      continue
    }
    const amount = amountAt(scene, at)
    const from = amount === null ? at : skipFillers(tokens, amount.to)
    const size = amount === null ? null : sizeAt(tokens, from, true)
    if (amount === null || size?.size === undefined) {
      at += 1
      continue
    }
    const garment = terms.filter((term) => term.meaning.kind === 'garment' && term.from < at).at(-1)
    counted.push({ size: size.size, fit: size.fit ?? head, quantity: amount.amount, garment: garment?.from ?? null })
    for (let index = at; index < size.to; index += 1) taken.add(index)
    at = size.to
  }
  return { counted: counted.map((one) => ({ ...one, fit: one.fit ?? all })), taken }
}
