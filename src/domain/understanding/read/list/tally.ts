import type { Fit } from '../../../garment/garment.ts'
import type { Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import type { Term } from '../text/lexicon.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'

/** Sizes counted in a sentence: "3 small, 4 medium", "una M de niña". `garment` is the kind named before them. */
export type Counted = {
  readonly size: Player['size']
  readonly fit: Fit | undefined
  readonly quantity: number
  readonly garment: number | null
}
export type TallyFound = { readonly counted: readonly Counted[]; readonly taken: ReadonlySet<number> }

type Amount = { readonly amount: number; readonly to: number }
type Scene = { readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly taken: ReadonlySet<number> }

/** The amount that a figure at a token gives: "(5)" in brackets, but not behind a name, "5x", "3S" in a list of such. */
const figureAt = (tokens: readonly Token[], at: number): Amount | null => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  if (token === undefined || !isNumber(token) || !/^[1-9]\d{0,2}$/.test(token.text)) return null
  const amount = Number(token.text)
  if (next?.kind === 'word' && next.start === token.end)
    return next.key === 'x' || isGluedSize(tokens, at) ? { amount, to: at + 1 } : null
  const bracketed = tokens[at - 1]?.text === '(' && next?.text === ')'
  if (bracketed && isCapital(tokens[at - 2]) && sizeAt(tokens, at - 2) === null) return null
  return { amount, to: bracketed ? at + 2 : at + 1 }
}

const amountAt = ({ tokens, terms, taken }: Scene, at: number): Amount | null => {
  const token = tokens[at]
  if (token === undefined || taken.has(at) || tokens[at - 1]?.text === '#') return null
  if (isWord(token, ...listed.players.one) && cutAt(tokens, at + 1) !== null) return { amount: 1, to: at + 1 }
  if (isWord(tokens[at - 1], ...listed.players.notAmount)) return null
  const term = terms.find((one) => one.from === at)
  return term?.meaning.kind === 'count' ? { amount: term.meaning.id, to: term.to } : figureAt(tokens, at)
}

/** "3S 4M 2L": the figure touches its size, and does so more than once; "2XL" is a size. */
const isGluedSize = (tokens: readonly Token[], at: number): boolean => {
  const glued = (index: number): boolean => {
    const [figure, size] = [tokens[index], tokens[index + 1]]
    if (figure === undefined || size === undefined || !isNumber(figure) || figure.end !== size.start) return false
    return sizeAt(tokens, index) === null && sizeAt(tokens, index + 1, true)?.size !== undefined
  }
  return glued(at) && [...tokens.keys()].filter(glued).length > 1
}

const fillers: readonly string[] = listed.players.tallyFillers

const skipFillers = (tokens: readonly Token[], at: number): number => {
  let next = at
  while (next < at + 3 && (isWord(tokens[next], ...fillers) || tokens[next]?.text === '-') && sizeAt(tokens, next) === null)
    next += 1
  return next
}

const everyone: readonly string[] = listed.players.all

/** "all women's", "todas de dama" after the sizes holds for all of them; "women's:" before holds until the next. */
const cutAround = (
  tokens: readonly Token[],
  at: number,
): { readonly fit: Fit; readonly kind: 'all' | 'head' | 'behind'; readonly to: number } | null => {
  if (isWord(tokens[at], ...everyone)) {
    const cut = cutAt(tokens, at + 1)
    return cut === null || sizeAt(tokens, at + 1) !== null ? null : { fit: cut.fit, kind: 'all', to: cut.to }
  }
  const cut = cutAt(tokens, at)
  if (cut === null || sizeAt(tokens, at) !== null) return null
  const noun = isWord(tokens[cut.to], ...listed.players.cutNoun) ? cut.to + 1 : cut.to
  const told = isWord(tokens[noun], ...listed.players.cutTells) ? noun + 1 : noun
  if ([':', '-', '–', '='].includes(tokens[noun]?.text ?? '')) return { fit: cut.fit, kind: 'head', to: noun + 1 }
  if (isNumber(tokens[told]) && sizeAt(tokens, told) === null) return { fit: cut.fit, kind: 'head', to: told }
  const led =
    isWord(tokens[at - 1], ...listed.players.cutBehind) || noun > cut.to || isWord(tokens[at], ...listed.players.cutNoun)
  return led ? { fit: cut.fit, kind: 'behind', to: noun } : null
}

