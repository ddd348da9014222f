import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { listed, spoken, wordValues } from '../words/languages.ts'
import { type Change, isAdd, nothing, type Scene, span } from './change.ts'
import { type Ref, refsIn } from './refs.ts'
import { isOfSize, type SizeFound, sizeAt } from './sizes.ts'
import { isCapital, isEnd, isNumber, isWord, phraseEnd, phrasesOf, type Token } from './tokens.ts'
import { groupsIn, togetherIn } from './whom.ts'

const dropWords: readonly string[] = listed.changes.drop
/** Quita, quítenla, quítenle, bórralo, elimínenla, sáquenlo, saca. */
const dropVerb = new RegExp(`^${spoken.changes.dropVerb}$`)
const them = new RegExp(`^\\p{L}+(${spoken.changes.theirs})$`, 'u')
/** A word that takes somebody or something off. */
export const isDrop = (token: Token): boolean =>
  isWord(token, ...dropWords) || (token.kind === 'word' && dropVerb.test(token.key))

const leftSo = phrasesOf(listed.changes.leftSo)
const fromAway = new RegExp(`\\b${spoken.changes.fromAway}\\b`, 'i')
const fromHome = new RegExp(`\\b${spoken.changes.fromHome}\\b`, 'i')
const leftWords: readonly string[] = listed.changes.left

/** "Ana left", "Beto se salió", "Beto salió del equipo"; not "salió sin acento". */
const isLeft = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...leftWords) ||
  (isWord(tokens[at], ...listed.changes.leftAtEnd) && isStop(tokens[at + 1]) && isCapital(tokens[at - 1])) ||
  phraseEnd(tokens, at, leftSo) !== null

const isStop = (token: Token | undefined): boolean => token === undefined || isEnd(token)

const lineOf = (draft: Draft, key: string): number => Object.keys(draft.rows).indexOf(key) + 1

const dropRow = (key: string): Patch => ({ path: ['rows', key], value: null })

/** "quita a Gil del visitante": the other jersey stays. */
const dropFrom = (key: string, quote: string): Patch => {
  if (fromAway.test(quote)) return { path: ['rows', key, 'garment'], value: 'home' }
  if (fromHome.test(quote)) return { path: ['rows', key, 'garment'], value: 'away' }
  return dropRow(key)
}

/** Rows that words may mean, with what would be changed of each: which of them is it? */
export const whichRow = (
  rows: readonly { readonly key: string; readonly patches: readonly Patch[] }[],
  { draft, quote }: Scene,
): Open => ({
  about: 'drop',
  path: '/roster',
  quote,
  readings: rows.map(({ key, patches }) => ({ value: String(lineOf(draft, key)), kind: 'row', patches })),
})

const choose = (keys: readonly string[], scene: Scene): Open =>
  whichRow(
    keys.map((key) => ({ key, patches: [dropRow(key)] })),
    scene,
  )

const countWords = wordValues.dropped

/** An amount in figures or in words. */
export const amountOf = (token: Token | undefined): number | null => {
  if (token === undefined) return null
  if (isNumber(token)) return /^\d{1,2}$/.test(token.text) ? Number(token.text) : null
  return countWords[token.key] ?? null
}

type Sized = { readonly amount: number; readonly size: SizeFound; readonly to: number }

/** "2 of the mediums", "una de las medianas", "a small". */
const sizedAt = (tokens: readonly Token[], at: number): Sized | null => {
  const amount = amountOf(tokens[at])
  if (amount === null) return null
  let next = at + 1
  while (isWord(tokens[next], ...listed.changes.ofSize)) next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : { amount, size, to: size.to }
}

const fewer = (amount: number, [key, { quantity }]: Counted): readonly Patch[] => {
  const left = quantity - amount
  return [left > 0 ? { path: ['tally', key, 'quantity'], value: left } : { path: ['tally', key], value: null }]
}

type Counted = readonly [string, Draft['tally'][string]]

/** Of two kinds counted in that size it must be asked of which: their lines stand behind the players'. */
const whichCounted = (entries: readonly Counted[], amount: number, scene: Scene): Open => {
  const { rows, tally } = scene.draft
  const line = (key: string) => Object.keys(rows).length + Object.keys(tally).indexOf(key) + 1
  const readings = entries.map(
    (entry) => ({ value: String(line(entry[0])), kind: 'row', patches: fewer(amount, entry) }) as const,
  )
  return { about: 'drop', path: '/roster', quote: scene.quote, readings }
}

