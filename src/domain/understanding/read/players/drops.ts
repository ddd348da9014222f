import { listed, spoken } from '../../words/languages.ts'
import { type Change, isAdd, joined, nothing, type Scene, span } from '../list/change.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { type Ref, refsIn } from '../whom/refs.ts'
import { groupsIn, togetherIn } from '../whom/whom.ts'
import { choose, dropFrom, namesSet } from './drop-rows.ts'
import { readSized, readSizedGone, readWholeSize } from './drop-sized.ts'
import { droppedTogether } from './dropped-together.ts'
import { isLeft, isNumberedAnew, isStop, leavesAt } from './leaving.ts'
import { readStruck } from './struck.ts'

const dropWords: readonly string[] = listed.changes.drop
/** Quita, quítenla, quítenle, bórralo, elimínenla, sáquenlo, saca. */
const dropVerb = new RegExp(`^${spoken.changes.dropVerb}$`)
const them = new RegExp(`^\\p{L}+(${spoken.changes.theirs})$`, 'u')
/** A word that takes somebody or something off. */
export const isDrop = (token: Token): boolean =>
  isWord(token, ...dropWords) || (token.kind === 'word' && dropVerb.test(token.key))

const dropRefs = (refs: readonly Ref[], scene: Scene): Pick<Change, 'patches' | 'open'> => ({
  patches: refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys.map((key) => dropFrom(key, scene.quote)) : [])),
  open: refs.flatMap((ref) => (ref.keys.length > 1 ? [choose(ref.keys, scene)] : [])),
})

/** "Jayden quit", "take him off", "take one of the mediums off", up to where somebody is added. */
const readLeft = (tokens: readonly Token[], scene: Scene): Change => {
  const off = tokens.findIndex(
    (token, index) =>
      isLeft(tokens, index) ||
      (isWord(token, ...listed.changes.takes) &&
        tokens.slice(index, index + 5).some((one) => isWord(one, ...listed.changes.off))),
  )
  if (off < 0) return nothing
  for (const ahead of [1, 2]) {
    const sized = isWord(tokens[off], ...listed.changes.takes) ? readSized(tokens, off + ahead, scene) : null
    if (sized !== null) return sized
  }
  const close = isWord(tokens[off], ...listed.changes.takes)
    ? tokens.findIndex((token, at) => at > off && isWord(token, ...listed.changes.off))
    : -1
  const between = refsIn(tokens.slice(off, Math.max(off, close)), scene.draft.rows)
  if (between.length > 0) return { ...dropRefs(between, scene), taken: span(off, close + 1) }
  const refs = leaversAt(tokens, off, scene)
  const [first] = refs
  if (first === undefined) return nothing
  const ends = tokens.findIndex((token, at) => at > off && (isStop(token) || isAdd(token) || isWord(token, ...listed.again.and)))
  return { ...dropRefs(refs, scene), taken: span(Math.min(first.from, off), ends < 0 ? tokens.length : ends) }
}

/** Who leaves: those named together right before such a word ("5 is XL and 16 quit"), else those behind it up to where somebody is added. */
const leaversAt = (tokens: readonly Token[], off: number, { draft }: Scene): readonly Ref[] => {
  const last = groupsIn(tokens.slice(0, off), draft).at(-1)
  if (last !== undefined) return last.range === true ? last.refs : togetherIn(tokens, last)
  const added = tokens.findIndex((token, at) => at > off && isAdd(token))
  const said = tokens.slice(0, added < 0 ? tokens.length : added)
  return droppedTogether(said, refsIn(said, draft.rows), draft)
}

/** "Petrakis is out", "Petrakis broke her wrist and is out": nobody else is named between. */
const leavesFrom = (tokens: readonly Token[], at: number, { draft }: Scene): number | null => {
  const plain = leavesAt(tokens, at)
  const end = tokens.findIndex((token, index) => index >= at && isStop(token))
  const joint = tokens.findIndex((token, index) => index >= at && isWord(token, ...listed.again.and))
  if (plain !== null || joint < 0 || (end >= 0 && end < joint)) return plain
  return refsIn(tokens.slice(at, joint), draft.rows).length > 0 ? null : leavesAt(tokens, joint + 1)
}

/** "Brisa ya no, en su lugar …", "Gus and Bo are out": who is named right before is taken off. */
const readGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const group of groupsIn(tokens, scene.draft)) {
    const refs = group.range === true ? group.refs : togetherIn(tokens, group)
    const [first] = refs
    const to = leavesFrom(tokens, refs.at(-1)?.to ?? 0, scene)
    if (to !== null && first !== undefined && !isNumberedAnew(tokens, to, { refs, scene }))
      return { ...dropRefs(refs, scene), taken: span(first.from, to) }
  }
  return nothing
}

