import type { Open } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { nameAt, type Ref, refAt, refsIn, rowsByName } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { fold, isCapital, isNumber, isWord, type Token } from './tokens.ts'

export type CorrectionsFound = {
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  readonly taken: ReadonlySet<number>
}

const nothing: CorrectionsFound = { patches: [], open: [], taken: new Set() }

const span = (from: number, to: number): ReadonlySet<number> =>
  new Set(Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index))

const dropWords: readonly string[] = [
  'drop',
  'remove',
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
const addWords: readonly string[] = ['add', 'agrega', 'agregar', 'agregue', 'pon', 'put']

const isStop = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || ['.', ';', '!'].includes(token.text)

const lineOf = (draft: Draft, key: string): number => Object.keys(draft.rows).indexOf(key) + 1

const dropRow = (key: string): Patch => ({ path: ['rows', key], value: null })

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
const dropSized = (tokens: readonly Token[], at: number, { draft, quote }: Scene): CorrectionsFound | null => {
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

type Scene = { readonly draft: Draft; readonly quote: string }

const dropRefs = (refs: readonly Ref[], { draft, quote }: Scene): Pick<CorrectionsFound, 'patches' | 'open'> => ({
  patches: refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys.map(dropRow) : [])),
  open: refs.flatMap((ref) => (ref.keys.length > 1 ? [choose(draft, ref.keys, quote)] : [])),
})

/** "drop Lena", "quita al 3", "Jayden quit, take him off". */
const readDrops = (tokens: readonly Token[], scene: Scene): CorrectionsFound => {
  const at = tokens.findIndex((token) => isWord(token, ...dropWords))
  if (at >= 0) {
    const sized = dropSized(tokens, at + 1, scene)
    if (sized !== null) return sized
    let end = at + 1
    while (!isStop(tokens[end]) && !isWord(tokens[end], ...addWords)) end += 1
    const refs = refsIn(tokens.slice(at + 1, end), scene.draft.rows)
    return { ...dropRefs(refs, scene), taken: refs.length === 0 ? new Set() : span(at, end) }
  }
  const off = tokens.findIndex(
    (token, index) =>
      isWord(token, ...leftWords) ||
      (isWord(token, 'left') && isStop(tokens[index + 1]) && isCapital(tokens[index - 1])) ||
      (isWord(token, 'take') && tokens.slice(index, index + 5).some((one) => isWord(one, 'off', 'out'))),
  )
  if (off < 0) return nothing
  const refs = refsIn(tokens.slice(0, tokens.length), scene.draft.rows)
  return refs.length === 0 ? nothing : { ...dropRefs(refs, scene), taken: span(0, tokens.length) }
}

/** "swap the numbers of Ansel and Bodhi". */
const readSwap = (tokens: readonly Token[], { draft }: Scene): CorrectionsFound => {
  if (
    !tokens.some((token) => isWord(token, 'swap', 'switch', 'intercambia', 'cambia')) ||
    !tokens.some((token) => isWord(token, 'numbers', 'numeros', 'sizes', 'tallas'))
  )
    return nothing
  const [a, b] = refsIn(tokens, draft.rows)
    .filter((ref) => ref.keys.length === 1)
    .map((ref) => ref.keys[0] ?? '')
  if (a === undefined || b === undefined) return nothing
  const key = tokens.some((token) => isWord(token, 'sizes', 'tallas')) ? 'size' : 'number'
  const value = (row: string) => draft.rows[row]?.[key] ?? null
  return {
    ...nothing,
    patches: [
      { path: ['rows', a, key], value: value(b) },
      { path: ['rows', b, key], value: value(a) },
    ],
    taken: span(0, tokens.length),
  }
}

/** "it's Katelyn, not Kaitlyn", "se escribe Itzel, no Itsel": a name spelled otherwise. */
const readSpelling = (tokens: readonly Token[], { draft }: Scene): CorrectionsFound => {
  const no = tokens.findIndex((token, index) => isWord(token, 'not', 'no') && isCapital(tokens[index + 1]))
  const old = no < 0 ? [] : rowsByName(draft.rows, tokens[no + 1]?.text ?? '')
  const [key] = old
  const before = tokens[no - 1]?.text === ',' ? no - 2 : no - 1
  const fresh = tokens[before]
  if (key === undefined || old.length !== 1 || fresh === undefined || !isCapital(fresh)) return nothing
  const wrong = tokens[no + 1]?.text ?? ''
  const name = (draft.rows[key]?.name ?? '')
    .split(' ')
    .map((word) => (fold(word) === fold(wrong) ? fresh.text : word))
    .join(' ')
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name }], taken: span(before, no + 2) }
}

const numberVerbs: readonly string[] = [
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
]

const newSize = (tokens: readonly Token[], from: number) => {
  let at = from
  while (at < from + 5 && isWord(tokens[at], ...sizeVerbs) && sizeAt(tokens, at) === null) at += 1
  const size = sizeAt(tokens, at)
  return size?.size === undefined ? null : size
}

const renamed = (tokens: readonly Token[], ref: Ref, { draft }: Scene): CorrectionsFound | null => {
  if (ref.by !== 'number' || !isWord(tokens[ref.to], 'is', 'es', 'should')) return null
  const start = isWord(tokens[ref.to], 'should') && isWord(tokens[ref.to + 1], 'be', 'say', 'read') ? ref.to + 2 : ref.to + 1
  const name = nameAt(tokens, start, () => false)
  const [key] = ref.keys
  if (name === null || key === undefined || draft.rows[key]?.name === undefined || sizeAt(tokens, start) !== null) return null
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name.name }], taken: span(ref.from, name.to) }
}

/** What is said right after a reference to one row: a size, another number, another name. */
const changeAt = (tokens: readonly Token[], ref: Ref, scene: Scene): CorrectionsFound | null => {
  const [key] = ref.keys
  if (key === undefined || ref.keys.length !== 1) return null
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
  return renamed(tokens, ref, scene)
}

const readChanges = (tokens: readonly Token[], scene: Scene): CorrectionsFound => {
  const patches: Patch[] = []
  const taken = new Set<number>()
  let at = 0
  while (at < tokens.length) {
    const ref = isWord(tokens[at - 1], ...addWords) ? null : refAt(tokens, at, scene.draft.rows)
    const found = ref === null ? null : changeAt(tokens, ref, scene)
    if (found !== null) {
      patches.push(...found.patches)
      for (const index of found.taken) taken.add(index)
    }
    at = found === null ? (ref?.to ?? at + 1) : Math.max(...found.taken) + 1
  }
  return { patches, open: [], taken }
}

/** Changes of a roster that is there: who is dropped, another size, number or spelling, numbers swapped. Nothing else is touched. */
export const readCorrections = (tokens: readonly Token[], draft: Draft, quote: string): CorrectionsFound => {
  if (Object.keys(draft.rows).length === 0 && Object.keys(draft.tally).length === 0) return nothing
  const scene = { draft, quote }
  const swap = readSwap(tokens, scene)
  if (swap.patches.length > 0) return swap
  const drops = readDrops(tokens, scene)
  const free = (found: CorrectionsFound): boolean => [...found.taken].every((index) => !drops.taken.has(index))
  const others = [readSpelling(tokens, scene), readChanges(tokens, scene)].filter(free)
  const all = [drops, ...others]
  return {
    patches: all.flatMap((found) => found.patches),
    open: all.flatMap((found) => found.open),
    taken: new Set(all.flatMap((found) => [...found.taken])),
  }
}
