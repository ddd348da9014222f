import { freeLots, heldLots, type LotAmount, lacking, type Need, pileOf, type StockChange, total } from './ledger.ts'

type Taken = readonly LotAmount[]

/** From one lot where one covers it (the smallest that does, so that large lots stay whole), else from the largest on. */
const fromLots = (lots: readonly LotAmount[], wanted: number): Taken => {
  const bySize = lots.toSorted((a, b) => a.amount - b.amount || a.lot.localeCompare(b.lot))
  const whole = bySize.find(({ amount }) => amount >= wanted)
  if (whole !== undefined) return wanted > 0 ? [{ lot: whole.lot, amount: wanted }] : []
  const taken: LotAmount[] = []
  let rest = wanted
  for (const { lot, amount } of bySize.toReversed()) {
    const some = Math.min(rest, amount)
    if (some > 0) taken.push({ lot, amount: some })
    rest -= some
  }
  return taken
}

const change =
  (of: Pick<StockChange, 'item' | 'orderId' | 'kind'>, sign: 1 | -1) =>
  ({ lot, amount }: LotAmount): StockChange => ({
    ...of,
    lot,
    amount: sign * amount,
  })

const inTurn = (needs: readonly Need[]): readonly Need[] =>
  needs.toSorted((a, b) => a.due - b.due || a.orderId.localeCompare(b.orderId) || a.item.localeCompare(b.item))

/**
 * Reserves what is free for whoever lacks it, the earliest due first; one lot a team where one lot covers it. What nobody can be
 * given stays a need: that is the shortage.
 */
export const allot = (moves: readonly StockChange[], needs: readonly Need[]): readonly StockChange[] => {
  const made: StockChange[] = []
  for (const need of inTurn(needs)) {
    const now = [...moves, ...made]
    const taken = fromLots(freeLots(now, need.item), lacking(now, need))
    made.push(...taken.map(change({ item: need.item, orderId: need.orderId, kind: 'reserve' }, -1)))
  }
  return made
}

/** Gives back what an order holds of an item beyond an amount. */
export const release = (
  moves: readonly StockChange[],
  of: Pick<Need, 'orderId' | 'item'>,
  keep: number,
): readonly StockChange[] => {
  const held = heldLots(moves, of)
  return fromLots(held, Math.max(0, total(held) - keep)).map(change({ ...of, kind: 'release' }, 1))
}

/** Whoever holds an item, the last due first: who can wait longest lets go first. */
const lastDueFirst = (moves: readonly StockChange[], needs: readonly Need[], item: string): readonly string[] => {
  const due = new Map(needs.filter((need) => need.item === item).map(({ orderId, due: at }) => [orderId, at]))
  const holders = [...new Set(moves.flatMap((move) => (move.item === item && move.orderId !== null ? [move.orderId] : [])))]
  return holders.toSorted((a, b) => (due.get(b) ?? 0) - (due.get(a) ?? 0) || b.localeCompare(a))
}

type Lent = { readonly orderId: string; readonly lots: Taken }

/** What others hold and must lend for an amount that is neither held nor free. */
const lentBy = (moves: readonly StockChange[], needs: readonly Need[], used: Omit<Need, 'due'>): readonly Lent[] => {
  const lent: Lent[] = []
  let missing = used.amount
  for (const orderId of lastDueFirst(moves, needs, used.item)) {
    if (orderId === used.orderId || missing <= 0) continue
    const held = heldLots(moves, { orderId, item: used.item })
    const lots = fromLots(held, Math.min(missing, total(held)))
    if (lots.length > 0) lent.push({ orderId, lots })
    missing -= total(lots)
  }
  return lent
}

/**
 * Takes what an order used: out of what it holds, then out of what is free, then out of what others hold, the last due first. When
 * the shelf held more than the books, the books are corrected by a count first, so nothing ever becomes negative.
 */
export const consume = (
  moves: readonly StockChange[],
  needs: readonly Need[],
  used: Omit<Need, 'due'>,
): readonly StockChange[] => {
  const { item, orderId, amount } = used
  const held = fromLots(heldLots(moves, used), Math.min(amount, total(heldLots(moves, used))))
  const beyond = amount - total(held)
  const free = fromLots(freeLots(moves, item), Math.min(beyond, total(freeLots(moves, item))))
  const lent = lentBy(moves, needs, { ...used, amount: beyond - total(free) })
  const lots = [...held, ...free, ...lent.flatMap((one) => one.lots)]
  const missing = amount - total(lots)
  const found: Taken = missing > 0 ? [{ lot: lots[0]?.lot ?? '', amount: missing }] : []
  return [
    ...held.map(change({ item, orderId, kind: 'release' }, 1)),
    ...lent.flatMap((one) => one.lots.map(change({ item, orderId: one.orderId, kind: 'release' }, 1))),
    ...found.map(change({ item, orderId: null, kind: 'count' }, 1)),
    ...[...lots, ...found].map(change({ item, orderId, kind: 'use' }, -1)),
  ]
}

type Gone = { readonly item: string; readonly lot: string; readonly amount: number; readonly kind: 'count' | 'write-off' }

/** Takes an amount of a lot off the books; when it is not free, whoever is due last lets go first. */
const takeAway = (
  moves: readonly StockChange[],
  needs: readonly Need[],
  { item, lot, amount, kind }: Gone,
): readonly StockChange[] => {
  const ofLot = (lots: readonly LotAmount[]): number => lots.find((one) => one.lot === lot)?.amount ?? 0
  const made: StockChange[] = []
  let missing = amount - ofLot(freeLots(moves, item))
  for (const orderId of lastDueFirst(moves, needs, item)) {
    const some = Math.min(missing, ofLot(heldLots(moves, { orderId, item })))
    if (some > 0) made.push({ item, lot, amount: some, kind: 'release', orderId })
    missing -= Math.max(0, some)
  }
  const possible = amount - Math.max(0, missing)
  return possible > 0 ? [...made, { item, lot, amount: -possible, kind, orderId: null }] : made
}

/** Spoiled, lost or given away: off the books, at most what is there. */
export const writeOff = (
  moves: readonly StockChange[],
  needs: readonly Need[],
  gone: Omit<Gone, 'kind'>,
): readonly StockChange[] => takeAway(moves, needs, { ...gone, kind: 'write-off' })

/** Somebody counted a lot on the shelf, reserved pieces with it: the books follow the hand. */
export const countTo = (
  moves: readonly StockChange[],
  needs: readonly Need[],
  counted: Omit<Gone, 'kind'>,
): readonly StockChange[] => {
  const ofLot = moves.filter((move) => move.item === counted.item && move.lot === counted.lot)
  const pile = pileOf(ofLot, counted.item)
  const difference = counted.amount - (pile.free + pile.reserved)
  if (difference > 0) return [{ item: counted.item, lot: counted.lot, amount: difference, kind: 'count', orderId: null }]
  return difference < 0 ? takeAway(moves, needs, { ...counted, amount: -difference, kind: 'count' }) : []
}