/** Of counted pieces so many fewer; of named players it must be asked which. Nothing where nobody has that size. */
const dropSized = ({ amount, size }: Sized, scene: Scene): Pick<Change, 'patches' | 'open'> | null => {
  const { draft } = scene
  const rows = Object.entries(draft.rows).flatMap(([key, row]) => (isOfSize(size, row) ? [key] : []))
  const tallied = Object.entries(draft.tally).filter(([, entry]) => isOfSize(size, entry))
  const [only] = tallied
  if (rows.length === amount) return { patches: rows.map(dropRow), open: [] }
  if (rows.length > 0) return { patches: [], open: [choose(rows, scene)] }
  if (only === undefined) return null
  if (tallied.length === 1) return { patches: fewer(amount, only), open: [] }
  return { patches: [], open: [whichCounted(tallied, amount, scene)] }
}

/** "drop 2 of the mediums". */
const readSized = (tokens: readonly Token[], at: number, scene: Scene): Change | null => {
  const sized = sizedAt(tokens, at)
  const found = sized === null ? null : dropSized(sized, scene)
  return sized === null || found === null ? null : { ...found, taken: span(at - 1, sized.to) }
}

const ending: readonly string[] = [...listed.anew.ends, ...listed.changes.wholly]

/** "get rid of the youth larges altogether", "quita las grandes": all that were counted in a size; not "drop the larges to 3". */
const readWholeSize = (tokens: readonly Token[], at: number, { draft }: Scene): Change | null => {
  let next = at + 1
  while (isWord(tokens[next], ...listed.changes.ofSize, ...listed.changes.wholeSeveral) && sizeAt(tokens, next) === null)
    next += 1
  const size = next > at + 1 ? sizeAt(tokens, next) : null
  const end = tokens[size?.to ?? 0]
  if (size?.size === undefined || !(isStop(end) || end?.text === ',' || isWord(end, ...ending))) return null
  const [found, ...more] = Object.entries(draft.tally).filter(([, entry]) => isOfSize(size, entry))
  const to = isWord(end, ...listed.changes.wholly) ? size.to + 1 : size.to
  return found === undefined || more.length > 0
    ? null
    : { ...nothing, patches: [{ path: ['tally', found[0]], value: null }], taken: span(at, to) }
}

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

const gone = phrasesOf(listed.changes.gone)
const goneAtEnd = phrasesOf(listed.changes.goneAtEnd)

/** "… ya no va", "… is out", "… dropped out": where the words end that say of who stands before that they leave. */
const leavesAt = (tokens: readonly Token[], at: number): number | null => {
  const to = phraseEnd(tokens, at, gone)
  const end = phraseEnd(tokens, at, goneAtEnd)
  if (to !== null || end === null) return to
  return isStop(tokens[end]) || tokens[end]?.text === ',' ? end : null
}

/** "one of the mediums is out", "una de las medianas ya no va". */
const readSizedGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const at of tokens.keys()) {
    const sized = sizedAt(tokens, at)
    const to = sized === null ? null : leavesAt(tokens, sized.to)
    const found = sized === null || to === null ? null : dropSized(sized, scene)
    if (found !== null && to !== null) return { ...found, taken: span(at, to) }
  }
  return nothing
}

/** "Brisa ya no, en su lugar …", "Gus and Bo are out": who is named right before is taken off. */
const readGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const group of groupsIn(tokens, scene.draft)) {
    const refs = group.range === true ? group.refs : togetherIn(tokens, group)
    const [first] = refs
    const to = leavesAt(tokens, refs.at(-1)?.to ?? 0)
    if (to !== null && first !== undefined) return { ...dropRefs(refs, scene), taken: span(first.from, to) }
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

/** "drop Lena", "quita al 3": who stands behind such a word, up to where somebody is added. */
const readDropped = (tokens: readonly Token[], scene: Scene): Change => {
  const at = tokens.findIndex(isDrop)
  if (at < 0) return nothing
  const sized = readSized(tokens, at + 1, scene)
  if (sized !== null) return sized
  const whole = readWholeSize(tokens, at, scene)
  if (whole !== null) return whole
  let end = at + 1
  while (!isStop(tokens[end]) && !isAdd(tokens[end])) end += 1
  const said = tokens.slice(at + 1, end)
  const named = refsIn(said, scene.draft.rows)
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

/** "drop Lena", "one of the mediums is out", "Jayden quit, take him off": the first of these ways that says something. */
export const readDrops = (tokens: readonly Token[], scene: Scene): Change => {
  for (const read of [readDropped, readSizedGone, readGone, readLeft]) {
    const found = read(tokens, scene)
    if (found.taken.size > 0) return found
  }
  return nothing
}
