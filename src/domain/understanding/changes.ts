import { rowFacts } from './ask.ts'
import { leavesOf } from './facts.ts'
import type { Known, KnownRow } from './known.ts'
import type { Changed } from './replies.ts'

const told = (row: KnownRow): string =>
  [row.number === undefined ? '' : `#${row.number}`, row.name ?? '', row.size ?? ''].filter((part) => part !== '').join(' ')

const owner = (order: Known, path: string) => {
  const index = /^\/roster\/(\d+)\//.exec(path)?.[1]
  const row = index === undefined ? undefined : order.roster[Number(index)]
  return row === undefined ? null : rowFacts(row)
}

const isHidden = (path: string): boolean => /\/(language|by|kind|garment|on\/\d+|shape.*)$/.test(path)

const sameRow = (a: KnownRow, b: KnownRow): boolean =>
  a.garment === b.garment && ((a.number ?? a.name) === (b.number ?? b.name) || (a.name !== undefined && a.name === b.name))

const rowFields = ['number', 'name', 'size', 'fit'] as const

/** What became different in the rows that stay while others come or go: their lines have moved. */
const stayed = (before: Known, after: Known): readonly Changed[] =>
  after.roster.flatMap((row) => {
    const was = before.roster.find((other) => sameRow(row, other))
    if (was === undefined) return []
    return rowFields
      .filter((field) => was[field] !== undefined && was[field] !== row[field])
      .map((field) => ({ path: `/roster/row/${field}`, was: was[field] ?? null, now: row[field] ?? null, row: rowFacts(row) }))
  })

const rowChanges = (before: Known, after: Known): readonly Changed[] => {
  const gone = before.roster.filter((row) => !after.roster.some((other) => sameRow(row, other)))
  const come = after.roster.filter((row) => !before.roster.some((other) => sameRow(row, other)))
  return [
    ...gone.map((row) => ({ path: '/roster/row', was: told(row), now: null, row: rowFacts(row) })),
    ...come.map((row) => ({ path: '/roster/row', was: null, now: told(row), row: rowFacts(row) })),
    ...stayed(before, after),
  ]
}

/** What differs between two readings of an order in what was known before: for the customer to see that just this was changed. */
export const changesBetween = (before: Known, after: Known, assumed: ReadonlySet<string>): readonly Changed[] => {
  const earlier = new Map(leavesOf(before).map((leaf) => [leaf.key, leaf]))
  const moved = before.roster.length !== after.roster.length
  const rows = moved && before.roster.length > 0 ? rowChanges(before, after) : []
  const others = leavesOf(after).flatMap(({ key, path, value }) => {
    if (moved && path.startsWith('/roster')) return []
    const was = earlier.get(key)
    if (was === undefined || was.value === value || isHidden(path) || assumed.has(was.path)) return []
    return [{ path, was: was.value, now: value, row: owner(after, path) }]
  })
  return [...rows, ...others]
}