/** `trade`: the places of words that speak of cloth and print. */
type Dropping = Scene & { readonly trade?: ReadonlySet<number> }

/** "drop the outline on 44": what is on the jersey leaves, not who wears it; "drop Gil from the away jersey" is of Gil. */
const isWorn = ({ trade, quote }: Dropping, at: number): boolean => trade?.has(at) === true && !namesSet(quote)

/** "drop Lena", "quita al 3": who stands behind such a word, up to where somebody is added. */
const readDropped = (tokens: readonly Token[], scene: Dropping): Change => {
  const at = tokens.findIndex(isDrop)
  if (at < 0) return nothing
  let first = at + 1
  while (first < at + 3 && isWord(tokens[first], ...listed.changes.ofSize)) first += 1
  const sized = readSized(tokens, first, scene)
  if (sized !== null) return sized
  const whole = readWholeSize(tokens, at, scene)
  if (whole !== null) return whole
  let end = at + 1
  while (!isStop(tokens[end]) && !isAdd(tokens[end])) end += 1
  const said = tokens.slice(at + 1, end)
  const named = refsIn(said, scene.draft.rows)
  const before = said.slice(0, named[0]?.from ?? 0)
  if (before.some((token, index) => isWord(token, ...listed.clauses.spelling) || isWorn(scene, at + 1 + index))) return nothing
  const refs = droppedTogether(said, named, scene.draft)
  const last = refs.length < named.length ? at + 1 + (refs.at(-1)?.to ?? 0) : end
  if (refs.length > 0) return { ...dropRefs(refs, scene), taken: span(at, last) }
  return readDroppedBefore(tokens, at, scene)
}

const one: readonly string[] = listed.changes.one
const several: readonly string[] = listed.changes.several

/** "El Diego del 6 no sigue, quítalo", "Gus moved away, please remove him": who was named before. */
const readDroppedBefore = (tokens: readonly Token[], at: number, scene: Scene): Change => {
  const pronoun = [them.exec(tokens[at]?.key ?? '')?.[1], tokens[at + 1]?.key].find((key) =>
    [...one, ...several].includes(key ?? ''),
  )
  const refs = pronoun === undefined ? [] : refsIn(tokens.slice(0, at), scene.draft.rows)
  const meant = several.includes(pronoun ?? '') ? refs : refs.slice(-1)
  const [first] = meant
  return first === undefined ? nothing : { ...dropRefs(meant, scene), taken: span(first.from, at + 1) }
}

const readStruckOff = (tokens: readonly Token[], scene: Scene): Change => {
  const struck = readStruck(tokens, scene)
  return struck === null ? nothing : { ...dropRefs(struck.refs, scene), taken: struck.taken }
}

const firstDrop = (tokens: readonly Token[], scene: Dropping): Change => {
  for (const read of [readDropped, readSizedGone, readStruckOff, readGone, readLeft]) {
    const found = read(tokens, scene)
    if (found.taken.size > 0) return found
  }
  return nothing
}

/** "drop Lena", "one of the mediums is out", "Jayden quit, take him off"; and who else is named in another sentence: "drop Bo, and Ana quit". */
export const readDrops = (tokens: readonly Token[], scene: Dropping): Change => {
  const first = firstDrop(tokens, scene)
  if (first.taken.size === 0 || first.patches.length === 0 || first.open.length > 0) return first
  const gone = new Set(first.patches.map(({ path: [, key] }) => key))
  const rows = Object.fromEntries(Object.entries(scene.draft.rows).filter(([key]) => !gone.has(key)))
  const left = { ...scene, draft: { ...scene.draft, rows } }
  const others = stretchesBeside(tokens, first.taken).map(({ from, to }) => {
    const trade = new Set([...(scene.trade ?? [])].map((at) => at - from))
    const found = readDrops(tokens.slice(from, to), { ...left, trade })
    return { ...found, taken: new Set([...found.taken].map((at) => from + at)) }
  })
  return joined([first, ...others])
}

/** The sentences, or what is left of them beside the words that were understood. */
const stretchesBeside = (tokens: readonly Token[], taken: ReadonlySet<number>) => {
  const ends = [...tokens.keys()].filter((at) => taken.has(at) || isStop(tokens[at]))
  return [...ends, tokens.length]
    .map((to, index) => ({ from: index === 0 ? 0 : (ends[index - 1] ?? 0) + 1, to }))
    .filter(({ from, to }) => to > from)
}
