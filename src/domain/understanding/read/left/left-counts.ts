import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing } from '../list/change.ts'
import { isOfSize, type SizeFound } from '../sizes/sizes.ts'
import { isWord } from '../text/tokens.ts'
import { garmentIds } from '../things/hear-garment.ts'
import { speaksOfThings } from './left-rows.ts'
import type { Said, Telling } from './telling.ts'

const words = listed.clauses

type Counted = readonly [string, Draft['tally'][string]]

/** Counted lines of the garments that the clause names; of all where it names none. */
const ofGarment = ({ terms }: Telling, { tally }: Draft): readonly Counted[] => {
  const ids = terms.flatMap(({ meaning }) => (meaning.kind === 'garment' ? [garmentIds[meaning.id]] : []))
  const all = Object.entries(tally)
  const own = all.filter(([, { garment }]) => garment !== undefined && ids.includes(garment))
  return own.length > 0 ? own : all
}

const linesOf = (lines: readonly Counted[], size: SizeFound): readonly Counted[] =>
  lines.filter(([, line]) => isOfSize(size, line))

/** Counted pieces of one size that become another, next to those that have it already. */
const turned = (lines: readonly Counted[], [key, line]: Counted, now: SizeFound): readonly Patch[] => {
  const { size } = now
  const there = linesOf(lines, { ...now, ...(line.fit === undefined ? {} : { fit: now.fit ?? line.fit }) })[0]
  if (size === undefined) return []
  if (there !== undefined)
    return [
      { path: ['tally', there[0], 'quantity'], value: there[1].quantity + line.quantity },
      { path: ['tally', key], value: null },
    ]
  const fit: readonly Patch[] = now.fit === undefined ? [] : [{ path: ['tally', key, 'fit'], value: now.fit }]
  return [{ path: ['tally', key, 'size'], value: size }, ...fit]
}

const firstFree = ({ tally }: Draft): string =>
  `t${Math.max(0, ...Object.keys(tally).map((key) => Number(key.slice(1)) || 0)) + 1}`

/** One of several becomes another size: the rest stays. */
const split = (
  lines: readonly Counted[],
  [key, line]: Counted,
  { now, draft }: { readonly now: SizeFound; readonly draft: Draft },
): readonly Patch[] => {
  const fit = now.fit ?? line.fit
  const there = linesOf(lines, { ...now, ...(fit === undefined ? {} : { fit }) })[0]
  const { size } = now
  if (size === undefined) return []
  const more: Patch =
    there === undefined
      ? {
          path: ['tally', firstFree(draft)],
          value: { ...line, size, ...(now.fit === undefined ? {} : { fit: now.fit }), quantity: 1 },
        }
      : { path: ['tally', there[0], 'quantity'], value: there[1].quantity + 1 }
  return [{ path: ['tally', key, 'quantity'], value: line.quantity - 1 }, more]
}

/** "The XL polo should be XXL": of two sizes the one that was counted gives way to the other. */
const sizeTurned = (telling: Telling, draft: Draft): readonly Patch[] => {
  const lines = ofGarment(telling, draft)
  const [first, second, ...more] = telling.sizes
  if (first === undefined || second === undefined || more.length > 0 || telling.figures.length > 0) return []
  const has = (one: Said<SizeFound>): boolean => linesOf(lines, one.value).length === 1
  const isKnown = linesOf(lines, first.value).length > 0
  const backwards = !first.old && (second.old || (!isKnown && has(second)))
  const [was, now] = backwards ? [second, first] : [first, second]
  const [line, ...others] = linesOf(lines, was.value)
  if (line === undefined || others.length > 0 || now.value.size === was.value.size) return []
  const single = telling.tokens.some((token) => isWord(token, ...words.single) && telling.tokens.indexOf(token) < was.at)
  const several = isWord(telling.tokens[was.at - 1], ...words.plural) && !single
  if (line[1].quantity === 1 || several) return turned(lines, line, now.value)
  return single ? split(lines, line, { now: now.value, draft }) : []
}

/** "6 L", "6 of the ladies M": between the figure and its size stand small words at most. */
const leadsTo = ({ tokens }: Telling, from: number, to: number | undefined): boolean =>
  to !== undefined && from <= to && tokens.slice(from, to).every((token) => isWord(token, ...words.small, ...words.plural))

/** "De las extra grandes dame 3": another amount of one counted size, so many in all, more or fewer. */
const amountTold = (telling: Telling, draft: Draft): readonly Patch[] => {
  const lines = ofGarment(telling, draft)
  const [size, ...sizes] = telling.sizes
  const [figure, ...figures] = telling.figures.filter(({ old }) => !old)
  if (figure === undefined || sizes.length + figures.length > 0) return []
  const [line, ...others] =
    size === undefined ? (lines.length < Object.keys(draft.tally).length ? lines : []) : linesOf(lines, size.value)
  if (line === undefined || others.length > 0) return []
  const isAmount = figure.ends || leadsTo(telling, figure.to, size?.at) || telling.terms.some(({ from }) => from === figure.to)
  const has = (kind: readonly string[]): boolean => telling.tokens.some((token) => isWord(token, ...kind))
  const said = Number(figure.value)
  const [key, { quantity }] = line
  const amount = has(words.more) ? quantity + said : has(words.fewer) ? quantity - said : said
  if (isAmount && said === 0) return [{ path: ['tally', key], value: null }]
  return !isAmount || amount < 1 || amount > 500 || amount === quantity
    ? []
    : [{ path: ['tally', key, 'quantity'], value: amount }]
}

/** What a clause tells of pieces that were counted by size; nothing where it may be said of a player or in doubt. */
export const toldOfCounts = (telling: Telling, draft: Draft): Change => {
  if (Object.keys(draft.tally).length === 0 || telling.refs.length > 0 || telling.unsure || speaksOfThings(telling))
    return nothing
  const turn = sizeTurned(telling, draft)
  return { ...nothing, patches: turn.length > 0 ? turn : amountTold(telling, draft) }
}
