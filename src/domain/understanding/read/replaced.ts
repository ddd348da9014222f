import type { Player } from '../draft.ts'
import type { Json } from '../patch.ts'
import { type Change, nothing, type Scene, span } from './change.ts'
import { nameAt, refAt } from './refs.ts'
import { sizeAt } from './sizes.ts'
import { isNumber, type Token } from './tokens.ts'

const startsWith = (tokens: readonly Token[], at: number, words: readonly string[]): boolean =>
  words.every((word, index) => tokens[at + index]?.key === word)

const before = [
  ...['en su lugar', 'en lugar de el', 'en lugar de ella', 'lo reemplaza', 'la reemplaza', 'lo sustituye', 'la sustituye'],
  ...['in his place', 'in her place', 'in their place', 'replaced by', 'replacing him is', 'replacing her is'],
].map((words) => words.split(' '))
const after = [
  ...[
    'takes his',
    'takes her',
    'takes their',
    'is taking his',
    'is taking her',
    'is taking their',
    'replaces him',
    'replaces her',
  ],
  ...[
    'in his place',
    'in her place',
    'instead',
    'entra por el',
    'entra por ella',
    'toma su lugar',
    'ocupa su lugar',
    'en su lugar',
  ],
].map((words) => words.split(' '))
const entering: readonly string[] = [
  'va',
  'entra',
  'juega',
  'viene',
  'pon',
  'ponle',
  'pongan',
  'metan',
  'es',
  'sera',
  'is',
  'put',
  'add',
  'a',
  ',',
  ':',
]

type Newcomer = { readonly name: string; readonly from: number; readonly to: number }

/** "en su lugar va Bianchi", "Bianchi takes his place": who comes for somebody that leaves. */
const newcomer = (tokens: readonly Token[]): Newcomer | null => {
  for (const at of tokens.keys()) {
    const words = before.find((one) => startsWith(tokens, at, one))
    let next = at + (words?.length ?? 0)
    while (words !== undefined && next < at + 8 && entering.includes(tokens[next]?.key ?? '')) next += 1
    const named = nameAt(tokens, words === undefined ? at : next, () => false)
    if (named === null) continue
    if (words !== undefined || after.some((one) => startsWith(tokens, named.to, one)))
      return { name: named.name, from: at, to: named.to }
  }
  return null
}

const same: readonly (readonly string[])[] = [
  'same size',
  'misma talla',
  'mismo talle',
  'same number and size',
  'same size and number',
].map((words) => words.split(' '))
const sameNumber: readonly (readonly string[])[] = [
  ...['same number', 'mismo numero', 'same size and number', 'misma talla y numero', 'mismo talle y numero', 'su mismo numero'],
].map((words) => words.split(' '))

const says = (tokens: readonly Token[], phrases: readonly (readonly string[])[]): boolean =>
  [...tokens.keys()].some((at) => phrases.some((words) => startsWith(tokens, at, words)))

/** Size and number of the one who comes: what is said behind the name, or the leaver's where it is said to be the same. */
const playerOf = (tokens: readonly Token[], leaver: Player, { name, to }: Newcomer): Player => {
  const behind = tokens.slice(to, to + 8)
  const size = behind.map((_, index) => sizeAt(tokens, to + index)).find((one) => one?.size !== undefined)
  const figure = behind.find(
    (token, index) => isNumber(token) && /^\d{1,3}$/.test(token.text) && sizeAt(tokens, to + index) === null,
  )
  const number = figure?.text ?? (says(tokens, sameNumber) ? leaver.number : undefined)
  const kept = size ?? (says(tokens, same) ? leaver : undefined)
  const fit = kept?.fit ?? leaver.fit
  return {
    name,
    ...(number === undefined ? {} : { number }),
    ...(kept?.size === undefined ? {} : { size: kept.size }),
    ...(fit === undefined ? {} : { fit }),
    ...(leaver.garment === undefined ? {} : { garment: leaver.garment }),
  }
}

/** "Rossi is out, Bianchi takes his place, same size": the line of the one who leaves becomes the newcomer's. */
export const readReplaced = (tokens: readonly Token[], scene: Scene, drops: Change): Change => {
  const [drop, ...more] = drops.patches
  const key = drop?.path[1]
  const leaver = scene.draft.rows[key ?? '']
  if (drop?.value !== null || key === undefined || more.length > 0 || leaver === undefined) return drops
  const found = newcomer(tokens)
  if (found === null || refAt(tokens, found.from, scene.draft.rows) !== null) return drops
  const value: Json = playerOf(tokens, leaver, found)
  const end = tokens.findIndex(
    (token, index) => index >= found.to && (token.kind === 'break' || ['.', ';', '!'].includes(token.text)),
  )
  const taken = new Set([...drops.taken, ...span(found.from, end < 0 ? tokens.length : end)])
  return { ...nothing, patches: [{ path: ['rows', key], value }], taken }
}
