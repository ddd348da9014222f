import { listed } from '../../words/languages.ts'
import type { Spot } from '../../words/word-list.ts'
import type { Content, Item } from './items.ts'

type Off = Extract<Item, { kind: 'off' }>
/** A stretch of items that says what stays off, its end not counted in; `before`: how many in front of it belong to it. */
type Found = { readonly off: Off; readonly to: number; readonly before?: number }

const said = listed.leftOff
const most = 5

const ends: ReadonlySet<Item['kind']> = new Set(['comma', 'stop'])

const isSmall = (item: Item | undefined, words: readonly string[]): boolean =>
  item?.kind === 'of' || item?.kind === 'in' || (item?.kind === 'other' && words.includes(item.key))

/** "no", "without"; "names instead of numbers" refuses nothing by itself. */
const refuses = (item: Item | undefined): boolean =>
  (item?.kind === 'no' || item?.kind === 'other') && said.refusing.includes(item.key)

const joins = (item: Item | undefined): boolean =>
  item?.kind === 'and' || item?.kind === 'no' || (item?.kind === 'other' && listed.things.or.includes(item.key))

const skip = (items: readonly Item[], from: number, words: readonly string[]): number => {
  let at = from
  while (at < from + most && isSmall(items[at], words)) at += 1
  return at
}

/** Things of one kind that follow each other, joined by "and" or "or"; `to` is behind the last. */
const run = <Kind extends 'content' | 'place'>(
  items: readonly Item[],
  from: number,
  { kind, words }: { readonly kind: Kind; readonly words: readonly string[] },
): { readonly all: readonly Extract<Item, { kind: Kind }>[]; readonly to: number } => {
  const all: Extract<Item, { kind: Kind }>[] = []
  const isOne = (item: Item | undefined): item is Extract<Item, { kind: Kind }> => item?.kind === kind
  let to = from
  for (;;) {
    const at = skip(items, all.length > 0 && joins(items[to]) ? to + 1 : to, words)
    const one = items[at]
    if (!isOne(one) || (all.length > 0 && !joins(items[to]))) return { all, to }
    all.push(one)
    to = at + 1
  }
}

/** "above the number" says where names stand, and is no part of the cloth. */
const spotsOf = (places: readonly Extract<Item, { kind: 'place' }>[]): readonly Spot[] =>
  places.map(({ id }) => id).filter((id) => id !== 'above' && id !== 'below')

const offFrom = (
  items: readonly Item[],
  { from, to }: { readonly from: number; readonly to: number },
  what: { readonly contents: readonly Content[]; readonly spots: readonly Spot[]; readonly key: string; readonly both?: boolean },
): Off => ({ kind: 'off', ...what, from: items[from]?.from ?? 0, to: items[to - 1]?.to ?? 0 })

/** "Al frente sin número", "on the front no numbers": a place that opens the clause of a refusal. */
const placesAhead = (items: readonly Item[], from: number): readonly Item[] => {
  const start = items.slice(0, from).findLastIndex(({ kind }) => ends.has(kind) || kind === 'and') + 1
  const before = items.slice(start, from)
  const only = before.every((item) => item.kind === 'place' || isSmall(item, said.at))
  return only && before.some(({ kind }) => kind === 'place') ? before : []
}

/** "no numbers on the front", "don't put names on the back", "without names or numbers on the sleeves". */
const refused = (items: readonly Item[], from: number): Found | null => {
  if (!refuses(items[from])) return null
  const start = skip(items, from + 1, said.between)
  const contents = run(items, start, { kind: 'content', words: said.between })
  const [first] = contents.all
  if (first === undefined) return null
  const places = run(items, contents.to, { kind: 'place', words: said.at })
  const ahead = places.all.length > 0 ? [] : placesAhead(items, from)
  const plainly = items.slice(from + 1, start).every(({ key }) => listed.things.articles.includes(key))
  if (places.all.length + ahead.length === 0 && plainly && items[from]?.kind === 'no') return null
  const what = {
    contents: contents.all.map(({ id }) => id),
    spots: spotsOf([...places.all, ...ahead.flatMap((item) => (item.kind === 'place' ? [item] : []))]),
    key: first.key,
  }
  const to = places.all.length > 0 ? places.to : contents.to
  return { off: offFrom(items, { from, to }, what), to, before: ahead.length }
}

/** "on neither", "en ninguna de las dos": none of the garments, and behind it what else is said of them. */
const nowhereAt = (items: readonly Item[], from: number): number | null => {
  const words = [...said.at, ...said.beside, ...said.between]
  const first = skip(items, from, words)
  const at =
    items[first]?.kind === 'no' && !said.nowhere.includes(items[first]?.key ?? '') ? skip(items, first + 1, words) : first
  const none = items[at]
  const told = none !== undefined && at > from && ['no', 'other'].includes(none.kind) && said.nowhere.includes(none.key)
  return told ? at + 1 : null
}

