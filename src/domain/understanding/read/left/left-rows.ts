import type { Fit, Size } from '../../../garment/garment.ts'
import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing } from '../list/change.ts'
import { whichRow } from '../players/drop-rows.ts'
import { isWorn } from '../players/told-number.ts'
import { isNear, renamed } from '../text/near-names.ts'
import { fold, isWord } from '../text/tokens.ts'
import type { Said, Telling } from './telling.ts'

const words = listed.clauses

/** Things that are put on: a size or a figure beside them is not a player's. */
const pressed: readonly string[] = ['place', 'colour', 'outline', 'shadow', 'stones', 'vinyl', 'class', 'part', 'script', 'arc']

export const speaksOfThings = ({ terms }: Telling): boolean => terms.some(({ meaning }) => pressed.includes(meaning.kind))

type Told = { readonly size?: Size; readonly fit?: Fit; readonly number?: string; readonly name?: string }

const fresh = <Value>(said: readonly Said<Value>[]): readonly Said<Value>[] => said.filter(({ old, ends }) => !old && ends)

/** "McAllister has one L": a letter of a spelling is no size. */
const isLetter = ({ tokens }: Telling, { at, to }: Said<unknown>): boolean =>
  to === at + 1 && tokens[at]?.text.length === 1 && isWord(tokens[at - 1], ...words.letter)

const sizeOf = (telling: Telling, row: Player, { common }: Draft): Pick<Told, 'size' | 'fit'> | null => {
  const spelled = telling.tokens.some((token) => isWord(token, ...words.spelling))
  const had = { size: row.size ?? common?.size, fit: row.fit ?? common?.fit }
  const said = fresh(telling.sizes).filter(
    (one) =>
      !(spelled && isLetter(telling, one)) &&
      !isWord(telling.tokens[one.at - 1], ...listed.anew.another) &&
      (one.value.size !== had.size || (one.value.fit !== undefined && one.value.fit !== had.fit)),
  )
  const [first, ...more] = said
  if (first === undefined || more.some(({ value }) => value.size !== first.value.size || value.fit !== first.value.fit))
    return null
  const { size, fit } = first.value
  return { ...(size === undefined ? {} : { size }), ...(fit === undefined ? {} : { fit }) }
}

const isMeasure = ({ terms }: Telling, { to }: Said<unknown>): boolean =>
  terms.some(({ from, meaning }) => from === to && meaning.kind === 'unit')

const numberOf = (telling: Telling, row: Player, { rows }: Draft): string | null => {
  const { figures, tokens } = telling
  const numbered = Object.values(rows).some(({ number }) => number !== undefined)
  const said = fresh(figures).filter(
    (one) =>
      one.value !== row.number &&
      isWorn(tokens, one.at) &&
      !isWord(tokens[one.at - 1], ...words.noNumber) &&
      !isMeasure(telling, one),
  )
  const [first, ...more] = said
  return first === undefined || more.length > 0 || !numbered ? null : first.value
}

/** A name that is near to the one that stands there takes its place, word for word; another only where words of printing lead to it. */
const nameOf = ({ names, tokens, refs }: Telling, row: Player, { rows }: Draft): string | null => {
  const [first, ...more] = names.filter(({ old }) => !old)
  const named = Object.values(rows).some(({ name }) => name !== undefined)
  if (first === undefined || more.length > 0 || !named || first.value.length < 2) return null
  const had = (row.name ?? '').split(' ')
  const near = had.filter(
    (word) => isNear(fold(word), fold(first.value)) || (fold(word) === fold(first.value) && word !== first.value),
  )
  if (near.length === 1 && !first.value.includes(' ')) return had.map((word) => (word === near[0] ? first.value : word)).join(' ')
  if (near.length > 0) return first.value
  if (!isWord(tokens[first.at - 1], ...words.print) || !first.ends) return null
  const spoken = {
    words: refs.flatMap(({ from, to }) => tokens.slice(from, to)).map(({ text }) => fold(text)),
    surname: tokens.some((token) => isWord(token, ...listed.told.surname)),
  }
  return renamed(row.name ?? '', first.value, spoken)
}

const toldOf = (telling: Telling, row: Player, draft: Draft): Told => {
  const name = nameOf(telling, row, draft)
  const size = sizeOf(telling, row, draft)
  const number = numberOf(telling, row, draft)
  return {
    ...(name === null ? {} : { name }),
    ...(size === null ? {} : size),
    ...(number === null ? {} : { number }),
  }
}

const patchesFor = (key: string, told: Told): readonly Patch[] =>
  Object.entries(told).map(([field, value]): Patch => ({ path: ['rows', key, field], value }))

/** "Beto says hi, Marcos is M": somebody is named beside them who is not on the list. */
const isOfStranger = ({ names, refs, sizes, figures }: Telling, keys: readonly string[], { rows }: Draft): boolean => {
  const own = keys.flatMap((key) => (rows[key]?.name ?? '').split(' ').map(fold))
  const strangers = names.filter(
    ({ value }) => !value.split(' ').some((word) => own.some((one) => one === fold(word) || isNear(one, fold(word)))),
  )
  return sizes.length + figures.length > 0 && strangers.some(({ at }) => at > 0 || refs.length === 0)
}

export type Subject = { readonly keys: readonly string[]; readonly several: boolean }

/** What a clause tells of those it is about: changed where one reading is left, asked where there are two. */
export const toldOfRows = (
  telling: Telling,
  { keys, several }: Subject,
  { draft, quote, asks }: { readonly draft: Draft; readonly quote: string; readonly asks: boolean },
): Change => {
  if (keys.length === 0 || asks || isOfStranger(telling, keys, draft) || telling.unsure || speaksOfThings(telling)) return nothing
  const found = keys
    .map((key) => ({ key, told: toldOf(telling, draft.rows[key] ?? {}, draft) }))
    .filter(({ told }) => Object.keys(told).length > 0)
  const [first] = found
  if (first === undefined) return nothing
  const shared = found.every(({ told }) => told.number === undefined && told.name === undefined)
  const rows = found.map(({ key, told }) => ({ key, patches: patchesFor(key, told) }))
  const patches = rows.flatMap((row) => row.patches)
  if (rows.length > 1 && !(several && shared)) return { ...nothing, open: [whichRow(rows, { draft, quote })] }
  return { ...nothing, patches }
}

/** "*Petroff with two f's, not Petrov": a name near to one of the list, where the old one or its spelling is spoken of. */
export const respelled = (telling: Telling, draft: Draft, old: readonly string[]): Change => {
  const spoken = telling.tokens.some((token) => token.text === '*' || isWord(token, ...words.spelling, ...words.letter))
  const found = Object.entries(draft.rows).flatMap(([key, row]) => {
    const name = old.length === 0 || old.includes(key) ? nameOf(telling, row, draft) : null
    const near = (row.name ?? '').split(' ').some((word) => telling.names.some(({ value }) => isNear(fold(word), fold(value))))
    return name !== null && near ? [{ key, name }] : []
  })
  const [only, ...more] = found
  if (only === undefined || more.length > 0 || telling.unsure || (old.length === 0 && !spoken)) return nothing
  return { ...nothing, patches: [{ path: ['rows', only.key, 'name'], value: only.name }] }
}
