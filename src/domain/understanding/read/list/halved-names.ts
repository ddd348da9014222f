import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import type { RowLine } from './row-line.ts'

type Halves = readonly [string, string]
type Named = { readonly key: string; readonly halves: Halves }

const rowsWith = ({ rows }: Draft, lines: readonly RowLine[]): readonly Named[] =>
  lines.flatMap(({ number, name, halves }): readonly Named[] => {
    const found = Object.entries(rows).find(([, row]) => row.name === name && (number === undefined || row.number === number))
    return found === undefined || halves === undefined ? [] : [{ key: found[0], halves }]
  })

/** The ways to write a name of two cells, for a surname in the first or in the second. */
const ways: readonly ((halves: Halves) => string)[] = [
  ([first, second]) => `${second} ${first}`,
  ([first, second]) => `${first} ${second}`,
  ([first]) => first,
  ([, second]) => second,
]

/**
 * "4, Smith, John, M" without a heading may be John Smith, or a Smith whose surname is John: all such lines are asked about at once,
 * in the words of the first. They stand as they were written meanwhile.
 */
export const askHalves = (draft: Draft, lines: readonly RowLine[]): readonly Open[] => {
  const named = rowsWith(draft, lines)
  const [first] = named
  if (first === undefined) return []
  const readings = ways.map(
    (way) =>
      ({
        value: way(first.halves),
        kind: 'text',
        patches: named.map(({ key, halves }): Patch => ({ path: ['rows', key, 'name'], value: way(halves) })),
      }) as const,
  )
  return [{ about: 'name-order', path: '/roster', quote: first.halves.join(', '), readings }]
}
