import { rowFacts } from './ask.ts'
import { leavesOf } from './facts.ts'
import type { Known, KnownDecoration, KnownRow } from './known.ts'
import type { Changed } from './replies.ts'

const told = (row: KnownRow): string =>
  [row.number === undefined ? '' : `#${row.number}`, row.name ?? '', row.size ?? ''].filter((part) => part !== '').join(' ')

const owner = (order: Known, path: string) => {
  const index = /^\/roster\/(\d+)\//.exec(path)?.[1]
  const row = index === undefined ? undefined : order.roster[Number(index)]
  return row === undefined ? null : rowFacts(row)
}

const isHidden = (path: string): boolean => /\/(language|by|kind|garment|on\/\d+|without\/\d+|shape.*)$/.test(path)

type Pair = { readonly was: KnownRow; readonly now: KnownRow }

const likenesses: readonly ((a: KnownRow, b: KnownRow) => boolean)[] = [
  (a, b) => a.number === b.number && a.name === b.name,
  (a, b) => a.name !== undefined && a.name === b.name,
  (a, b) => a.name === undefined && b.name === undefined && a.number !== undefined && a.number === b.number,
  (a, b) => a.number !== undefined && a.number === b.number && a.size === b.size,
  (a, b) => a.number === undefined && a.name === undefined && b.number === undefined && a.size === b.size && a.fit === b.fit,
]

/** Lines before and after that are the same player's, each once, the surest first. */
const pairsOf = (before: Known, after: Known): readonly Pair[] => {
  const pairs: Pair[] = []
  const left = { was: new Set(before.roster), now: new Set(after.roster) }
  for (const isLike of likenesses)
    for (const was of left.was) {
      const now = [...left.now].find((row) => row.garment === was.garment && isLike(was, row))
      if (now === undefined) continue
      pairs.push({ was, now })
      left.was.delete(was)
      left.now.delete(now)
    }
  return pairs
}

const rowFields = ['number', 'name', 'size', 'fit'] as const

/** What became different in a line that stays while others come or go: its place has moved. */
const differing = ({ was, now }: Pair): readonly Changed[] =>
  rowFields
    .filter((field) => was[field] !== undefined && was[field] !== now[field])
    .map((field) => ({ path: `/roster/row/${field}`, was: was[field] ?? null, now: now[field] ?? null, row: rowFacts(now) }))

const rowChanges = (before: Known, after: Known): readonly Changed[] => {
  const pairs = pairsOf(before, after)
  const [kept, found] = [new Set(pairs.map(({ was }) => was)), new Set(pairs.map(({ now }) => now))]
  return [
    ...before.roster
      .filter((row) => !kept.has(row))
      .map((row) => ({ path: '/roster/row', was: told(row), now: null, row: rowFacts(row) })),
    ...after.roster
      .filter((row) => !found.has(row))
      .map((row) => ({ path: '/roster/row', was: null, now: told(row), row: rowFacts(row) })),
    ...pairs.flatMap(differing),
  ]
}

/** A line that now has both another number and another name holds another player: lines have moved. */
const hasMoved = (before: Known, after: Known): boolean =>
  before.roster.length !== after.roster.length ||
  before.roster.some((row, index) => {
    const now = after.roster[index]
    return now !== undefined && row.number !== now.number && row.name !== now.name
  })

/** Parts of a decoration that may come and go while it stays, each with what tells it: the stones' size, the vinyl's colour. */
const parts: Readonly<Record<string, (decoration: KnownDecoration) => string | null>> = {
  stones: ({ layers }) => layers?.find((layer) => layer.kind === 'stones')?.size ?? null,
  shadow: ({ layers }) => colourOf(layers, 'shadow'),
  surround: ({ layers }) => colourOf(layers, 'surround'),
}

const colourOf = (layers: KnownDecoration['layers'], shape: 'shadow' | 'surround'): string | null =>
  layers?.find((layer) => layer.kind === 'vinyl' && typeof layer.shape === 'object' && shape in layer.shape)?.colour ?? null

const partsThatCameOrWent = (was: KnownDecoration, now: KnownDecoration): readonly Changed[] =>
  Object.entries(parts).flatMap(([part, tell]) => {
    const [had, has] = [tell(was), tell(now)]
    const change = { path: `/decorations/${part}`, was: had, now: has, row: null, place: was.place ?? null }
    return (had === null) === (has === null) ? [] : [change]
  })

/** What is no more: a garment, a thing at a place; and stones, shadows and outlines that came or went. */
const lessAndMore = (before: Known, after: Known): readonly Changed[] => {
  const garments = before.garments.filter(({ id }) => !after.garments.some((other) => other.id === id))
  const single = after.garments.length < 2
  const twin = (was: KnownDecoration) =>
    after.decorations.find(
      ({ place, content, on }) =>
        place === was.place &&
        content?.kind === was.content?.kind &&
        (single || (on ?? []).some((id) => (was.on ?? []).includes(id))),
    )
  return [
    ...garments.map(({ id }) => ({ path: '/garments/gone', was: id, now: null, row: null })),
    ...before.decorations.flatMap((was): readonly Changed[] => {
      const now = twin(was)
      if (now !== undefined) return partsThatCameOrWent(was, now)
      return [{ path: '/decorations/gone', was: was.content?.kind ?? null, now: null, row: null, place: was.place ?? null }]
    }),
  ]
}

/** What a line goes without, or has again, of what is pressed: "name", "number". */
const bareLines = (before: Known, after: Known): readonly Changed[] => {
  const kindsOf = (order: Known, row: KnownRow | undefined): readonly string[] =>
    order.decorations.flatMap(({ id, content }) =>
      row?.without?.includes(id) === true && content !== undefined ? [content.kind] : [],
    )
  return pairsOf(before, after).flatMap(({ was, now }): readonly Changed[] => {
    const [had, has] = [kindsOf(before, was), kindsOf(after, now)]
    const at = { path: '/roster/without', row: rowFacts(now) }
    return [
      ...[...new Set(has)].filter((kind) => !had.includes(kind)).map((kind) => ({ ...at, was: null, now: kind })),
      ...[...new Set(had)].filter((kind) => !has.includes(kind)).map((kind) => ({ ...at, was: kind, now: null })),
    ]
  })
}

/** What differs between two readings of an order in what was known before: for the customer to see that just this was changed. */
export const changesBetween = (before: Known, after: Known, assumed: ReadonlySet<string>): readonly Changed[] => {
  const earlier = new Map(leavesOf(before).map((leaf) => [leaf.key, leaf]))
  const moved = hasMoved(before, after)
  const rows = moved && before.roster.length > 0 ? rowChanges(before, after) : []
  const others = leavesOf(after).flatMap(({ key, path, value }) => {
    if (moved && path.startsWith('/roster')) return []
    const was = earlier.get(key)
    if (was === undefined || was.value === value || isHidden(path) || assumed.has(was.path)) return []
    return [{ path, was: was.value, now: value, row: owner(after, path) }]
  })
  return [...rows, ...lessAndMore(before, after), ...bareLines(before, after), ...others]
}
