import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Token } from '../text/tokens.ts'
import { oneMores, type Said, type Scene, saidAnew } from './amounts-anew.ts'
import { addCounted } from './merge-players.ts'
import type { Counted } from './tally.ts'

/** What a message changes of sizes that were counted before; `fresh` are counted sizes that change none of them. */
export type TallyChange = {
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly fresh: readonly Counted[]
}

type Entries = readonly (readonly [string, Draft['tally'][string]])[]

/** The lines that an amount may be meant for: of several of one size those of the cut, or of the amount, that was said. */
const meant = (before: Draft, { size, was, by }: Said): Entries => {
  const usual = before.common?.fit ?? 'men'
  const sized = Object.entries(before.tally).filter(
    ([, entry]) =>
      entry.size === size.size && (size.fit === undefined || (entry.fit ?? (by === true ? usual : size.fit)) === size.fit),
  )
  const same = sized.filter(([, entry]) => entry.quantity === was)
  return same.length > 0 ? same : sized
}

/** What a line of the tally becomes: nothing is left of it where as many or more are taken off. */
const patchOf = ([key, entry]: Entries[number], { amount, by }: Pick<Said, 'amount' | 'by'>): Patch => {
  const quantity = by === true ? entry.quantity + amount : amount
  return quantity > 0 ? { path: ['tally', key, 'quantity'], value: quantity } : { path: ['tally', key], value: null }
}

const whichCut = (found: Entries, said: Said, quote: string): Open => ({
  about: 'fit',
  path: '/roster',
  quote,
  readings: found.map((one) => ({ value: one[1].fit ?? 'men', kind: 'fit', patches: [patchOf(one, said)] })),
})

/** "5 large" of a size that was counted before: so many in all, or besides? */
const whichAmount = (
  entry: Entries[number],
  one: Counted,
  { before, quote }: { readonly before: Draft; readonly quote: string },
): Open => {
  const total = entry[1].quantity + one.quantity
  const line = { size: one.size, fit: one.fit, quantity: one.quantity }
  const besides = isOtherCut(before, entry, one) ? addCounted(before, [line]) : [patchOf(entry, { amount: total })]
  return {
    about: 'amount',
    path: '/roster',
    quote,
    readings: [
      { value: String(one.quantity), kind: 'count', patches: restated(before, entry, one) },
      { value: String(total), kind: 'count', patches: besides },
    ],
  }
}

/** The cut that was said is not that of a line that has none of its own. */
const isOtherCut = (before: Draft, [, entry]: Entries[number], { fit }: Counted): boolean =>
  fit !== undefined && entry.fit === undefined && fit !== (before.common?.fit ?? 'men')

const restated = (before: Draft, entry: Entries[number], one: Counted): readonly Patch[] => [
  patchOf(entry, { amount: one.quantity }),
  ...(isOtherCut(before, entry, one) ? [{ path: ['tally', entry[0], 'fit'], value: one.fit ?? null }] : []),
]

const changing: readonly string[] = listed.anew.changing
const adding: readonly string[] = listed.anew.adding

const isSaid = (tokens: readonly Token[], words: readonly string[]): boolean => tokens.some((token) => words.includes(token.key))

/** Pieces that are put to those of their size and cut; of others they are lines of their own. */
const added = (before: Draft, counted: readonly Counted[]): TallyChange => {
  const known = counted.map((one) => ({ one, found: exactly(before, one).filter(([, { fit }]) => fit === one.fit) }))
  return {
    patches: known.flatMap(({ one, found }) => found.map((entry) => patchOf(entry, { amount: one.quantity, by: true }))),
    open: [],
    fresh: known.flatMap(({ one, found }) => (found.length === 0 ? [one] : [])),
  }
}

/** Sizes counted once more without a word of what they were: changed, added or asked, by the words around them. */
const countedAgain = (before: Draft, scene: Scene, counted: readonly Counted[]): TallyChange => {
  const { tokens } = scene
  const changes = isSaid(tokens, changing)
  const joins = !changes && isSaid(tokens, listed.anew.joining)
  const adds = joins || isSaid(tokens, adding) || isSaid(tokens, listed.anew.raising)
  if (Object.keys(before.garments).length > 1) return { patches: [], open: [], fresh: counted }
  if (adds && !changes) return added(before, counted)
  const quote = quoteOf(tokens)
  const known = counted.map((one) => ({ one, found: exactly(before, one) }))
  const whole = new Set(known.flatMap(({ found }) => found.map(([key]) => key))).size === Object.keys(before.tally).length
  const sure = whole || (changes && !adds)
  const patches = known.flatMap(({ one, found: [entry] }) => (entry !== undefined && sure ? restated(before, entry, one) : []))
  const open = known.flatMap(({ one, found: [entry] }) =>
    entry !== undefined && !sure ? [whichAmount(entry, one, { before, quote })] : [],
  )
  return { patches, open, fresh: known.flatMap(({ one, found }) => (found.length === 0 ? [one] : [])) }
}

/** The one line of the tally that a counted size repeats. */
const exactly = (before: Draft, one: Counted): Entries => {
  const found = Object.entries(before.tally).filter(
    ([, entry]) => entry.size === one.size && (one.fit === undefined || entry.fit === undefined || entry.fit === one.fit),
  )
  return found.length === 1 ? found : []
}

const quoteOf = (tokens: readonly Token[]): string =>
  tokens
    .map((token) => token.text)
    .join(' ')
    .slice(0, 80)

/** Pieces told one by one of sizes that nothing else of the message speaks of. */
const besides = (scene: Scene, others: readonly Pick<Said, 'size'>[], counted: readonly Counted[]): readonly Said[] =>
  oneMores(scene).filter(
    ({ size }) => !others.some((one) => one.size.size === size.size) && !counted.some((one) => one.size === size.size),
  )

const asCounted = ({ size, amount }: Said): Counted => ({ size: size.size, fit: size.fit, quantity: amount, garment: null })

/** Amounts of sizes that were counted before, said otherwise; where two cuts of a size, or two amounts, may be meant it is asked. */
export const readChangedTally = (before: Draft, scene: Scene, counted: readonly Counted[]): TallyChange => {
  if (Object.keys(before.tally).length === 0) return { patches: [], open: [], fresh: counted }
  const anew = saidAnew(scene)
  const single = besides(scene, anew, counted)
  const all = [...anew, ...single].map((one) => ({ one, found: meant(before, one) }))
  const known = all.filter(({ found }) => found.length > 0)
  const fresh = all.filter(({ one, found }) => found.length === 0 && single.includes(one)).map(({ one }) => asCounted(one))
  const others = counted.filter(({ size }) => !known.some(({ one }) => one.size.size === size))
  const again = countedAgain(before, scene, others)
  return {
    patches: [
      ...known.flatMap(({ one, found }) => (found.length === 1 ? found.map((entry) => patchOf(entry, one)) : [])),
      ...again.patches,
    ],
    open: [
      ...known.flatMap(({ one, found }) => (found.length > 1 ? [whichCut(found, one, quoteOf(scene.tokens))] : [])),
      ...again.open,
    ],
    fresh: [...again.fresh, ...fresh],
  }
}
