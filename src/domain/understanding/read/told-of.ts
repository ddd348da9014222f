import type { Player } from '../draft.ts'
import { listed, months, spoken, weekdays } from '../words/languages.ts'
import { type Change, isAdd, joined, nothing, type Scene, sized, span } from './change.ts'
import { isDrop, whichRow } from './drops.ts'
import { rowsByName, rowsByNumber } from './refs.ts'
import { nearName } from './renames.ts'
import { type SizeFound, sizeAt } from './sizes.ts'
import { sentencesOf } from './statements.ts'
import { isCapital, isNumber, isWord, type Token } from './tokens.ts'
import { type Group, groupsIn } from './whom.ts'

/** A sentence, those of the list whom it speaks of, and who they are by the list. */
type Told = { readonly tokens: readonly Token[]; readonly group: Group; readonly scene: Scene; readonly named: boolean }

const playersOf = ({ group, scene }: Told): readonly Player[] =>
  group.refs.flatMap(({ keys }) => keys.flatMap((key) => scene.draft.rows[key] ?? []))

const isTheirs = (told: Told, { size, fit }: SizeFound): boolean =>
  playersOf(told).every((one) => one.size === size && (fit === undefined || fit === one.fit))

type Sized = SizeFound & { readonly from: number }

const isAbbreviated = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some((token) => /^[\dA-Z]+$/.test(token.text))

/** "Has a small question", "le queda chica", "12 L" speak of no size of theirs. */
const isSize = (tokens: readonly Token[], { from, to }: Sized): boolean => {
  if (isNumber(tokens[from - 1])) return false
  if (isAbbreviated(tokens, from, to)) return true
  if (isWord(tokens[from - 1], ...listed.told.feeling)) return false
  const next = tokens[to]
  return next?.kind !== 'word' || isWord(next, ...listed.told.tails)
}

const sizesIn = (tokens: readonly Token[], group: Group): readonly Sized[] => {
  const found: Sized[] = []
  let at = 0
  while (at < tokens.length) {
    const inside = at >= group.from && at < group.to
    const size = inside ? null : sizeAt(tokens, at)
    if (size?.size !== undefined) found.push({ ...size, from: at })
    at = size?.to ?? at + 1
  }
  return found.filter((one) => isSize(tokens, one))
}

/** "not M", "no es G", "instead of the L": a size that is said to be wrong. */
const isRefused = (tokens: readonly Token[], { from, to }: Sized): boolean => {
  const before = tokens.slice(Math.max(0, from - 3), from).filter((token) => !isWord(token, ...listed.again.small))
  return isWord(before.at(-1), ...listed.again.refusing) || isWord(tokens[to], ...listed.changes.not)
}

/** The one size that is said and is not theirs; of several the one they are put into. */
const newSize = (told: Told): Sized | null => {
  const fresh = sizesIn(told.tokens, told.group).filter((one) => !isTheirs(told, one) && !isRefused(told.tokens, one))
  const kinds = new Set(fresh.map(({ size, fit }) => `${size} ${fit ?? ''}`))
  const put = fresh.filter(({ from }) => isWord(told.tokens[from - 1], ...listed.told.into))
  const only = kinds.size === 1 ? fresh.at(-1) : put.length === 1 ? put[0] : undefined
  return only ?? null
}

const isBesideStranger = ({ tokens, group }: Told, at: number): boolean =>
  tokens.slice(Math.min(group.to, at), Math.max(group.from, at)).some((token, index, all) => {
    const place = Math.min(group.to, at) + index
    return (
      index > 0 &&
      index < all.length &&
      isCapital(token) &&
      token.text.length > 2 &&
      sizeAt(tokens, place) === null &&
      !isWord(token, ...listed.again.pronouns)
    )
  })

const sizeTold = (told: Told): Change => {
  const size = newSize(told)
  if (size === null || isBesideStranger(told, size.from)) return nothing
  const taken = new Set([...span(told.group.from, told.group.to), ...span(size.from, size.to)])
  return {
    taken,
    patches: told.group.refs.flatMap(({ keys }) => (keys.length === 1 ? keys.flatMap((key) => sized(key, size)) : [])),
    open: told.group.refs.flatMap(({ keys }) =>
      keys.length < 2
        ? []
        : [
            whichRow(
              keys.map((key) => ({ key, patches: sized(key, size) })),
              told.scene,
            ),
          ],
    ),
  }
}

const calendar: readonly string[] = [...months, ...weekdays].flat()

const isBare = (tokens: readonly Token[], at: number): boolean => {
  const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]]
  if (token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text) || before?.text === '$') return false
  if (isWord(before, ...calendar)) return false
  return next?.kind === 'word'
    ? next.start > token.end && isWord(next, ...listed.told.tails)
    : ![':', '%', '"'].includes(next?.text ?? '')
}

