import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { addWords, type Change, nothing, type Scene, span } from './change.ts'
import { readDrops, whichRow } from './drops.ts'
import { namedAt, toldOfNobody } from './naming.ts'
import { type Ref, refAt, rowsByNumber } from './refs.ts'
import { readNearName, readRename, readSpelling, readSwap } from './renames.ts'
import { readReplaced } from './replaced.ts'
import { sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

const numberVerbs: readonly string[] = [
  'que',
  'should',
  'wears',
  'be',
  'now',
  'is',
  'to',
  'becomes',
  'usa',
  'es',
  'trae',
  'ahora',
  'sea',
  'lleva',
  'por',
  'number',
  'numero',
  'el',
  "'s",
  'gets',
  'has',
  'changes',
  'changed',
  'debe',
  'ser',
  'va',
  'con',
  '#',
  'a',
  'al',
]

/** The new number that words after a reference give: "Noor wears 21 now", "#22 should be 23", "el 4 ahora es el 14". */
const newNumber = (tokens: readonly Token[], from: number): { readonly number: string; readonly to: number } | null => {
  let at = from
  let verb = false
  while (at < from + 6 && (isWord(tokens[at], ...numberVerbs) || tokens[at]?.text === '#')) {
    verb = true
    at += 1
  }
  const token = tokens[at]
  if (!verb || token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text) || sizeAt(tokens, at) !== null)
    return null
  const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token.end
  if (joined || isWord(tokens[at + 1], 'years', 'anos', 'of', 'de', 'or')) return null
  const tail = isWord(tokens[at + 1], 'now', 'ahora') ? at + 2 : at + 1
  const not = isWord(tokens[tail], 'not', 'no') && isNumber(tokens[tail + 1]) ? tail + 2 : tail
  return { number: token.text, to: not }
}

const sizeVerbs: readonly string[] = [
  ...['just', 'told', 'me', 'us', 'he', 'she', 'they', 'said', 'says', 'that'],
  'a',
  'an',
  'is',
  'to',
  'be',
  'should',
  'now',
  'needs',
  'wants',
  'into',
  'es',
  'en',
  'talla',
  'mejor',
  'sea',
  'que',
  'una',
  'un',
  'size',
  'as',
  'ahora',
  'va',
  'por',
  'la',
  'the',
  'al',
  'mas',
  'get',
  'gets',
  'usa',
  'wears',
  'wear',
  'has',
  'takes',
  'needed',
  'lleva',
  'ponle',
  'ponla',
  'ocupa',
  'necesita',
  'only',
]

const newSize = (tokens: readonly Token[], from: number) => {
  let at = from
  while (at < from + 8 && isWord(tokens[at], ...sizeVerbs) && sizeAt(tokens, at) === null) at += 1
  const size = sizeAt(tokens, at)
  return size?.size === undefined ? null : size
}

/** "5 and 6 men's L", "1-4": the last figure of a list or a range speaks for all of them. */
const isListed = (tokens: readonly Token[], ref: Ref): boolean =>
  ref.by === 'number' &&
  isNumber(tokens[ref.from - 2]) &&
  (isWord(tokens[ref.from - 1], 'and', 'y', 'through', 'thru', 'to', 'al', 'a') ||
    [',', '-', '&'].includes(tokens[ref.from - 1]?.text ?? ''))

/** What is said right after a reference of one row: a size, another number, another name. */
const changeOf = (tokens: readonly Token[], ref: Ref, { key, scene }: { key: string; scene: Scene }): Change | null => {
  const size = newSize(tokens, ref.to)
  if (size !== null) {
    const patches: readonly Patch[] = [
      { path: ['rows', key, 'size'], value: size.size },
      ...(size.fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: size.fit }]),
    ]
    return { ...nothing, patches, taken: span(ref.from, size.to) }
  }
  const number = newNumber(tokens, ref.to)
  if (number !== null)
    return { ...nothing, patches: [{ path: ['rows', key, 'number'], value: number.number }], taken: span(ref.from, number.to) }
  const name = namedAt(tokens, { ref, key, scene })
  return name === null ? null : withSize(tokens, name, key)
}

/** "el 8 es Ulíses con acento y talla G": the size said of the same player in the same breath. */
const withSize = (tokens: readonly Token[], found: Change, key: string): Change => {
  const to = Math.max(...found.taken) + 1
  const ahead = tokens.slice(to, to + 6).findIndex((token) => isWord(token, 'talla', 'size'))
  const size = ahead < 0 ? null : sizeAt(tokens, to + ahead)
  if (size?.size === undefined) return found
  const fit: readonly Patch[] = size.fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: size.fit }]
  const patches: readonly Patch[] = [...found.patches, { path: ['rows', key, 'size'], value: size.size }, ...fit]
  return { ...found, patches, taken: new Set([...found.taken, ...span(to, size.to)]) }
}