/** "Names on neither", "nombres en ninguna de las dos": a refusal behind what it refuses. */
const refusedBehind = (items: readonly Item[], from: number): Found | null => {
  const contents = run(items, from, { kind: 'content', words: said.between })
  const [first] = contents.all
  const to = first === undefined || items[from]?.kind !== 'content' ? null : nowhereAt(items, contents.to)
  if (first === undefined || to === null || said.open.includes(items[to - 1]?.key ?? '')) return null
  return {
    off: offFrom(items, { from, to }, { contents: contents.all.map(({ id }) => id), spots: [], key: first.key, both: true }),
    to,
  }
}

/** "No names on either", "sin nombres en ninguna". */
const refusedEverywhere = (items: readonly Item[], from: number): Found | null => {
  if (!refuses(items[from])) return null
  const contents = run(items, skip(items, from + 1, said.between), { kind: 'content', words: said.between })
  const [first] = contents.all
  const to = first === undefined ? null : nowhereAt(items, contents.to)
  if (first === undefined || to === null) return null
  return {
    off: offFrom(items, { from, to }, { contents: contents.all.map(({ id }) => id), spots: [], key: first.key, both: true }),
    to,
  }
}

/** "leave the names off", "take the numbers off the front". */
const taken = (items: readonly Item[], from: number): Found | null => {
  if (!isSmall(items[from], said.leaving)) return null
  const contents = run(items, from + 1, { kind: 'content', words: said.between })
  const [first] = contents.all
  const off = items[contents.to]
  if (first === undefined || !isSmall(off, said.off)) return null
  const places = run(items, contents.to + 1, { kind: 'place', words: said.at })
  const what = { contents: contents.all.map(({ id }) => id), spots: spotsOf(places.all), key: first.key }
  const to = places.all.length > 0 ? places.to : contents.to + 1
  return { off: offFrom(items, { from, to }, what), to }
}

const isBlank = ({ kind, key }: Item): boolean => ['other', 'no', 'class'].includes(kind) && said.blank.includes(key)

const isBeside = (item: Item): boolean =>
  item.kind === 'place' ||
  isBlank(item) ||
  ['no', 'in', 'of', 'and', 'only', 'with'].includes(item.kind) ||
  isSmall(item, said.beside)

/** "leave the front blank", "adelante no lleva nada": a clause of a place and of nothing on it. */
const blank = (items: readonly Item[], from: number): Found | null => {
  if (from > 0 && !ends.has(items[from - 1]?.kind ?? 'stop') && items[from - 1]?.kind !== 'and') return null
  const stop = items.findIndex((item, at) => at >= from && ends.has(item.kind))
  const clause = items.slice(from, stop < 0 ? items.length : stop)
  const places = clause.flatMap((item) => (item.kind === 'place' ? [item] : []))
  if (places.length === 0 || !clause.some(isBlank) || !clause.every(isBeside)) return null
  const to = from + clause.length
  return { off: offFrom(items, { from, to }, { contents: [], spots: spotsOf(places), key: '' }), to }
}

const colons: readonly string[] = [':', '-', '–', '=']

/** "Back: nothing", "espalda: ninguno": a place that is labelled as free, said as a clause of its own. */
const labelledFree = (items: readonly Item[], at: number): boolean => {
  const [before, sign, word, next] = [items[at - 1], items[at], items[at + 1], items[at + 2]]
  const free = word !== undefined && (isBlank(word) || said.none.includes(word.key))
  return before?.kind === 'place' && colons.includes(sign?.key ?? '') && free && (next === undefined || ends.has(next.kind))
}

const withoutLabels = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item, at): readonly Item[] => {
    if (labelledFree(items, at)) return []
    const { from, to } = item
    return labelledFree(items, at - 1) ? [{ kind: 'other', from, to, key: said.blank[0] ?? item.key }] : [item]
  })

/** The items with what stays off as one item each. */
export const withLeftOff = (told: readonly Item[]): readonly Item[] => {
  const items = withoutLabels(told)
  const found: Item[] = []
  let at = 0
  while (at < items.length) {
    const off =
      blank(items, at) ?? refusedEverywhere(items, at) ?? refusedBehind(items, at) ?? refused(items, at) ?? taken(items, at)
    const item = items[at]
    if (off !== null) found.splice(found.length - (off.before ?? 0), off.before ?? 0, off.off)
    else if (item !== undefined) found.push(item)
    at = off?.to ?? at + 1
  }
  return found
}
