import type { Fibre } from '../../../garment/garment.ts'
import { listed } from '../../words/languages.ts'
import type { Term } from '../text/lexicon.ts'
import type { Token } from '../text/tokens.ts'

export type Blend = {
  readonly fibres: readonly { readonly fibre: Fibre; readonly percent: number }[]
  readonly taken: ReadonlySet<number>
}

type Part = { readonly fibre: Fibre; readonly at: number; readonly percent: number | null }

const percentBefore = (tokens: readonly Token[], at: number): number | null => {
  for (const back of [1, 2, 3]) {
    const token = tokens[at - back]
    if (token?.kind === 'number' && /^\d{1,3}$/.test(token.text)) {
      const marked =
        tokens.slice(at - back, at).some((one) => one.text === '%') ||
        listed.things.percent.includes(tokens[at - back + 1]?.key ?? '')
      return marked ? Number(token.text) : null
    }
  }
  return null
}

/** The figures and signs right before a fibre that give its share. */
const sharesBefore = (tokens: readonly Token[], at: number): readonly number[] => {
  const isShare = (token: Token | undefined) =>
    token !== undefined && (token.kind === 'number' || token.text === '%' || listed.things.share.includes(token.key))
  return [at - 1, at - 2, at - 3].filter((_, index, all) => all.slice(0, index + 1).every((one) => isShare(tokens[one])))
}

/** "50/50 cotton poly", "60/40 cotton poly": the shares stand before the fibres. */
const slashShares = (tokens: readonly Token[], first: number): readonly number[] => {
  for (const back of [1, 2]) {
    const text = tokens[first - back]?.text ?? ''
    if (/^\d{1,2}(?:\/\d{1,2}){1,3}$/.test(text)) return text.split('/').map(Number)
  }
  return []
}

/** "70 cotton / 30 polyester": bare figures right before each fibre; none where one has none. */
const plainShares = (tokens: readonly Token[], parts: readonly Part[]): readonly number[] => {
  const figures = parts.map(({ at }) => tokens[at - 1]?.text ?? '')
  return figures.every((text) => /^[1-9]\d$/.test(text)) ? figures.map(Number) : []
}

const sums = (shares: readonly number[]): boolean => shares.reduce((sum, share) => sum + share, 0) === 100

/** "algodón 60% y poliéster 40%": the shares stand behind the fibres. */
const sharesBehind = (tokens: readonly Token[], terms: readonly Term[]): Blend | null => {
  const found = terms.flatMap((term) => {
    const figure = tokens[term.to]
    const marked = tokens[term.to + 1]?.text === '%' && figure?.kind === 'number'
    return term.meaning.kind === 'fibre' && marked
      ? [{ fibre: term.meaning.id, percent: Number(figure.text), at: term.from, to: term.to + 2 }]
      : []
  })
  const shares = found.map(({ fibre, percent }) => ({ fibre, percent }))
  const distinct = new Set(shares.map((share) => share.fibre)).size === shares.length
  if (shares.length < 2 || !distinct || !sums(shares.map((share) => share.percent))) return null
  return {
    fibres: shares,
    taken: new Set(found.flatMap(({ at, to }) => Array.from({ length: to - at }, (_, step) => at + step))),
  }
}

/** The blend that a label or a customer gives, when its shares add up to 100; a single fibre with "100%" or nothing is all of it. */
export const readBlend = (tokens: readonly Token[], terms: readonly Term[]): Blend | null => {
  const all: readonly Part[] = terms.flatMap((term) =>
    term.meaning.kind === 'fibre' ? [{ fibre: term.meaning.id, at: term.from, percent: percentBefore(tokens, term.from) }] : [],
  )
  const behind = sharesBehind(tokens, terms)
  if (behind !== null) return behind
  const parts = all.filter(
    (part) =>
      part.percent !== null ||
      !all.some((other) => other !== part && other.fibre === part.fibre && (other.percent !== null || other.at < part.at)),
  )
  const [first] = parts
  if (first === undefined) return null
  const slash = slashShares(tokens, first.at)
  const distinct = new Set(parts.map((part) => part.fibre)).size === parts.length
  const taken = new Set(
    terms.flatMap((term) => (term.meaning.kind === 'fibre' ? [term.from, ...sharesBefore(tokens, term.from)] : [])),
  )
  if (slash.length === parts.length && slash.length > 1 && sums(slash) && distinct) {
    return { fibres: parts.map((part, index) => ({ fibre: part.fibre, percent: slash[index] ?? 0 })), taken }
  }
  const shared = parts.flatMap((part) =>
    part.percent === null || part.percent === 0 ? [] : [{ fibre: part.fibre, percent: part.percent }],
  )
  if (shared.length === parts.length && sums(shared.map((share) => share.percent)) && distinct) return { fibres: shared, taken }
  const bare = plainShares(tokens, parts)
  if (bare.length > 1 && sums(bare) && distinct)
    return { fibres: parts.map((part, index) => ({ fibre: part.fibre, percent: bare[index] ?? 0 })), taken }
  return parts.length === 1 && first.percent === null
    ? { fibres: [{ fibre: first.fibre, percent: 100 }], taken: new Set() }
    : null
}
