import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { listed } from '../words/languages.ts'
import { oneMores, type Said, type Scene, saidAnew } from './amounts-anew.ts'
import type { Counted } from './tally.ts'
import type { Token } from './tokens.ts'

/** What a message changes of sizes that were counted before; `fresh` are counted sizes that change none of them. */
export type TallyChange = {
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly fresh: readonly Counted[]
}

type Entries = readonly (readonly [string, Draft['tally'][string]])[]

/** The lines that an amount may be meant for: of several of one size those of the cut, or of the amount, that was said. */
const meant = (before: Draft, { size, was }: Said): Entries => {
  const sized = Object.entries(before.tally).filter(
    ([, entry]) => entry.size === size.size && (size.fit === undefined || entry.fit === size.fit || entry.fit === undefined),
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
const whichAmount = (one: Entries[number], amount: number, quote: string): Open => ({
  about: 'amount',
  path: '/roster',
  quote,
  readings: [amount, one[1].quantity + amount].map((quantity) => ({
    value: String(quantity),
    kind: 'count',
    patches: [patchOf(one, { amount: quantity })],
  })),
})

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
  const [adds, changes] = [isSaid(tokens, adding), isSaid(tokens, changing)]
  if (Object.keys(before.garments).length > 1) return { patches: [], open: [], fresh: counted }
  if (adds && !changes) return added(before, counted)
  const quote = quoteOf(tokens)
  const known = counted.map((one) => ({ one, found: exactly(before, one) }))
  const whole = new Set(known.flatMap(({ found }) => found.map(([key]) => key))).size === Object.keys(before.tally).length
  const sure = whole || (changes && !adds)
  const patches = known.flatMap(({ one, found: [entry] }) =>
    entry !== undefined && sure ? [patchOf(entry, { amount: one.quantity })] : [],
  )
  const open = known.flatMap(({ one, found: [entry] }) =>
    entry !== undefined && !sure ? [whichAmount(entry, one.quantity, quote)] : [],
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
