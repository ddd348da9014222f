import { listed } from '../../words/languages.ts'
import { type Change, joined, nothing, type Scene, span } from '../list/change.ts'
import { isOfSize, type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { amountOf, fewer, whichCounted } from './drop-sized.ts'

const leaving = phrasesOf(listed.players.peopleGone)
const { single } = listed.clauses
const { one } = listed.players

/** So many of a size, or so many people. */
type Told = { readonly amount: number; readonly size?: SizeFound; readonly to: number }

const amountAt = (tokens: readonly Token[], at: number): number | null =>
  sizeAt(tokens, at)?.size !== undefined ? null : isWord(tokens[at], ...single, ...one) ? 1 : amountOf(tokens[at])

/** "two mediums", "dos de las M", "an XL", "3 people". */
const toldAt = (tokens: readonly Token[], at: number): Told | null => {
  const amount = amountAt(tokens, at)
  if (amount === null) return null
  let next = at + 1
  while (isWord(tokens[next], ...listed.changes.ofSize) && sizeAt(tokens, next) === null) next += 1
  const size = sizeAt(tokens, next, next > at + 1)
  return size?.size === undefined ? { amount, to: at + 1 } : { amount, size, to: size.to }
}

const toldIn = (tokens: readonly Token[], { from, to }: Stretch): readonly Told[] => {
  const told: Told[] = []
  let at = from
  while (at < to) {
    const found = toldAt(tokens, at)
    if (found !== null) told.push(found)
    at = found?.to ?? at + 1
  }
  return told
}

/** "A guy backed out, he was an XL", "era G": whose only size stands behind who left. */
const withTheirSize = (tokens: readonly Token[], { from, to }: Stretch, told: readonly Told[]): readonly Told[] => {
  const [only, ...more] = told
  if (only === undefined || more.length > 0 || only.size !== undefined) return told
  const sizes = [...tokens.keys()].flatMap((at) => (at >= from && at < to ? (sizeAt(tokens, at) ?? []) : []))
  const [size, ...others] = sizes.filter((found) => found.size !== undefined)
  return size === undefined || others.some((other) => other.size !== size.size) ? [] : [{ ...only, size }]
}

const others: readonly string[] = [
  ...listed.anew.more,
  ...listed.anew.adding,
  ...listed.anew.another,
  ...listed.players.lostThings,
  ...listed.players.leftNow,
]

/** What a sentence of people who left tells of them by size; nothing where the amounts do not make up how many left. */
const lostIn = (tokens: readonly Token[], sentence: Stretch): readonly Required<Told>[] => {
  const places = [...tokens.keys()].filter((at) => at >= sentence.from && at < sentence.to)
  const leaves = places.some((at) => phraseEnd(tokens, at, leaving) !== null)
  if (!leaves || places.some((at) => isWord(tokens[at], ...others))) return []
  const told = withTheirSize(tokens, sentence, toldIn(tokens, sentence))
  const sized = told.flatMap(({ size, ...rest }) => (size === undefined ? [] : [{ ...rest, size }]))
  const twice = new Set(sized.map(({ size }) => `${size.fit} ${size.size}`)).size < sized.length
  const sum = sized.reduce((all, { amount }) => all + amount, 0)
  return !twice && told.every(({ size, amount }) => size !== undefined || amount === sum) ? sized : []
}

const takenOff = ({ amount, size }: Required<Told>, scene: Scene): Change => {
  const lines = Object.entries(scene.draft.tally).filter(([, line]) => isOfSize(size, line))
  const [only, ...more] = lines
  if (only === undefined) return nothing
  if (more.length > 0) return { ...nothing, open: [whichCounted(lines, amount, scene)] }
  return { ...nothing, patches: fewer(amount, only) }
}

/** "We lost 3 people, two mediums and an XL", "se bajaron tres: dos de M y uno de XL": fewer of each counted size. */
export const readSizesLost = (tokens: readonly Token[], scene: Scene): Change => {
  if (Object.keys(scene.draft.rows).length > 0) return nothing
  const found = sentencesOf(tokens).flatMap((sentence): readonly Change[] => {
    const changes = lostIn(tokens, sentence).map((one) => takenOff(one, scene))
    const heard = changes.every(({ patches, open }) => patches.length + open.length > 0)
    return changes.length === 0 || !heard ? [] : [{ ...joined(changes), taken: span(sentence.from, sentence.to) }]
  })
  return found.length === 0 ? nothing : joined(found)
}
