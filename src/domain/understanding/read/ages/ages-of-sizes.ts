import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { blanked, fold, tokensOf } from '../text/tokens.ts'
import { classOf } from './age-answer.ts'

const said = spoken.ages

/** "2 years old", "20 months", "4 and 5 years old". */
const told = new RegExp(`\\b(\\d{1,2})(?: ?(?:-|${said.to}) ?(\\d{1,2}))?[ -]?(?:(${said.months})|${said.years})(?![\\w/])`, 'g')
const monthsInYear = 12

type Placed = SizeFound & { readonly at: number; readonly end: number }

const sizesIn = (text: string): readonly Placed[] => {
  const tokens = tokensOf(text)
  const found: (Placed & { readonly index: number })[] = []
  for (const [index, token] of tokens.entries()) {
    const size = index < (found.at(-1)?.to ?? 0) ? null : sizeAt(tokens, index)
    if (size?.size !== undefined) found.push({ ...size, index, at: token.start, end: tokens[size.to - 1]?.end ?? token.end })
  }
  return found
}

/** Counted sizes and lines without name or number that are of a size. */
const linesOf = ({ tally, rows }: Draft, size: SizeFound): readonly Patch['path'][] => [
  ...Object.entries(tally).flatMap(([key, line]) => (isOfSize(size, line) ? [['tally', key]] : [])),
  ...Object.entries(rows).flatMap(([key, line]) =>
    line.name === undefined && line.number === undefined && isOfSize(size, line) ? [['rows', key]] : [],
  ),
]

const isGrownUp = ({ fit }: SizeFound): boolean => fit === 'men' || fit === 'women'

/**
 * Whose the years are: of the only size of the sentence, of the one before them where another follows, or of that in whose brackets they
 * stand. Of several sizes with one of grown-ups among them it is the last before them, for the years are no grown-up's.
 */
const sizeOf = (
  sentence: string,
  sizes: readonly Placed[],
  { at, young }: { readonly at: number; readonly young: boolean },
): Placed | null => {
  const before = sizes.findLast(({ end }) => end <= at)
  const behind = sizes.filter((one) => one.at > at)
  const bracketed = sentence.slice(before?.end ?? 0, at).lastIndexOf('(') > sentence.slice(before?.end ?? 0, at).lastIndexOf(')')
  if (before === undefined) return behind.length === 1 ? (behind[0] ?? null) : null
  const child = young && sizes.some(isGrownUp) && !isGrownUp(before)
  return sizes.length === 1 || behind.length > 0 || bracketed || child ? before : null
}

const sentences = /[^.!?\n;]+/g

/** Years told of the pieces of one size and of nobody else: "two 2T for the twins (they're 2 years old)"; `rest` is the text without them. */
export const readAgesOfSizes = (text: string, draft: Draft): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const patches: Patch[] = []
  let rest = text
  for (const sentence of text.matchAll(sentences)) {
    const sizes = sizesIn(sentence[0])
    if (sizes.length === 0) continue
    for (const match of fold(sentence[0]).matchAll(told)) {
      const years = [match[1], match[2] ?? match[1]].map((figure) => Number(figure) / (match[3] === undefined ? 1 : monthsInYear))
      const [age, ...others] = new Set(years.map(classOf))
      const size = sizeOf(sentence[0], sizes, { at: match.index, young: age !== '13-up' })
      const lines = size === null ? [] : linesOf(draft, size)
      if (lines.length === 0 || age === undefined || others.length > 0) continue
      patches.push(...lines.map((path): Patch => ({ path: [...path, 'age'], value: age })))
      const from = sentence.index + match.index
      rest = blanked(rest, from, from + match[0].length)
    }
  }
  return { patches, rest }
}
