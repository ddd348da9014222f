import { pointer } from '../result/result.ts'
import type { Conversation, Open } from './conversation.ts'
import type { Draft } from './draft.ts'
import type { Known, KnownRow } from './known.ts'

const fold = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()

const asIs = (key: string) => ({ value: 'as-is', kind: 'word', patches: [{ path: ['agreed', key], value: true }] }) as const

const lines = (order: Known, rows: readonly KnownRow[]): string =>
  pointer(
    'roster',
    order.roster.findIndex((row) => row.line === rows[0]?.line),
  )

/** Groups of two rows or more with the same key, in order of first appearance. */
const groups = (
  rows: readonly KnownRow[],
  keyOf: (row: KnownRow) => string | undefined,
): readonly (readonly [string, readonly KnownRow[]])[] => {
  const found = new Map<string, KnownRow[]>()
  for (const row of rows) {
    const key = keyOf(row)
    if (key !== undefined) found.set(key, [...(found.get(key) ?? []), row])
  }
  return [...found.entries()].filter(([, members]) => members.length > 1)
}

/** One garment's rows: the same player has the same number on home and away, which is no duplicate. */
const firstGarment = (order: Known): readonly KnownRow[] => {
  const garment = order.roster[0]?.garment
  return order.roster.filter((row) => row.garment === garment)
}

const duplicateNumbers = (order: Known, draft: Draft): readonly Open[] =>
  groups(firstGarment(order), (row) => row.number)
    .filter(([number]) => !draft.agreed[`duplicate-number:${number}`])
    .map(([number, rows]) => ({
      about: 'duplicate-number',
      path: `${lines(order, rows)}/number`,
      quote: number,
      readings: [asIs(`duplicate-number:${number}`)],
    }))

const sameSurnames = (order: Known, draft: Draft): readonly Open[] =>
  groups(firstGarment(order), (row) => (row.name === undefined ? undefined : fold(row.name)))
    .filter(([name]) => !draft.agreed[`same-surname:${name}`])
    .map(([name, rows]) => ({
      about: 'same-surname',
      path: `${lines(order, rows)}/name`,
      quote: rows[0]?.name ?? name,
      readings: [asIs(`same-surname:${name}`)],
    }))

/** Pieces of a garment on the roster. */
const pieces = (order: Known, garment: string | undefined): number =>
  order.roster
    .filter((row) => garment === undefined || row.garment === garment)
    .reduce((sum, row) => sum + (row.quantity ?? 1), 0)

const countDiffers = (order: Known, draft: Draft): readonly Open[] => {
  const garment = order.roster[0]?.garment
  const said = draft.count ?? draft.garments[garment ?? '']?.count
  const rows = pieces(order, order.roster[0]?.garment)
  if (said === undefined || order.roster.length === 0 || said === rows || said === pieces(order, undefined)) return []
  if (draft.agreed[`count:${said}:${rows}`]) return []
  return [
    {
      about: 'count',
      path: '/roster/length',
      quote: String(said),
      readings: [
        {
          value: String(rows),
          kind: 'count',
          patches: [
            { path: ['agreed', `count:${said}:${rows}`], value: true },
            { path: ['count'], value: null },
          ],
        },
        { value: String(said), kind: 'count', patches: [{ path: ['agreed', `count:${said}:${rows}`], value: true }] },
      ],
    },
  ]
}

/** What the roster itself raises: a number twice, a surname twice, a count that differs from what was said. */
export const raisedBy = (conversation: Pick<Conversation, 'draft'>, order: Known): readonly Open[] => [
  ...duplicateNumbers(order, conversation.draft),
  ...sameSurnames(order, conversation.draft),
  ...countDiffers(order, conversation.draft),
]
