import { listed } from '../../words/languages.ts'
import { type Change, nothing, sized, span } from '../list/change.ts'
import { isPlainSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { whichRow } from './drop-rows.ts'
import { outside, playersOf, type Told } from './told.ts'

type Sized = SizeFound & { readonly from: number }

const isTheirs = (told: Told, { size, fit }: SizeFound): boolean =>
  playersOf(told).every((one) => one.size === size && (fit === undefined || fit === one.fit))

/** "12 L" counts; "has a small question" and "le queda chica" name no size. */
const namesSize = (tokens: readonly Token[], one: Sized): boolean =>
  !isNumber(tokens[one.from - 1]) && isPlainSize(tokens, one.from, one)

const sizesIn = (told: Told): readonly Sized[] => {
  const free = new Set(outside(told))
  const found: Sized[] = []
  let at = 0
  while (at < told.tokens.length) {
    const size = free.has(at) ? sizeAt(told.tokens, at) : null
    if (size?.size !== undefined) found.push({ ...size, from: at })
    at = size?.to ?? at + 1
  }
  return found.filter((one) => namesSize(told.tokens, one))
}

/** "not M", "no es G", "instead of the L": a size that is said to be wrong. */
const isRefused = (tokens: readonly Token[], { from, to }: Sized): boolean => {
  const before = tokens.slice(Math.max(0, from - 3), from).filter((token) => !isWord(token, ...listed.again.small))
  return isWord(before.at(-1), ...listed.again.refusing) || isWord(tokens[to], ...listed.changes.not)
}

/** The one size that is said and is not theirs; of several the one they are put into. */
const newSize = (told: Told): Sized | null => {
  const fresh = sizesIn(told).filter((one) => !isTheirs(told, one) && !isRefused(told.tokens, one))
  const kinds = new Set(fresh.map(({ size, fit }) => `${size} ${fit ?? ''}`))
  const put = fresh.filter(({ from }) => isWord(told.tokens[from - 1], ...listed.told.into))
  const only = kinds.size === 1 ? fresh.at(-1) : put.length === 1 ? put[0] : undefined
  return only ?? null
}

/** "12 and 6 are L and M": as many sizes beside each other as players, each has the one at its place. */
const inTurn = (told: Told): readonly Sized[] => {
  const found = sizesIn(told).filter((one) => !isRefused(told.tokens, one))
  const beside = found.every(({ from }, index) => index === 0 || isJoined(told.tokens, found[index - 1]?.to ?? 0, from))
  const several = new Set(found.map(({ size, fit }) => `${size} ${fit ?? ''}`)).size > 1
  return beside && several && found.length === told.group.refs.length ? found : []
}

const isJoined = (tokens: readonly Token[], from: number, to: number): boolean =>
  to > from && tokens.slice(from, to).every((token) => isWord(token, ...listed.again.joins) || [',', '&'].includes(token.text))

/** Between those who are named and the size somebody is named who is not on the list. */
const hasStranger = ({ tokens, group }: Told, size: Sized): boolean => {
  const ends = group.places.flatMap(({ from, to }) => (to <= size.from ? [to] : [from]))
  const near = ends.toSorted((a, b) => Math.abs(size.from - a) - Math.abs(size.from - b))[0] ?? size.from
  const [from, to] = near <= size.from ? [near, size.from] : [size.to, near]
  return tokens.slice(from, to).some((token, index) => {
    const capital = isCapital(token) && token.text.length > 2 && !isWord(token, ...listed.again.pronouns)
    return capital && sizeAt(tokens, from + index) === null
  })
}

/** "Josiah says he's really more of a medium": the size that is told of whoever is named; of two of a number or name it is asked. */
export const sizeTold = (told: Told): Change => {
  const each = inTurn(told)
  if (each.length > 0) return toldInTurn(told, each)
  const size = newSize(told)
  if (size === null || hasStranger(told, size)) return nothing
  const { group, scene } = told
  const one = group.refs.filter(({ keys }) => keys.length === 1)
  const several = group.refs.filter(({ keys }) => keys.length > 1)
  return {
    patches: one.flatMap(({ keys }) => keys.flatMap((key) => sized(key, size))),
    open: several.map(({ keys }) =>
      whichRow(
        keys.map((key) => ({ key, patches: sized(key, size) })),
        scene,
      ),
    ),
    taken: new Set([...group.places.flatMap(({ from, to }) => [...span(from, to)]), ...span(size.from, size.to)]),
  }
}

const toldInTurn = ({ group, tokens }: Told, sizes: readonly Sized[]): Change => ({
  ...nothing,
  patches: group.refs.flatMap(({ keys: [key, ...more] }, index) => {
    const size = sizes[index]
    return key === undefined || size === undefined || more.length > 0 ? [] : sized(key, size)
  }),
  taken: span(0, tokens.length),
})
