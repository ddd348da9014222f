import type { Conversation, Earlier, Open, Reading } from './conversation.ts'
import type { Draft, Player } from './draft.ts'
import type { Json, Patch } from './patch.ts'
import { tokensOf } from './read/text/tokens.ts'
import { refsIn } from './read/whom/refs.ts'

type Branch = { readonly [key: string]: Json | undefined }

const isBranch = (value: unknown): value is Branch => typeof value === 'object' && value !== null && !Array.isArray(value)

/** What was said now lies over what was said then, value by value. */
const over = (then: Json | undefined, now: Json | undefined): Json | undefined => {
  if (!isBranch(then) || !isBranch(now)) return now ?? then
  const keys = [...new Set([...Object.keys(then), ...Object.keys(now)])]
  return Object.fromEntries(keys.map((key) => [key, over(then[key], now[key])]))
}

/** Days, money, people, ages and what was agreed belong to the order they were said for and are asked anew. */
const kept = ['team', 'sport', 'use', 'rulebook', 'handOver', 'common', 'garments', 'styles', 'marks'] as const

const again = ({ age: _age, note: _note, ...player }: Player): Player => player

const rowsAgain = (earlier: Earlier): Draft['rows'] => {
  const rows = Object.entries(earlier.draft.rows)
  if (!earlier.single) return Object.fromEntries(rows.map(([key, row]) => [key, again(row)]))
  const named = new Set(refsIn(tokensOf(earlier.text), earlier.draft.rows).flatMap((ref) => ref.keys))
  const wanted = named.size === 0 ? rows : rows.filter(([key]) => named.has(key))
  return Object.fromEntries(wanted.map(([key, row]) => [key, { ...again(row), quantity: 1 }]))
}

/** Rows said in this talk that are not on the list of last time follow it under new keys. */
const withNewRows = (then: Draft['rows'], now: Draft['rows']): Draft['rows'] => {
  const isThere = (row: Player) =>
    Object.values(then).some(({ number, name }) => (row.number === undefined ? row.name === name : row.number === number))
  const last = Math.max(0, ...Object.keys(then).map((key) => Number(key.slice(1))))
  const fresh = Object.values(now).filter((row) => !isThere(row))
  return { ...then, ...Object.fromEntries(fresh.map((row, index) => [`r${last + index + 1}`, row])) }
}

/** How many there were then says nothing of how many there are now. */
const uncounted = (garments: Draft['garments']): Draft['garments'] =>
  Object.fromEntries(Object.entries(garments).map(([id, { count: _count, ...wish }]) => [id, wish]))

/** What the draft becomes: the wishes and the list of the earlier order under what was said in this talk already. */
export const takenOver = ({ draft }: Pick<Conversation, 'draft'>, earlier: Earlier): readonly Patch[] => {
  const then = { ...earlier.draft, garments: uncounted(earlier.draft.garments) }
  const rows = rowsAgain(earlier)
  const tally = earlier.single ? {} : { ...then.tally, ...draft.tally }
  return [
    { path: ['from'], value: earlier.from },
    ...kept.map((key): Patch => ({ path: [key], value: over(then[key], draft[key]) })),
    { path: ['rows'], value: withNewRows(rows, draft.rows) },
    { path: ['tally'], value: tally },
    ...(earlier.single ? [{ path: ['count'], value: null } as const] : []),
  ]
}

const asIs = (key: string): Reading => ({ value: key, kind: 'word', patches: [{ path: ['agreed', key], value: true }] })

const rowReadings = (rows: Draft['rows'], patchesOf: (key: string) => readonly Patch[]): readonly Reading[] =>
  Object.keys(rows).map((key, index) => ({ value: String(index + 1), kind: 'row', patches: patchesOf(key) }))

/** Who leaves, and whether sizes still fit; of a single piece only whose it is, where that was not said. */
export const askedAgain = (earlier: Earlier): readonly Open[] => {
  const rows = rowsAgain(earlier)
  const keys = Object.keys(rows)
  if (keys.length === 0) return []
  if (earlier.single) {
    if (keys.length === 1) return []
    const others = (key: string) => keys.filter((one) => one !== key).map((one): Patch => ({ path: ['rows', one], value: null }))
    return [{ about: 'whose', path: '/roster', quote: earlier.text.slice(0, 80), readings: rowReadings(rows, others) }]
  }
  const leaves = rowReadings(rows, (key) => [{ path: ['rows', key], value: null }])
  return [
    { about: 'leaving', path: '/roster', quote: earlier.without.join(' '), readings: [asIs('nobody-leaves'), ...leaves] },
    { about: 'sizes-again', path: '/roster', quote: '', readings: [asIs('sizes-as-before')] },
  ]
}
