import type { Row } from '../../order/order.ts'
import type { Shop } from '../../shop/shop.ts'
import type { Draft, Player } from '../draft.ts'
import type { KnownRow } from '../known.ts'
import { type ComposedDecoration, composeExtra } from './decorations.ts'
import { playersGarments } from './garments.ts'
import { lastName } from './last-name.ts'

export type ComposedRow = {
  readonly key: string
  readonly known: KnownRow
  readonly assumed: readonly string[]
  readonly missing: readonly string[]
}

const babySizes: readonly string[] = ['2T', '3T', '4T', '5T']
/** These are worn by children who may be under three, whatever was said of the team as a whole. */
const smallestSizes: readonly string[] = ['2T', '3T']

/** Letters without a cut are adult sizes, unless the team is known to be children: then it must be asked. */
const usualFit = (draft: Draft): Row['fit'] | null =>
  draft.ages === '3-12' || draft.ages === 'under-3' || draft.ages === 'mixed' ? null : 'men'

const fitOf = (draft: Draft, player: Player, garment: string) => {
  const size = player.size ?? draft.common?.size
  if (size !== undefined && babySizes.includes(size)) return { fit: 'toddler', said: true } as const
  const said = player.fit ?? draft.common?.fit ?? draft.garments[garment]?.fit
  return said === undefined ? { fit: usualFit(draft), said: false } : { fit: said, said: true }
}

/** What was said of all is asked of those whose size speaks against it. */
const isDoubtful = ({ agreed }: Draft, age: Row['age'], size: string | undefined): boolean => {
  if (agreed[`ages:${age}`] || size === undefined) return false
  return (age === '13-up' && babySizes.includes(size)) || (age === '3-12' && smallestSizes.includes(size))
}

const ageOf = (draft: Draft, player: Player): Row['age'] => {
  if (player.age !== undefined) return player.age
  if (draft.ages === undefined || draft.ages === 'mixed') return 'unknown'
  return isDoubtful(draft, draft.ages, player.size ?? draft.common?.size) ? 'unknown' : draft.ages
}

type Composing = { readonly draft: Draft; readonly decorations: readonly ComposedDecoration[] }

type Place = { readonly key: string; readonly line: number; readonly garment: string }

const extrasOf = (shop: Shop, draft: Draft, { player, garment }: { player: Player; garment: string }) =>
  Object.entries(player.extras ?? {}).flatMap(([id, mark]) => {
    const one = composeExtra(shop, draft, { id, mark, garment })
    return one === null ? [] : [one]
  })

const kept = (draft: Draft, player: Player) => ({
  ...(player.number === undefined ? {} : { number: player.number }),
  ...(player.name === undefined ? {} : { name: draft.common?.names === 'last' ? lastName(player.name) : player.name }),
  ...(player.note === undefined ? {} : { note: player.note }),
})

/** The decorations that a player goes without: told by their id, or by what they are of ("no name on 12's"). */
const withoutOf = (decorations: readonly ComposedDecoration[], { without = [] }: Player, garment: string): readonly string[] =>
  decorations.flatMap(({ known: { id, content, on } }) =>
    (without.includes(id) || without.includes(content?.kind ?? '')) && (on ?? []).includes(garment) ? [id] : [],
  )

const composeRow = (
  shop: Shop,
  { draft, decorations }: Composing,
  { player, place }: { player: Player; place: Place },
): ComposedRow => {
  const { fit, said } = fitOf(draft, player, place.garment)
  const size = player.size ?? draft.common?.size ?? (draft.later.sizes ? 'later' : undefined)
  const age = ageOf(draft, player)
  const without = withoutOf(decorations, player, place.garment)
  const extras = extrasOf(shop, draft, { player, garment: place.garment })
  const known: KnownRow = {
    line: place.line,
    garment: place.garment,
    ...(fit === null ? {} : { fit }),
    ...(size === undefined ? {} : { size }),
    quantity: player.quantity ?? 1,
    age,
    ...(extras.length === 0 ? {} : { extras: extras.map((extra) => extra.known) }),
    ...kept(draft, player),
    ...(without.length === 0 ? {} : { without: [...without] }),
  }
  return {
    key: place.key,
    known,
    assumed: [
      ...(said ? [] : ['/fit']),
      ...(player.quantity === undefined ? ['/quantity'] : []),
      ...(player.garment === undefined ? ['/garment'] : []),
      ...(age === 'unknown' ? ['/age'] : []),
      ...extras.flatMap((extra, index) => extra.assumed.map((path) => `/extras/${index}${path}`)),
    ],
    missing: [
      ...(fit === null ? ['/fit'] : []),
      ...(size === undefined ? ['/size'] : []),
      ...extras.flatMap((extra, index) => extra.missing.map((path) => `/extras/${index}${path}`)),
    ],
  }
}

/** Sizes counted without names are rows of their own, unless the players' rows carry the sizes already. */
const tallied = (draft: Draft): readonly (readonly [string, Player])[] => {
  const garments = playersGarments(draft)
  const rows = Object.values(draft.rows)
  const covered = (garment: string | undefined): boolean => {
    const at = garment ?? garments[0]
    return rows.some((row) => (row.garment ?? garments[0]) === at || (row.garment === undefined && garments.includes(at ?? '')))
  }
  const counted = Object.entries(draft.tally).filter(([, entry]) => !covered(entry.garment))
  const there = (id: string): boolean => covered(id) || counted.some(([, entry]) => (entry.garment ?? garments[0]) === id)
  return [...counted, ...allAlike(draft).filter(([id]) => !there(id))]
}

/** Garments of which only the count and one size were said are one row. */
const allAlike = (draft: Draft): readonly (readonly [string, Player])[] => {
  const only = Object.keys(draft.garments).length === 1
  return Object.entries(draft.garments).flatMap(([id, wish]): readonly (readonly [string, Player])[] => {
    const quantity = wish.count ?? (only ? draft.count : undefined)
    const size = wish.size ?? draft.common?.size
    return quantity === undefined || size === undefined ? [] : [[id, { garment: id, quantity, size }]]
  })
}

/**
 * The roster of the document: a player without a garment has a row for each of the players' garments, garment by garment, so
 * that the first garment's lines are the lines as they were pasted.
 */
export const composeRoster = (shop: Shop, { draft, decorations }: Composing): readonly ComposedRow[] => {
  const garments = playersGarments(draft)
  const [first = 'jersey', ...others] = garments
  const players = [...Object.entries(draft.rows), ...tallied(draft)]
  const list = [
    ...players.map(([key, player]) => ({ key, player, garment: player.garment ?? first })),
    ...others.flatMap((garment) =>
      players.filter(([, player]) => player.garment === undefined).map(([key, player]) => ({ key, player, garment })),
    ),
  ]
  return list.map(({ key, player, garment }, index) =>
    composeRow(shop, { draft, decorations }, { player, place: { key, line: index + 1, garment } }),
  )
}
