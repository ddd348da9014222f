import type { Fit, Size } from '../../../garment/garment.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken, wordValues } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { whichRow } from './drop-rows.ts'

const ladder: readonly Size[] = ['XS', 'S', 'M', 'L', 'XL', '2XL', '3XL', '4XL']
const toddlers: readonly Size[] = ['2T', '3T', '4T', '5T']

/** The size some steps up or down of the same cut; null where the cut has no such size and it must be asked. */
const stepped = (size: Size, fit: Fit | undefined, steps: number): Size | null => {
  const sizes = toddlers.includes(size) ? toddlers : fit === 'youth' ? ladder.slice(0, 5) : ladder
  const at = sizes.indexOf(size)
  return at < 0 ? null : (sizes[at + steps] ?? null)
}

const ups: readonly string[] = listed.changes.ups
const downs: readonly string[] = listed.changes.downs
const steps: Readonly<Record<string, number>> = { ...wordValues.steps, '1': 1, '2': 2 }

type Shift = { readonly by: number; readonly from: number; readonly to: number }

/** "Up a size", "one size bigger", "una talla más grande", "súbeles una talla". */
const shiftAt = (tokens: readonly Token[]): Shift | null => {
  const at = tokens.findIndex((token, index) => isWord(token, ...listed.changes.sizes) && steps[tokens[index - 1]?.key ?? ''])
  if (at < 0) return plainShift(tokens)
  const near = [at + 2, at + 1, at - 2, at - 3].find((index) => isWord(tokens[index], ...ups, ...downs))
  const many = steps[tokens[at - 1]?.key ?? ''] ?? 1
  if (near === undefined) return shiftAhead(tokens, at - 1, many)
  return { by: isWord(tokens[near], ...ups) ? many : -many, from: Math.min(at - 1, near), to: Math.max(at, near) + 1 }
}

/** "Suban a Zamora y al 4 una talla": whose size it is stands between. */
const shiftAhead = (tokens: readonly Token[], at: number, many: number): Shift | null => {
  const isBetween = (token: Token | undefined): boolean =>
    isCapital(token) || isNumber(token) || token?.text === ',' || isWord(token, ...listed.again.joins)
  let from = at - 1
  while (isBetween(tokens[from])) from -= 1
  if (from === at - 1 || !isWord(tokens[from], ...ups, ...downs)) return null
  return { by: isWord(tokens[from], ...ups) ? many : -many, from: at, to: at + 2 }
}

/** "Both need to size down". */
const plainShift = (tokens: readonly Token[]): Shift | null => {
  const at = tokens.findIndex(
    (token, index) => isWord(token, ...listed.changes.sizing) && isWord(tokens[index + 1], ...ups, ...downs),
  )
  return at < 0 ? null : { by: isWord(tokens[at + 1], ...ups) ? 1 : -1, from: at, to: at + 2 }
}

const everybody: readonly string[] = listed.changes.everybody
const except: readonly string[] = listed.changes.except
const { keeperBegins, captainBegins, liberoBegins, coachBegins } = spoken.changes
const roles = [keeperBegins, captainBegins, liberoBegins, coachBegins].map((begins) => new RegExp(`^${begins}`))

/** Players whose line bears the note that a word names: "the goalkeepers". */
const ofRole = ({ rows }: Draft, { key }: Token): readonly string[] => {
  const role = roles.find((pattern) => pattern.test(key))
  if (role === undefined) return []
  return Object.entries(rows).flatMap(([row, { note }]) =>
    (note ?? '')
      .toLowerCase()
      .split(/[\s,]+/)
      .some((word) => role.test(word))
      ? [row]
      : [],
  )
}

const namedIn = (tokens: readonly Token[], draft: Draft): readonly string[] => [
  ...refsIn(tokens, draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : [])),
  ...tokens.flatMap((token) => ofRole(draft, token)),
]

/** Whose size changes; null where the words leave that open. */
const meantBy = (tokens: readonly Token[], { by: _, from, to }: Shift, draft: Draft): readonly string[] | null => {
  const out = tokens.findIndex((token) => isWord(token, ...except))
  const all = tokens.some((token) => isWord(token, ...everybody))
  const others = [...tokens.slice(0, from), ...tokens.slice(to)]
  if (!all) return out < 0 ? namedIn(others, draft) : null
  if (out < 0) return Object.keys(draft.rows)
  const left = namedIn(tokens.slice(out), draft)
  return left.length === 0 ? null : Object.keys(draft.rows).filter((key) => !left.includes(key))
}

