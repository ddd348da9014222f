import { listed, spoken } from '../words/languages.ts'
import { type Change, isAdd, nothing, type Scene, span } from './change.ts'
import { choose, dropFrom, namesSet } from './drop-rows.ts'
import { readSized, readSizedGone, readWholeSize } from './drop-sized.ts'
import { isLeft, isNumberedAnew, isStop, leavesAt } from './leaving.ts'
import { type Ref, refsIn } from './refs.ts'
import { readStruck } from './struck.ts'
import { isWord, type Token } from './tokens.ts'
import { groupsIn, togetherIn } from './whom.ts'

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
  const added = tokens.findIndex((token, index) => index > off && isAdd(token))
  const end = added < 0 ? tokens.length : added
  const refs = refsIn(tokens.slice(0, end), scene.draft.rows)
  return refs.length === 0 ? nothing : { ...dropRefs(refs, scene), taken: span(0, end) }
}

/** "Brisa ya no, en su lugar …", "Gus and Bo are out": who is named right before is taken off. */
const readGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const group of groupsIn(tokens, scene.draft)) {
    const refs = group.range === true ? group.refs : togetherIn(tokens, group)
    const [first] = refs
    const to = leavesAt(tokens, refs.at(-1)?.to ?? 0)
    if (to !== null && first !== undefined && !isNumberedAnew(tokens, to, { refs, scene }))
      return { ...dropRefs(refs, scene), taken: span(first.from, to) }
  }
  return nothing
}

/** Of those behind a word that drops, up to whom something else is told: "quita a Soto, y el nombre de Nuñez …", "drop Bo, Ana needs L". */
const namedTogether = (tokens: readonly Token[], refs: readonly Ref[]): readonly Ref[] => {
  const other = refs.findIndex((ref, index) => {
    const between = tokens.slice(refs[index - 1]?.to ?? 0, ref.from)
    const told = isWord(tokens[ref.to], ...listed.told.tells) || between.some((token) => isWord(token, ...namesAndSizes))
    return index > 0 && told
  })
  return other < 0 ? refs : refs.slice(0, other)
}

const namesAndSizes: readonly string[] = [...listed.changes.names, ...listed.changes.sizes]

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
  const refs = namedTogether(said, named)
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

/** "drop Lena", "one of the mediums is out", "Jayden quit, take him off": the first of these ways that says something. */
export const readDrops = (tokens: readonly Token[], scene: Dropping): Change => {
  for (const read of [readDropped, readSizedGone, readStruckOff, readGone, readLeft]) {
    const found = read(tokens, scene)
    if (found.taken.size > 0) return found
  }
  return nothing
}
