import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { addWords, type Change, nothing, type Scene, span } from './change.ts'
import { type Ref, refsIn } from './refs.ts'
import { type SizeFound, sizeAt } from './sizes.ts'
import { isCapital, isNumber, isWord, type Token } from './tokens.ts'

const dropWords: readonly string[] = ['drop', 'remove', 'lose', 'strike', 'omit', 'delete', 'cancel', 'scratch']
/** Quita, quítenla, quítenle, bórralo, elimínenla, sáquenlo, saca. */
const dropVerb = /^(?:quit|borr|elimin|sac|saqu)(?:a|e|ar|an|en|emos)(?:me|nos)?(?:l[aeo]s?)?$/
const them = /^\p{L}+(l[ao]s?)$/u
/** A word that takes somebody or something off. */
export const isDrop = (token: Token): boolean =>
  isWord(token, ...dropWords) || (token.kind === 'word' && dropVerb.test(token.key))

const leftWords: readonly string[] = ['quit', 'renuncio']

/** "Ana left", "Beto se salió", "Beto salió del equipo"; not "salió sin acento". */
const isLeft = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...leftWords) ||
  (isWord(tokens[at], 'left') && isStop(tokens[at + 1]) && isCapital(tokens[at - 1])) ||
  (isWord(tokens[at], 'salio') && (isWord(tokens[at - 1], 'se') || isWord(tokens[at + 1], 'del')))

const isStop = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || ['.', ';', '!'].includes(token.text)

const lineOf = (draft: Draft, key: string): number => Object.keys(draft.rows).indexOf(key) + 1

const dropRow = (key: string): Patch => ({ path: ['rows', key], value: null })

/** "quita a Gil del visitante": the other jersey stays. */
const dropFrom = (key: string, quote: string): Patch => {
  if (/\b(?:from (?:the )?away|del? (?:la )?visit\w*|away (?:only|jersey|set))\b/i.test(quote))
    return { path: ['rows', key, 'garment'], value: 'home' }
  if (/\b(?:from (?:the )?home|del? local|home (?:only|jersey|set))\b/i.test(quote))
    return { path: ['rows', key, 'garment'], value: 'away' }
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

const countWords: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  uno: 1,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  a: 1,
}

const amountOf = (token: Token | undefined): number | null => {
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
  while (isWord(tokens[next], 'of', 'the', 'de', 'las', 'los', 'a', 'size', 'talla')) next += 1
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
  const fits = (entry: { readonly size?: string | undefined; readonly fit?: string | undefined }) =>
    entry.size === size.size && (size.fit === undefined || entry.fit === size.fit)
  const rows = Object.entries(draft.rows).flatMap(([key, row]) => (fits(row) ? [key] : []))
  const tallied = Object.entries(draft.tally).filter(([, entry]) => fits(entry))
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

const dropRefs = (refs: readonly Ref[], scene: Scene): Pick<Change, 'patches' | 'open'> => ({
  patches: refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys.map((key) => dropFrom(key, scene.quote)) : [])),
  open: refs.flatMap((ref) => (ref.keys.length > 1 ? [choose(ref.keys, scene)] : [])),
})

/** "Jayden quit", "take him off", "take one of the mediums off", up to where somebody is added. */
const readLeft = (tokens: readonly Token[], scene: Scene): Change => {
  const off = tokens.findIndex(
    (token, index) =>
      isLeft(tokens, index) || (isWord(token, 'take') && tokens.slice(index, index + 5).some((one) => isWord(one, 'off', 'out'))),
  )
  if (off < 0) return nothing
  for (const ahead of [1, 2]) {
    const sized = isWord(tokens[off], 'take') ? readSized(tokens, off + ahead, scene) : null
    if (sized !== null) return sized
  }
  const close = isWord(tokens[off], 'take') ? tokens.findIndex((token, at) => at > off && isWord(token, 'off', 'out')) : -1
  const between = refsIn(tokens.slice(off, Math.max(off, close)), scene.draft.rows)
  if (between.length > 0) return { ...dropRefs(between, scene), taken: span(off, close + 1) }
  const added = tokens.findIndex((token, index) => index > off && isWord(token, ...addWords))
  const end = added < 0 ? tokens.length : added
  const refs = refsIn(tokens.slice(0, end), scene.draft.rows)
  return refs.length === 0 ? nothing : { ...dropRefs(refs, scene), taken: span(0, end) }
}

const plays: readonly string[] = [
  ...['va', 'juega', 'viene', 'sigue', 'esta', 'participa', 'quiere', 'entra'],
  ...['van', 'juegan', 'vienen', 'siguen', 'estan', 'participan', 'quieren', 'entran'],
]

const leaving: readonly (readonly string[])[] = [
  ...[
    'se dio de baja',
    'causo baja',
    'dejo el equipo',
    'no juega mas',
    'no va a jugar',
    'no sigue',
    'se fue del equipo',
    'se salio',
  ],
  ...[
    'left the team',
    'has left',
    "isn't playing",
    'is not playing',
    "won't be playing",
    'not playing anymore',
    'no longer plays',
  ],
  ...['is leaving', 'left us', 'moved away', "can't play", 'pulled out', 'backed out'],
].map((words) => words.split(' '))

/** "… ya no va", "… is out", "… dropped out": where the words end that say of who stands before that they leave. */
const leavesAt = (tokens: readonly Token[], at: number): number | null => {
  const [first, second, third] = [tokens[at], tokens[at + 1], tokens[at + 2]]
  const ends = (token: Token | undefined) => isStop(token) || token?.text === ','
  if (isWord(first, 'ya') && isWord(second, 'no')) {
    if (isWord(third, ...plays)) return at + 3
    return ends(third) ? at + 2 : null
  }
  if (isWord(first, 'is', 'are') && isWord(second, 'out', 'off', 'gone')) return ends(third) ? at + 2 : null
  if (isWord(first, 'dropped') && isWord(second, 'out')) return at + 2
  const left = leaving.find((words) => words.every((word, index) => tokens[at + index]?.key === word))
  if (left !== undefined) return at + left.length
  return isWord(first, 'quit') && ends(second) ? at + 1 : null
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

/** "Brisa ya no, en su lugar …", "Gus is out": who is named right before is taken off. */
const readGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const ref of refsIn(tokens, scene.draft.rows)) {
    const to = leavesAt(tokens, ref.to)
    if (to !== null) return { ...dropRefs([ref], scene), taken: span(ref.from, to) }
  }
  return nothing
}

/** "drop Lena", "quita al 3": who stands behind such a word, up to where somebody is added. */
const readDropped = (tokens: readonly Token[], scene: Scene): Change => {
  const at = tokens.findIndex(isDrop)
  if (at < 0) return nothing
  const sized = readSized(tokens, at + 1, scene)
  if (sized !== null) return sized
  let end = at + 1
  while (!isStop(tokens[end]) && !isWord(tokens[end], ...addWords)) end += 1
  const refs = refsIn(tokens.slice(at + 1, end), scene.draft.rows)
  if (refs.length > 0) return { ...dropRefs(refs, scene), taken: span(at, end) }
  return readDroppedBefore(tokens, at, scene)
}

const one: readonly string[] = ['him', 'her', 'it', 'lo', 'la']
const several: readonly string[] = ['them', 'those', 'los', 'las']

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
