import { canonical } from '../../content-hash.ts'
import type { Open } from '../../conversation.ts'
import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { isEnd, isNumber, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

const swapping: readonly string[] = listed.changes.swap

const mixed = phrasesOf(listed.changes.mixed)
const isMixed = (tokens: readonly Token[], at: number): boolean => phraseEnd(tokens, at, mixed) !== null

const fields = {
  number: listed.changes.numbers,
  size: listed.changes.sizes,
  name: listed.changes.names,
} as const
type Field = keyof typeof fields

const unchanged: readonly string[] = listed.things.unchanged

const isPause = (token: Token): boolean =>
  isEnd(token) || [',', ':', '?', '('].includes(token.text) || isWord(token, ...listed.changes.butThen)

/** Clauses that name a field. */
const clausesOf = (tokens: readonly Token[], field: Field): readonly (readonly Token[])[] =>
  tokens.flatMap((token, at) => {
    if (!isWord(token, ...fields[field])) return []
    const end = tokens.slice(at).findIndex(isPause)
    return [tokens.slice(tokens.slice(0, at).findLastIndex(isPause) + 1, end < 0 ? tokens.length : at + end)]
  })

/** "…, las tallas se quedan", "cada quien con su talla": sizes stay with whom they are. */
const keepSizes = (tokens: readonly Token[]): boolean =>
  clausesOf(tokens, 'size').some((clause) => clause.some((token) => isWord(token, ...listed.changes.ownSize)))

/** "the sizes stay", "they keep their own sizes", "but not the sizes": the field is named, and stays as it is. */
const isKept = (clause: readonly Token[], field: Field): boolean => {
  const at = clause.findIndex((token) => isWord(token, ...fields[field]))
  const before = clause.slice(Math.max(0, at - 3), at)
  const refused = before.some((token) => isWord(token, ...listed.changes.not, ...listed.changes.without))
  return refused || clause.some((token) => isWord(token, ...unchanged, ...listed.changes.staying))
}

const fieldOf = (tokens: readonly Token[]): Field | null => {
  const said = (field: Field): boolean => clausesOf(tokens, field).some((clause) => !isKept(clause, field))
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

type Whose = { readonly key: string; readonly name: string; readonly from: number; readonly to: number }

/** "El 21 es Guzmán", "34 O'Farrill": a number of the list and right behind it a name of the list. */
const whoseNumbers = (tokens: readonly Token[], { rows }: Draft): readonly Whose[] => {
  const refs = refsIn(tokens, rows)
  return refs.flatMap((ref, index) => {
    const next = refs[index + 1]
    const [key, name] = [ref.keys[0], rows[next?.keys[0] ?? '']?.name]
    const pair = ref.by === 'number' && next?.by === 'name' && ref.keys.length === 1 && next.keys.length === 1
    if (!pair || key === undefined || name === undefined) return []
    const joined = tokens.slice(ref.to, next.from).every((token) => isWord(token, ...listed.changes.whoseNumber))
    return joined ? [{ key, name, from: ref.from, to: next.to }] : []
  })
}

/** "El 21 es Guzmán y el 34 O'Farrill": the names of the list, told anew to the numbers of the list. */
export const readWhoseNumbers = (tokens: readonly Token[], scene: Scene): Change => {
  const pairs = whoseNumbers(tokens, scene.draft)
  const [first] = pairs
  const names = new Set(pairs.map(({ name }) => name))
  const theirs = new Set(pairs.map(({ key }) => scene.draft.rows[key]?.name ?? ''))
  const turned = pairs.length > 1 && names.size === pairs.length && [...names].every((name) => theirs.has(name))
  if (!turned || first === undefined || pairs.some(({ key, name }) => scene.draft.rows[key]?.name === name)) return nothing
  const patches = pairs.map(({ key, name }): Patch => ({ path: ['rows', key, 'name'], value: name }))
  const found = { ...nothing, patches, taken: span(first.from, tokens.length) }
  const asked = withOwn(found, scene)
  const own = keepSizes(tokens) ? asked.open[0]?.readings[0]?.patches : undefined
  return own === undefined ? asked : { ...found, patches: own }
}
