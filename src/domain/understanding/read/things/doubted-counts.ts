import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, span } from '../list/change.ts'
import { sizeAt } from '../sizes/sizes.ts'
import type { Term } from '../text/lexicon.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { garmentIds } from './hear-garment.ts'

type Amount = { readonly amount: number; readonly to: number }

const amountAt = (tokens: readonly Token[], terms: readonly Term[], at: number): Amount | null => {
  const term = terms.find((one) => one.from === at && one.meaning.kind === 'count')
  if (term?.meaning.kind === 'count') return { amount: term.meaning.id, to: term.to }
  const text = tokens[at]?.text ?? ''
  const plain = isNumber(tokens[at]) && /^[1-9]\d{0,2}$/.test(text) && sizeAt(tokens, at) === null
  return plain ? { amount: Number(text), to: at + 1 } : null
}

const orWords: readonly string[] = [...listed.things.or, ...listed.things.maybe]

/** Where the second of two amounts begins: "38 or 39", "38, maybe 39"; the same place where there is none. */
const pastOr = (tokens: readonly Token[], from: number): number => {
  let at = tokens[from]?.text === ',' ? from + 1 : from
  const start = at
  while (at < start + 3 && isWord(tokens[at], ...orWords)) at += 1
  return at === start ? from : at
}

const adjectives: readonly string[] = ['colour', 'class', 'knit', 'fibre', 'sport', 'use', 'finish', 'dye', 'feature']

/** The garment that an amount is of, over its adjectives: "39 long black shirts". */
const garmentAt = (tokens: readonly Token[], terms: readonly Term[], from: number): keyof typeof garmentIds | null => {
  for (let at = from; at < from + 5; ) {
    const term = terms.find((one) => one.from === at)
    if (term?.meaning.kind === 'garment') return term.meaning.id
    if (term !== undefined && !adjectives.includes(term.meaning.kind)) return null
    if (term === undefined && !isWord(tokens[at], ...listed.things.nounWords)) return null
    at = term?.to ?? at + 1
  }
  return null
}

type Scene = { readonly text: string; readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly draft: Draft }

const doubtAt = ({ text, tokens, terms, draft }: Scene, at: number): Change | null => {
  const first = tokens[at - 1]?.text === '#' ? null : amountAt(tokens, terms, at)
  const second = first === null ? at : pastOr(tokens, first.to)
  const other = first === null || second === first.to ? null : amountAt(tokens, terms, second)
  const garment = other === null ? null : garmentAt(tokens, terms, other.to)
  if (first === null || other === null || garment === null || first.amount === other.amount) return null
  const id = garmentIds[garment]
  const place = Math.max(0, Object.keys(draft.garments).indexOf(id))
  const readings = [first.amount, other.amount].map(
    (amount) =>
      ({ value: String(amount), kind: 'count', patches: [{ path: ['garments', id, 'count'], value: amount }] }) as const,
  )
  const quote = text.slice(tokens[at]?.start, tokens[other.to - 1]?.end)
  return {
    patches: [],
    open: [{ about: 'amount', path: `/garments/${place}/count`, quote, readings }],
    taken: span(at, other.to),
  }
}

/** "38 or 39 shirts": of two amounts none holds; it is asked which. */
export const readDoubtedCounts = (scene: Scene): Change =>
  [...scene.tokens.keys()].flatMap((at) => doubtAt(scene, at) ?? [])[0] ?? nothing