/** "wears 13", "asked for 13", "trae el 32": a number, and no amount. */
const isWorn = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 3), at)
  if (before.some((token) => isWord(token, ...listed.told.wearing))) return true
  const marked = isWord(tokens[at - 1], ...listed.told.article) || /^0|^\d\d/.test(tokens[at]?.text ?? '')
  return marked && before.some((token) => isWord(token, ...listed.told.choosing))
}

/** The one number said of one player that nobody of the list has. */
const numberTold = (told: Told): Change => {
  const { tokens, group, scene } = told
  const [key, ...more] = group.refs.flatMap(({ keys }) => keys)
  if (key === undefined || more.length > 0 || scene.draft.rows[key] === undefined) return nothing
  const places = [...tokens.keys()].filter((at) => (at < group.from || at >= group.to) && isBare(tokens, at))
  const [first] = places
  const value = tokens[first ?? -1]?.text
  const sure = places.some((at) => isWorn(tokens, at)) && new Set(places.map((at) => tokens[at]?.text)).size === 1
  if (first === undefined || value === undefined || !sure || rowsByNumber(scene.draft.rows, value).length > 0) return nothing
  const taken = new Set([...span(group.from, group.to), ...places])
  return { ...nothing, patches: [{ path: ['rows', key, 'number'], value }], taken }
}

/** "not Petrov", "en vez de Gordo", "no va como Lupita": the name that was. */
const isOldName = (tokens: readonly Token[], { from }: Group): boolean =>
  tokens.slice(Math.max(0, from - 4), from).some((token) => isWord(token, ...listed.again.refusing, ...listed.changes.not))

/** Another name of one player, where names are spoken of, or the name that was is said to be wrong. */
const nameTold = (told: Told): Change => {
  const { tokens, group, scene } = told
  const [key, ...more] = group.refs.flatMap(({ keys }) => keys)
  const had = scene.draft.rows[key ?? '']?.name
  if (key === undefined || more.length > 0 || had === undefined) return nothing
  const fresh = [...tokens.keys()].filter((at) => {
    const token = tokens[at]
    const outside = at < group.from || at >= group.to
    return (
      outside &&
      token !== undefined &&
      isCapital(token) &&
      token.text.length > 2 &&
      rowsByName(scene.draft.rows, token.text).length === 0
    )
  })
  const near = fresh.flatMap((at) => {
    const name = nearName(had, tokens[at]?.text ?? '')
    return name === null ? [] : [{ at, name }]
  })
  const speaks = tokens.some((token) => isWord(token, ...listed.told.naming))
  const gone = isOldName(tokens, group)
  const [only, ...others] =
    near.length > 0 && (speaks || gone)
      ? near
      : gone
        ? fresh.filter((at) => at > group.to - 1).map((at) => ({ at, name: tokens[at]?.text ?? '' }))
        : []
  if (only === undefined || others.length > 0) return nothing
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: only.name }], taken: span(0, tokens.length) }
}

const clitic = new RegExp(`^${spoken.again.clitic}$`, 'u')

const speaksOfThem = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => isWord(token, ...listed.told.spoken) || clitic.test(token.key))

/** Sentences that put somebody on the list or off it, or speak of cloth and print, are read elsewhere. */
const isElsewhere = (tokens: readonly Token[], trade: ReadonlySet<number>, from: number): boolean =>
  tokens.some((token, at) => trade.has(from + at) || isAdd(token) || isDrop(token))

const moved = (change: Change, by: number): Change => ({ ...change, taken: new Set([...change.taken].map((at) => at + by)) })

const readSentence = (told: Told): Change => {
  const name = nameTold(told)
  if (name.taken.size > 0) return name
  const [size, number] = [sizeTold(told), numberTold(told)]
  return joined([size, number])
}

/**
 * What a sentence tells of whom it names, in any words: one size, number or name that is not theirs yet. Nothing where two of the list are
 * spoken of apart, or two values could be meant. Whoever was named in the sentence before is "him", "her" or "lo" in the next.
 */
export const readToldOf = (tokens: readonly Token[], scene: Scene, trade: ReadonlySet<number>): Change => {
  const found: Change[] = []
  let last: Group | null = null
  for (const { from, to } of sentencesOf(tokens)) {
    const sentence = tokens.slice(from, to)
    const groups = groupsIn(sentence, scene.draft)
    const [own, ...others] = groups
    const before: Group | null = groups.length === 0 && speaksOfThem(sentence) ? last : null
    const group: Group | undefined =
      others.length === 0 ? (own ?? (before === null ? undefined : { ...before, from: 0, to: 0 })) : undefined
    if (group !== undefined && !isElsewhere(sentence, trade, from))
      found.push(moved(readSentence({ tokens: sentence, group, scene, named: own !== undefined }), from))
    last = others.length === 0 ? (own ?? null) : null
  }
  return joined(found)
}
