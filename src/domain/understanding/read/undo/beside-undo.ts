import { canonical } from '../../content-hash.ts'
import type { Conversation } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import type { Understood } from '../../understood.ts'
import type { Reading } from '../left/left-clauses.ts'
import { readAll } from '../left/read-all.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { isNumber, tokensOf } from '../text/tokens.ts'
import { usesOf } from '../things/recolour.ts'
import type { TakenBack } from './taken-back.ts'

type Drafts = { readonly now: Draft; readonly before: Draft }

const valueAt = (draft: Draft, path: readonly string[]): unknown =>
  path.reduce<unknown>((value, key) => (typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined), draft)

/** Says again what is taken back ("the red is too much"), or what is so without it. */
const saysAgain = ({ path, value }: Patch, { now, before }: Drafts): boolean =>
  canonical(valueAt(now, path) ?? null) === canonical(value ?? null) ||
  canonical(preview(before, [{ path, value }])) === canonical(before)

const rosters: readonly string[] = ['rows', 'tally']

/** A value that stood nowhere before and stands nowhere now: the message says something new. */
const saysMore = (text: string, drafts: Drafts): boolean => {
  const tokens = tokensOf(text)
  const rows = Object.values(drafts).flatMap(({ rows: all, tally }) => [...Object.values(all), ...Object.values(tally)])
  const values: readonly string[] = rows.flatMap((row) => [
    row.size ?? '',
    'number' in row ? (row.number ?? '') : '',
    String(row.quantity ?? ''),
  ])
  return [...tokens.keys()].some((at) => {
    const said = sizeAt(tokens, at)?.size ?? (isNumber(tokens[at]) ? tokens[at]?.text : undefined)
    return said !== undefined && !values.includes(said)
  })
}

/** "Undo that, make them gold": a colour of neither draft is that of what had another before. */
const otherHue = (text: string, { now, before }: Drafts, lexicon: Lexicon): readonly Patch[] => {
  const hues = termsOf(lexicon, tokensOf(text)).flatMap(({ meaning }) => (meaning.kind === 'colour' ? [meaning] : []))
  const [hue, ...more] = hues
  if (hue === undefined || hue.readings !== undefined || more.length > 0) return []
  if ([now, before].some((draft) => usesOf(draft, hue.id).length > 0)) return []
  return huesOf(before)
    .filter(({ path, value }) => valueAt(now, path) !== value)
    .map(({ path }) => ({ path, value: hue.id }))
}

/** All colours of a draft with their places. */
const huesOf = (
  value: unknown,
  path: readonly string[] = [],
): readonly { readonly path: readonly string[]; readonly value: string }[] => {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'colour' && typeof inner === 'string' ? [{ path: [...path, key], value: inner }] : huesOf(inner, [...path, key]),
  )
}

type Beside = Reading & { readonly unheard: readonly string[] }

const nothing: Beside = { patches: [], open: [], unheard: [] }

type Scene = Drafts & { readonly lexicon: Lexicon; readonly read: (text: string) => Beside }

/** "Scratch that, Haas is the C": behind words that may only make room stands something that is neither so now nor was. */
const saysOther = (tail: string, { now, before, read }: Scene): boolean =>
  tail.trim() !== '' && read(tail).patches.some((patch) => !saysAgain(patch, { now, before }))

/**
 * What a message changes besides taking the last change back. In the sentence of the undo stands its reason, so that only a line of the
 * list, or the colour that was taken back, is changed by it; the other sentences are read as ever.
 */
const besideUndo = (
  { tail, rest }: { readonly tail: string; readonly rest: string },
  { now, before, lexicon, read }: Scene,
): Beside => {
  const drafts = { now, before }
  const reason = tail.trim() === '' ? nothing : read(tail)
  const other = rest.trim() === '' ? nothing : read(rest)
  const own = reason.patches.filter(({ path: [root = ''] }) => rosters.includes(root))
  const patches = [...otherHue(tail, drafts, lexicon), ...own, ...other.patches].filter((patch) => !saysAgain(patch, drafts))
  const open = patches.length === 0 ? [] : other.open.filter(({ about }) => about !== 'colour-of')
  return { patches, open, unheard: saysMore(tail, drafts) ? reason.unheard : [] }
}

type Talk = {
  readonly conversation: Conversation
  readonly lexicon: Lexicon
  readonly read: (text: string, of: Conversation) => Reading & { readonly pasted: number; readonly unheard: readonly string[] }
}

/** What is taken back, and what else the message says of the order as it is then; null where it only makes room for something else. */
export const takenBack = (back: TakenBack | null, { conversation, lexicon, read }: Talk): Partial<Understood> | null => {
  const last = conversation.past.at(-1)
  if (back?.kind === 'both') return { intent: { kind: 'undo', both: true } }
  if (back?.kind === 'values') return { patches: back.patches }
  if (back === null || last === undefined) return null
  const past = [...conversation.past, { draft: conversation.draft, facts: [], open: [] }]
  const before = { ...conversation, draft: last.draft, open: last.open, asked: null, past }
  const readBefore = (text: string) => readAll(text, (words) => read(words, before), { conversation: before, lexicon })
  const scene = { now: conversation.draft, before: last.draft, lexicon, read: readBefore }
  if (!back.plainly && saysOther(back.tail, scene)) return null
  return { intent: { kind: 'undo' }, ...besideUndo(back, scene) }
}

/** "Scratch that, Luis is a YM": what the message says behind the words that make room for it. */
export const withoutDismissing = (text: string, back: TakenBack | null): string =>
  back?.kind === 'undo' ? `${back.tail}${back.rest}`.replace(/^[\s,.;:-]+/, '') : text