/** The amount behind a size at a token: "x2", "(2)"; ": 3", "- 3" and "= 3" only where sizes are listed so more than once. */
const amountBehind = (
  tokens: readonly Token[],
  at: number,
  listed: boolean,
): { readonly amount: number; readonly to: number } | null => {
  const sign = tokens[at]
  const amount = tokens[at + 1]
  if (!isNumber(amount) || !/^[1-9]\d{0,2}$/.test(amount?.text ?? '')) return null
  const found = { amount: Number(amount?.text), to: at + 2 }
  if (isWord(sign, 'x') || sign?.text === '×') return found
  if (sign?.text === '(') return tokens[at + 2]?.text === ')' ? { ...found, to: at + 3 } : null
  return listed && [':', '-', '='].includes(sign?.text ?? '') && sizeAt(tokens, at + 1) === null ? found : null
}

/** "YS: 3, YM: 4": sizes listed with their amounts behind them. */
const isListed = (tokens: readonly Token[]): boolean =>
  [...tokens.keys()].filter((at) => {
    const size = isNumber(tokens[at]) ? null : sizeAt(tokens, at)
    return size?.size !== undefined && amountBehind(tokens, size.to, true) !== null
  }).length > 1

/** "en chica 3 de dama": the amount and the cut behind a size that has none. */
const cutBehind = (
  tokens: readonly Token[],
  at: number,
): { readonly amount: number; readonly fit: Fit; readonly to: number } | null => {
  const figure = tokens[at]?.text === ':' ? at + 1 : at
  const amount = /^[1-9]\d{0,2}$/.test(tokens[figure]?.text ?? '') ? Number(tokens[figure]?.text) : null
  const cut = amount === null ? null : cutAt(tokens, figure + 1)
  if (amount === null || cut === null || sizeAt(tokens, figure) !== null || sizeAt(tokens, figure + 1) !== null) return null
  return { amount, fit: cut.fit, to: cut.to }
}

/** "youth M x2", "YS (2)", "L: 4": the amount behind the size. */
const sizeFirst = (
  { tokens, taken }: Scene,
  at: number,
  listed: boolean,
): { readonly found: Omit<Counted, 'garment'>; readonly to: number } | null => {
  const size = taken.has(at) ? null : sizeAt(tokens, at)
  if (size?.size === undefined) return null
  const cut = size.fit === undefined ? cutBehind(tokens, size.to) : null
  if (cut !== null) return { found: { size: size.size, fit: cut.fit, quantity: cut.amount }, to: cut.to }
  const behind = amountBehind(tokens, size.to, listed)
  if (behind === null) return null
  return { found: { size: size.size, fit: size.fit, quantity: behind.amount }, to: behind.to }
}

/** "5 s, 10 m in mens cut": the cut behind them is that of all since the last such; how many are told now. */
const withCutBehind = (counted: Counted[], since: number, fit: Fit): number => {
  for (const [index, one] of counted.entries()) if (index >= since && one.fit === undefined) counted[index] = { ...one, fit }
  return counted.length
}

type Told = { readonly found: Omit<Counted, 'garment'>; readonly to: number }

/** "3 small", "una M de niña": the amount before the size. */
const amountFirst = (scene: Scene, at: number): Told | null => {
  const amount = amountAt(scene, at)
  const from = amount === null ? at : skipFillers(scene.tokens, amount.to)
  const size = amount === null ? null : sizeAt(scene.tokens, from, true)
  if (amount === null || size?.size === undefined) return null
  return { found: { size: size.size, fit: size.fit, quantity: amount.amount }, to: size.to }
}

type Cuts = { head: Fit | undefined; all: Fit | undefined; since: number }

const takeCut = (
  cuts: Cuts,
  counted: Counted[],
  { fit, kind }: { readonly fit: Fit; readonly kind: 'all' | 'head' | 'behind' },
): void => {
  if (kind === 'head') cuts.head = fit
  if (kind === 'all') cuts.all = fit
  if (kind === 'behind') cuts.since = withCutBehind(counted, cuts.since, fit)
}

/** Reads counted sizes out of a sentence. */
export const readTally = (scene: Scene): TallyFound => {
  const { tokens, terms } = scene
  const counted: Counted[] = []
  const taken = new Set<number>()
  const cuts: Cuts = { head: undefined, all: undefined, since: 0 }
  const listed = isListed(tokens)
  let at = 0
  while (at < tokens.length) {
    const around = cutAround(tokens, at)
    if (around !== null) takeCut(cuts, counted, around)
    const told = around === null ? (sizeFirst(scene, at, listed) ?? amountFirst(scene, at)) : null
    if (told !== null) {
      const from = at
      const garment = terms.filter((term) => term.meaning.kind === 'garment' && term.from < from).at(-1)
      counted.push({ ...told.found, fit: told.found.fit ?? cuts.head, garment: garment?.from ?? null })
      for (let index = from; index < told.to; index += 1) taken.add(index)
    }
    at = around?.to ?? told?.to ?? at + 1
  }
  return { counted: counted.map((one) => ({ ...one, fit: one.fit ?? cuts.all })), taken }
}