/** What is said right after a reference; of several rows with that number or name it must be asked which is meant. */
const changeAt = (tokens: readonly Token[], ref: Ref, scene: Scene): Change | null => {
  if (isListed(tokens, ref)) return null
  const changes = ref.keys.flatMap((key) => {
    const change = changeOf(tokens, ref, { key, scene })
    return change === null ? [] : [{ key, change }]
  })
  const [first] = changes
  if (first === undefined || changes.length === 1) return first?.change ?? null
  return {
    ...nothing,
    open: [
      whichRow(
        changes.map(({ key, change }) => ({ key, patches: change.patches })),
        scene,
      ),
    ],
    taken: first.change.taken,
  }
}

/** "41, not 14", "the other Ava is 41 not 14": the figure that stands on the list gives way to the one that does not. */
const instead = (tokens: readonly Token[], { draft }: Scene): Change => {
  for (const at of tokens.keys()) {
    const skip = tokens[at + 1]?.text === ',' ? at + 2 : at + 1
    const to = isWord(tokens[skip + 1], 'el', 'la', 'the') || tokens[skip + 1]?.text === '#' ? skip + 2 : skip + 1
    const [fresh, old] = [tokens[at], tokens[to]]
    if (!isNumber(fresh) || !isNumber(old) || !isWord(tokens[skip], 'not', 'no')) continue
    if (fresh === undefined || old === undefined || !/^\d{1,3}$/.test(fresh.text)) continue
    const [key, ...more] = rowsByNumber(draft.rows, old.text)
    if (key === undefined || more.length > 0 || rowsByNumber(draft.rows, fresh.text).length > 0) continue
    return { ...nothing, patches: [{ path: ['rows', key, 'number'], value: fresh.text }], taken: span(at, to + 1) }
  }
  return nothing
}

/** What begins at a token: a change of a row, or words about a number that nobody wears, of which nothing is taken. */
const changeFrom = (
  tokens: readonly Token[],
  at: number,
  scene: Scene,
): { readonly change: Change | null; readonly to: number } => {
  const ref = isWord(tokens[at - 1], ...addWords) ? null : refAt(tokens, at, scene.draft.rows)
  if (ref === null) {
    const to = Object.keys(scene.draft.rows).length === 0 ? null : toldOfNobody(tokens, at)
    return to === null ? { change: null, to: at + 1 } : { change: { ...nothing, taken: span(at, to) }, to }
  }
  const change = changeAt(tokens, ref, scene)
  return { change, to: change === null ? ref.to : Math.max(...change.taken) + 1 }
}

const readChanges = (tokens: readonly Token[], scene: Scene): Change => {
  const patches: Patch[] = []
  const open: Open[] = []
  const taken = new Set<number>()
  let at = 0
  while (at < tokens.length) {
    const { change, to } = changeFrom(tokens, at, scene)
    patches.push(...(change?.patches ?? []))
    open.push(...(change?.open ?? []))
    for (const index of change?.taken ?? []) taken.add(index)
    at = to
  }
  return { patches, open, taken }
}

/** Changes of a roster that is there: who is dropped, another size, number or spelling, numbers swapped. Nothing else is touched. */
export const readCorrections = (tokens: readonly Token[], draft: Draft, quote: string): Change => {
  if (Object.keys(draft.rows).length === 0 && Object.keys(draft.tally).length === 0) return nothing
  const scene = { draft, quote }
  const swap = readSwap(tokens, scene)
  if (swap.patches.length > 0) return swap
  const drops = readReplaced(tokens, scene, readDrops(tokens, scene))
  const free = (found: Change): boolean => [...found.taken].every((index) => !drops.taken.has(index))
  const left = { ...scene, draft: withoutGone(draft, drops.patches) }
  const other = instead(tokens, left)
  const changes = other.patches.length > 0 ? other : readChanges(tokens, left)
  const spelling = readSpelling(tokens, left)
  const near = spelling.patches.length > 0 ? spelling : readNearName(tokens, left)
  const others = [near, readRename(tokens, left), changes].filter(free)
  const all = [drops, ...others]
  return {
    patches: all.flatMap((found) => found.patches),
    open: all.flatMap((found) => found.open),
    taken: new Set(all.flatMap((found) => [...found.taken])),
  }
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
