import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { addWords, type Change, nothing, type Scene, span } from './change.ts'
import { type Ref, refsIn } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { isCapital, isNumber, isWord, type Token } from './tokens.ts'

const dropWords: readonly string[] = [
  'drop',
  'remove',
  'lose',
  'strike',
  'omit',
  'delete',
  'quita',
  'quitar',
  'quite',
  'borra',
  'elimina',
  'saca',
  'cancel',
  'scratch',
  'quitame',
]
const leftWords: readonly string[] = ['quit', 'renuncio', 'salio']

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

const choose = (draft: Draft, keys: readonly string[], quote: string): Open => ({
  about: 'drop',
  path: '/roster',
  quote,
  readings: keys.map((key) => ({ value: String(lineOf(draft, key)), kind: 'row', patches: [dropRow(key)] })),
})

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

/** "drop 2 of the mediums": of counted pieces so many fewer, of named players it must be asked which. */
const dropSized = (tokens: readonly Token[], at: number, { draft, quote }: Scene): Change | null => {
  const amount = amountOf(tokens[at])
  if (amount === null) return null
  let next = at + 1
  while (isWord(tokens[next], 'of', 'the', 'de', 'las', 'los', 'a', 'size', 'talla')) next += 1
  const size = sizeAt(tokens, next)
  if (size?.size === undefined) return null
  const fits = (entry: { readonly size?: string | undefined; readonly fit?: string | undefined }) =>
    entry.size === size.size && (size.fit === undefined || entry.fit === size.fit)
  const tallied = Object.entries(draft.tally).filter(([, entry]) => fits(entry))
  const rows = Object.entries(draft.rows).flatMap(([key, row]) => (fits(row) ? [key] : []))
  const taken = span(at - 1, size.to)
  const [only] = tallied
  if (only !== undefined && tallied.length === 1 && rows.length === 0) {
    const left = only[1].quantity - amount
    return {
      ...nothing,
      patches: [left > 0 ? { path: ['tally', only[0], 'quantity'], value: left } : { path: ['tally', only[0]], value: null }],
      taken,
    }
  }
  if (rows.length === amount) return { ...nothing, patches: rows.map(dropRow), taken }
  return rows.length === 0 ? null : { ...nothing, open: [choose(draft, rows, quote)], taken }
}

const dropRefs = (refs: readonly Ref[], { draft, quote }: Scene): Pick<Change, 'patches' | 'open'> => ({
  patches: refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys.map((key) => dropFrom(key, quote)) : [])),
  open: refs.flatMap((ref) => (ref.keys.length > 1 ? [choose(draft, ref.keys, quote)] : [])),
})

/** "Jayden quit", "take him off", "take one of the mediums off", up to where somebody is added. */
const readLeft = (tokens: readonly Token[], scene: Scene): Change => {
  const off = tokens.findIndex(
    (token, index) =>
      isWord(token, ...leftWords) ||
      (isWord(token, 'left') && isStop(tokens[index + 1]) && isCapital(tokens[index - 1])) ||
      (isWord(token, 'take') && tokens.slice(index, index + 5).some((one) => isWord(one, 'off', 'out'))),
  )
  if (off < 0) return nothing
  for (const ahead of [1, 2]) {
    const sized = isWord(tokens[off], 'take') ? dropSized(tokens, off + ahead, scene) : null
    if (sized !== null) return sized
  }
  const added = tokens.findIndex((token, index) => index > off && isWord(token, ...addWords))
  const end = added < 0 ? tokens.length : added
  const refs = refsIn(tokens.slice(0, end), scene.draft.rows)
  return refs.length === 0 ? nothing : { ...dropRefs(refs, scene), taken: span(0, end) }
}

/** "Brisa ya no, en su lugar …", "Gus is out": who is named right before is taken off. */
const readGone = (tokens: readonly Token[], scene: Scene): Change => {
  for (const ref of refsIn(tokens, scene.draft.rows)) {
    const [first, second, third] = [tokens[ref.to], tokens[ref.to + 1], tokens[ref.to + 2]]
    const leaves = isWord(third, 'va', 'juega', 'viene', 'sigue', 'esta', 'participa') || isStop(third) || third?.text === ','
    const gone =
      (isWord(first, 'ya') && isWord(second, 'no') && leaves) ||
      (isWord(first, 'is') && isWord(second, 'out', 'off') && (isStop(third) || third?.text === ','))
    if (gone) return { ...dropRefs([ref], scene), taken: span(ref.from, ref.to + 2) }
  }
  return nothing
}

/** "drop Lena", "quita al 3", "Jayden quit, take him off". */
export const readDrops = (tokens: readonly Token[], scene: Scene): Change => {
  const at = tokens.findIndex((token) => isWord(token, ...dropWords))
  if (at < 0) {
    const gone = readGone(tokens, scene)
    return gone.taken.size > 0 ? gone : readLeft(tokens, scene)
  }
  const sized = dropSized(tokens, at + 1, scene)
  if (sized !== null) return sized
  let end = at + 1
  while (!isStop(tokens[end]) && !isWord(tokens[end], ...addWords)) end += 1
  const refs = refsIn(tokens.slice(at + 1, end), scene.draft.rows)
  return { ...dropRefs(refs, scene), taken: refs.length === 0 ? new Set() : span(at, end) }
}