const sizeOf = ({ rows, common }: Draft, key: string) => {
  const row = rows[key]
  return { size: row?.size ?? common?.size, fit: row?.fit ?? common?.fit }
}

const shiftRow = (draft: Draft, key: string, by: number): readonly Patch[] => {
  const { size, fit } = sizeOf(draft, key)
  return size === undefined || size === 'later' ? [] : [{ path: ['rows', key, 'size'], value: stepped(size, fit, by) }]
}

/** "Everyone up a size except the goalie", "Ana one size bigger": where the next size is none of the cut's, it is asked for again. */
export const readShift = (tokens: readonly Token[], { draft }: Scene): Change => {
  const shift = shiftAt(tokens)
  if (shift === null) return nothing
  const keys = meantBy(tokens, shift, draft)
  const taken = span(0, tokens.length)
  const counted = Object.keys(draft.rows).length > 0 ? [] : Object.entries(draft.tally)
  const tally = counted.flatMap(([key, { size, fit }]): readonly Patch[] => {
    const fresh = stepped(size, fit, shift.by)
    return fresh === null ? [] : [{ path: ['tally', key, 'size'], value: fresh }]
  })
  if (keys === null || tally.length < counted.length) return { ...nothing, taken }
  const rows = keys.flatMap((key) => shiftRow(draft, key, shift.by))
  return rows.length + tally.length === 0 ? nothing : { ...nothing, patches: [...rows, ...tally], taken }
}

const turning: readonly string[] = listed.changes.turning
const linking: readonly string[] = listed.changes.turnLinks
const whole: readonly string[] = listed.changes.whole
const making: readonly string[] = listed.changes.turns

type Turn = { readonly was: SizeFound; readonly now: SizeFound; readonly from: number; readonly several: boolean }

/** "All mediums become larges", "change the mediums to large", "las medianas pasan a grandes". */
const turnAt = (tokens: readonly Token[], at: number): Turn | null => {
  const counted = steps[tokens[at - 1]?.key ?? ''] === undefined ? at : at - 1
  const was = isWord(tokens[counted - 1], ...whole) ? sizeAt(tokens, at) : null
  if (was?.size === undefined) return null
  let next = was.to
  while (isWord(tokens[next], ...turning) && sizeAt(tokens, next) === null) next += 1
  const links = tokens.slice(was.to, next).some((token) => isWord(token, ...linking))
  const now = links ? sizeAt(tokens, next) : null
  if (now?.size === undefined) return null
  const several = isWord(tokens[counted - 1], ...listed.changes.wholeSeveral) || /s$/.test(tokens[was.to - 1]?.key ?? '')
  return { was, now, from: at, several }
}

const turned = ({ rows }: Draft, key: string, { size, fit }: SizeFound): readonly Patch[] =>
  rows[key] === undefined
    ? []
    : [
        { path: ['rows', key, 'size'], value: size ?? null },
        ...(fit === undefined ? [] : [{ path: ['rows', key, 'fit'], value: fit }]),
      ]

/** One size that becomes another: of all who have it, or of one, who is asked for where several have it. */
export const readTurned = (tokens: readonly Token[], scene: Scene): Change => {
  const { draft } = scene
  if (!tokens.some((token) => isWord(token, ...making))) return nothing
  const turn = [...tokens.keys()].map((at) => turnAt(tokens, at)).find((found) => found !== null)
  if (turn === undefined) return nothing
  const fits = (size: Size | undefined, fit: Fit | undefined) =>
    size === turn.was.size && (turn.was.fit === undefined || turn.was.fit === fit)
  const keys = Object.keys(draft.rows).filter((key) => fits(sizeOf(draft, key).size, sizeOf(draft, key).fit))
  const taken = span(turn.from - 1, turn.now.to)
  if (keys.length === 0) return nothing
  const rows = keys.map((key) => ({ key, patches: turned(draft, key, turn.now) }))
  if (turn.several || rows.length === 1) return { ...nothing, patches: rows.flatMap(({ patches }) => patches), taken }
  return { ...nothing, open: [whichRow(rows, scene)], taken }
}
