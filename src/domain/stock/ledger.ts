/**
 * Stock as moves. `amount` is what a move does to the free pile, in the item's own unit (pieces, µm of roll): a reservation takes
 * from it and stands to the order's name, a use is a release followed by taking away. So at every moment
 * reserved + free + used = received − written off.
 */
export const moveKinds = ['seed', 'arrive', 'count', 'reserve', 'release', 'use', 'write-off'] as const
export type MoveKind = (typeof moveKinds)[number]

export type StockChange = {
  readonly item: string
  readonly lot: string
  readonly amount: number
  readonly kind: MoveKind
  readonly orderId: string | null
}

/** What an order still wants of an item, whether it is reserved or not; `due` (epoch minutes) says whose turn comes first. */
export type Need = { readonly orderId: string; readonly item: string; readonly amount: number; readonly due: number }

export type Pile = {
  readonly free: number
  readonly reserved: number
  readonly used: number
  readonly received: number
  readonly writtenOff: number
}

const empty: Pile = { free: 0, reserved: 0, used: 0, received: 0, writtenOff: 0 }

/** What one move does to the five piles. A count that finds more counts as received, one that finds less as written off. */
const moved = (pile: Pile, { kind, amount }: StockChange): Pile => {
  const free = pile.free + amount
  switch (kind) {
    case 'seed':
    case 'arrive':
      return { ...pile, free, received: pile.received + amount }
    case 'count':
      return amount < 0
        ? { ...pile, free, writtenOff: pile.writtenOff - amount }
        : { ...pile, free, received: pile.received + amount }
    case 'reserve':
    case 'release':
      return { ...pile, free, reserved: pile.reserved - amount }
    case 'use':
      return { ...pile, free, used: pile.used - amount }
    case 'write-off':
      return { ...pile, free, writtenOff: pile.writtenOff - amount }
  }
}

/** The piles of every item. */
export const pilesOf = (moves: readonly StockChange[]): ReadonlyMap<string, Pile> => {
  const piles = new Map<string, Pile>()
  for (const move of moves) piles.set(move.item, moved(piles.get(move.item) ?? empty, move))
  return piles
}

export const pileOf = (moves: readonly StockChange[], item: string): Pile => pilesOf(moves).get(item) ?? empty

const sumBy = <T>(rows: readonly T[], key: (row: T) => string, amount: (row: T) => number): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>()
  for (const row of rows) sums.set(key(row), (sums.get(key(row)) ?? 0) + amount(row))
  return sums
}

export type LotAmount = { readonly lot: string; readonly amount: number }

const positive = (sums: ReadonlyMap<string, number>): readonly LotAmount[] =>
  [...sums].filter(([, amount]) => amount > 0).map(([lot, amount]) => ({ lot, amount }))

/** What is free of an item, by lot. */
export const freeLots = (moves: readonly StockChange[], item: string): readonly LotAmount[] =>
  positive(
    sumBy(
      moves.filter((move) => move.item === item),
      (move) => move.lot,
      (move) => move.amount,
    ),
  )

const isReservation = ({ kind }: StockChange): boolean => kind === 'reserve' || kind === 'release'

/** What an order has reserved of an item, by lot. */
export const heldLots = (moves: readonly StockChange[], of: Pick<Need, 'orderId' | 'item'>): readonly LotAmount[] =>
  positive(
    sumBy(
      moves.filter((move) => move.item === of.item && move.orderId === of.orderId && isReservation(move)),
      (move) => move.lot,
      (move) => -move.amount,
    ),
  )

export const total = (lots: readonly LotAmount[]): number => lots.reduce((sum, { amount }) => sum + amount, 0)

/** What an order still lacks of an item: its need less what it has reserved; 0 when all is there. */
export const lacking = (moves: readonly StockChange[], need: Need): number =>
  Math.max(0, need.amount - total(heldLots(moves, need)))
