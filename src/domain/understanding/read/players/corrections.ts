import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, joined, nothing, type Scene, span } from '../list/change.ts'
import { stated } from '../text/statements.ts'
import { isEnd, isNumber, isWord, type Token } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'
import { readDrops } from './drops.ts'
import { readSwap, readWhoseNumbers, withOwn } from './exchanges.ts'
import { readPartTurned } from './part-turned.ts'
import { readNearName, readRename, readSpelling } from './renames.ts'
import { readReplaced } from './replaced.ts'
import { readChanges } from './row-changes.ts'
import { readShift, readTurned } from './size-moves.ts'
import { readSizedAgain } from './sized-again.ts'
import { readSizesGone } from './sizes-gone.ts'
import { readSizesLost } from './sizes-lost.ts'
import { readSpelledOut } from './spelled-out.ts'
import { type Heard, readRanges, readToldOf } from './told-of.ts'

/** "41, not 14", "the other Ava is 41 not 14": the figure that stands on the list gives way to the one that does not. */
const instead = (tokens: readonly Token[], { draft }: Scene): Change => {
  for (const at of tokens.keys()) {
    const skip = tokens[at + 1]?.text === ',' ? at + 2 : at + 1
    const to = isWord(tokens[skip + 1], ...listed.changes.the) || tokens[skip + 1]?.text === '#' ? skip + 2 : skip + 1
    const [fresh, old] = [tokens[at], tokens[to]]
    if (!isNumber(fresh) || !isNumber(old) || !isWord(tokens[skip], ...listed.changes.not)) continue
    if (fresh === undefined || old === undefined || !/^\d{1,3}$/.test(fresh.text)) continue
    const [key, ...more] = rowsByNumber(draft.rows, old.text)
    if (key === undefined || more.length > 0 || rowsByNumber(draft.rows, fresh.text).length > 0) continue
    return { ...nothing, patches: [{ path: ['rows', key, 'number'], value: fresh.text }], taken: span(at, to + 1) }
  }
  return nothing
}

/** Changes of a roster that is there: who is dropped, another size, number or spelling, numbers swapped. Nothing else is touched. */
export const readCorrections = (said: readonly Token[], { draft, quote, trade }: Heard): Change => {
  if (Object.keys(draft.rows).length === 0 && Object.keys(draft.tally).length === 0) return nothing
  const scene = { draft, quote, trade }
  const tokens = stated(said)
  const part =
    [readSizesLost, readSizesGone, readRanges, readPartTurned, readSpelledOut]
      .map((read) => read(tokens, scene))
      .find(({ taken }) => taken.size > 0) ?? nothing
  if (part.taken.size > 0)
    return joined([part, readCorrections(without(tokens, part.taken), { ...scene, draft: preview(draft, part.patches) })])
  const whole = [readWhoseNumbers, readSwap, readSteps, readTurned]
    .map((read) => read(tokens, scene))
    .find(({ taken }) => taken.size > 0)
  return whole ?? swappedFirst(tokens, scene) ?? readEach(tokens, scene)
}

/** "Ocupa una más chica, M": the size that is told goes before the step. */
const readSteps = (tokens: readonly Token[], scene: Heard): Change => {
  const steps = readShift(tokens, scene)
  const told = steps.taken.size === 0 ? nothing : readToldOf(tokens, scene)
  return told.taken.size > 0 ? told : steps
}

const aside = (token: Token): Token => ({ ...token, kind: 'sign', text: ';', key: ';' })

const without = (tokens: readonly Token[], taken: ReadonlySet<number>): readonly Token[] =>
  tokens.map((token, index) => (taken.has(index) && token.kind !== 'break' ? aside(token) : token))

/** "54 and 55 are backwards, swap them. Lang is 54": an exchange in its own sentence, and what the others say of the list after it. */
const swappedFirst = (tokens: readonly Token[], scene: Heard): Change | null => {
  const ends = tokens.flatMap((token, at) => (isEnd(token) ? [at] : []))
  const starts = [0, ...ends.map((at) => at + 1)]
  if (ends.length === 0) return null
  for (const [index, from] of starts.entries()) {
    const to = ends[index] ?? tokens.length
    const swap = readSwap(tokens.slice(from, to), scene)
    if (swap.taken.size === 0) continue
    const taken = span(from, to)
    const draft = preview(scene.draft, swap.patches)
    return joined([{ ...swap, taken }, readEach(without(tokens, taken), { ...scene, draft })])
  }
  return null
}

/** Who is dropped, another size, number or spelling, each read beside the others. */
const readEach = (tokens: readonly Token[], scene: Heard): Change => {
  const { draft } = scene
  const drops = readReplaced(tokens, scene, readDrops(tokens, scene))
  const free = (found: Change): boolean => [...found.taken].every((index) => !drops.taken.has(index))
  const left = { ...scene, draft: withoutGone(draft, drops.patches) }
  const other = instead(tokens, left)
  const changes = joined([other, withOwn(readChanges(without(tokens, other.taken), left), left)])
  const spelling = readSpelling(tokens, left)
  const near = spelling.patches.length > 0 ? spelling : readNearName(tokens, left)
  const others = [near, readRename(tokens, left), changes].filter(free)
  const found = [drops, ...others]
  const again = readSizedAgain(tokens, left, new Set(found.flatMap(({ taken }) => [...taken])))
  const all = joined([...found, again])
  return joined([all, readToldOf(without(tokens, all.taken), { ...left, trade: scene.trade })])
}

/** Who was taken off the list, or gave their line to somebody else, is changed no further. */
const withoutGone = (draft: Draft, patches: readonly Patch[]): Draft => {
  const gone = new Set(
    patches.flatMap(({ path: [root, key], value }) =>
      root === 'rows' && (value === null || typeof value === 'object') ? [key] : [],
    ),
  )
  return { ...draft, rows: Object.fromEntries(Object.entries(draft.rows).filter(([key]) => !gone.has(key))) }
}
