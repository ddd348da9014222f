import { canonical } from '../content-hash.ts'
import type { Open } from '../conversation.ts'
import type { Draft, Player } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { listed } from '../words/languages.ts'
import { type Change, nothing, type Scene, span } from './change.ts'
import { refsIn } from './refs.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token } from './tokens.ts'

const swapping: readonly string[] = listed.changes.swap

const mixed = phrasesOf(listed.changes.mixed)
const isMixed = (tokens: readonly Token[], at: number): boolean => phraseEnd(tokens, at, mixed) !== null

const fields = {
  number: listed.changes.numbers,
  size: listed.changes.sizes,
  name: listed.changes.names,
} as const
type Field = keyof typeof fields

const fieldOf = (tokens: readonly Token[]): Field | null => {
  const said = (field: Field): boolean => tokens.some((token) => isWord(token, ...fields[field]))
  if (said('size')) return 'size'
  if (said('name')) return 'name'
  return said('number') ? 'number' : null
}

/** Two of the list and nobody else, by name or number. */
const pairIn = (tokens: readonly Token[], draft: Draft): readonly [string, string] | null => {
  const refs = refsIn(tokens, draft.rows)
  const [a, b, ...more] = [...new Set(refs.flatMap((ref) => (ref.keys.length === 1 ? ref.keys : [])))]
  const twice = refs.length > 2 || tokens.filter(isNumber).length > 2
  return a === undefined || b === undefined || more.length > 0 || twice ? null : [a, b]
}

const give = (key: string, field: Field, from: Player | undefined): Patch => ({
  path: ['rows', key, field],
  value: from?.[field] ?? null,
})

/** "Swap the numbers of Ansel and Bodhi", "Ana and Bo trade sizes", "4 y 7 están al revés": what two of the list exchange. */
export const readSwap = (tokens: readonly Token[], scene: Scene): Change => {
  const { draft } = scene
  const verb = tokens.findIndex((token, at) => isWord(token, ...swapping) || isMixed(tokens, at))
  const pair = verb < 0 ? null : pairIn(tokens, draft)
  const field = fieldOf(tokens)
  const clear = tokens.some((token) => isWord(token, ...swapping) && !isWord(token, ...listed.changes.swapVaguely))
  const vague = isWord(tokens[verb], ...listed.changes.swapVaguely) && !clear
  if (pair === null || (field === null && vague)) return nothing
  const [a, b] = pair
  const patches = (of: Field): readonly Patch[] => [give(a, of, draft.rows[b]), give(b, of, draft.rows[a])]
  const found = { ...nothing, patches: patches(field ?? 'number'), taken: span(0, tokens.length) }
  return field === 'name' ? withOwn(found, scene) : found
}

const same = (a: Player | undefined, b: Player | undefined): boolean => {
  const { name: _a, number: _b, ...first } = a ?? {}
  const { name: _c, number: _d, ...second } = b ?? {}
  return canonical(first) === canonical(second)
}

const told = ({ number, name, fit, size }: Player): string =>
  [number, name, fit === 'youth' ? 'Y' : undefined, size].filter((part) => part !== undefined).join(' ')

const toldAll = (draft: Draft, keys: readonly string[], patches: readonly Patch[]): string =>
  keys
    .map((key) => {
      const own = patches.filter(({ path }) => path[1] === key).map(({ path, value }) => [path[2], value])
      return told({ ...draft.rows[key], ...Object.fromEntries(own) })
    })
    .sort((a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10))
    .join(' · ')

/**
 * "No, 12 is Ada and 21 is Ida" of two whose sizes differ: the numbers were mixed up and the sizes are the persons', or the names were,
 * and the sizes stay with the numbers. It is asked; where sizes and all else are alike the names just change places.
 */
export const withOwn = (found: Change, { draft, quote }: Scene): Change => {
  const names = found.patches.filter(({ path }) => path[0] === 'rows' && path[2] === 'name')
  const keys = names.map(({ path }) => path[1] ?? '')
  const [first] = keys
  const holder = (name: Patch['value']): string | undefined => keys.find((key) => draft.rows[key]?.name === name)
  const moved = names.every(({ path, value }) => holder(value) !== undefined && holder(value) !== path[1])
  if (names.length < 2 || names.length < found.patches.length || !moved || found.open.length > 0) return found
  if (keys.every((key) => same(draft.rows[key], draft.rows[first ?? '']))) return found
  const numbers = names.map(({ path, value }): Patch => give(holder(value) ?? '', 'number', draft.rows[path[1] ?? '']))
  const reading = (patches: readonly Patch[]) => ({ value: toldAll(draft, keys, patches), kind: 'text', patches }) as const
  const open: Open = { about: 'exchange', path: '/roster', quote, readings: [reading(numbers), reading(names)] }
  return { ...found, patches: [], open: [open] }
}
