import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { garmentIds } from './hear-garment.ts'
import type { Item } from './items.ts'

const said = listed.things

const has = (items: readonly Item[], words: readonly string[]): boolean => items.some(({ key }) => words.includes(key))

/** "Make them hoodies", "change to t-shirts", "mejor sudaderas": another kind for what is ordered, and no piece more. */
const isTurned = (sentence: readonly Item[], at: number): boolean => {
  const before = sentence.slice(Math.max(0, at - 6), at)
  const counted = sentence.some(({ kind }) => kind === 'figure' || kind === 'count')
  const instead = has(sentence, said.turnedInto)
  const turned = has(before, said.turning) && has(before, said.turned)
  return !counted && !has(sentence, said.besides) && (instead || turned)
}

/** What stood for one garment stands for another: its colour and count, whoever wears it, and what is on it. */
const renamed = (draft: Draft, from: string, to: string): readonly Patch[] => {
  const { colour, from: whose, fit, size, count, each } = draft.garments[from] ?? {}
  const kept = Object.entries({ colour, from: whose, fit, size, count, each }).flatMap(([key, value]): readonly Patch[] =>
    value === undefined ? [] : [{ path: ['garments', to, key], value }],
  )
  const worn = Object.entries(draft.marks).filter(([, { on }]) => on?.includes(from) === true)
  const rows = Object.entries(draft.rows).filter(([, { garment }]) => garment === from)
  return [
    { path: ['garments', from], value: null },
    ...kept,
    ...worn.map(([id, { on = [] }]): Patch => ({ path: ['marks', id, 'on'], value: on.map((one) => (one === from ? to : one)) })),
    ...rows.map(([key]): Patch => ({ path: ['rows', key, 'garment'], value: to })),
  ]
}

/** What a message does to the only garment of an order, and the items without the one that is no more. */
export type Turned = { readonly patches: readonly Patch[]; readonly items: readonly Item[] }

/** The only garment of an order becomes another one; nothing where several are ordered or named. */
export const turnedGarment = (draft: Draft, items: readonly Item[]): Turned => {
  const none: Turned = { patches: [], items }
  const [from, ...others] = Object.keys(draft.garments)
  const at = items.findIndex((one) => one.kind === 'garment' && garmentIds[one.id] !== from)
  const item = items[at]
  const named = new Set(items.flatMap((one) => (one.kind === 'garment' ? [garmentIds[one.id]] : [])))
  if (from === undefined || others.length > 0 || item?.kind !== 'garment' || item.loose === true) return none
  const to = garmentIds[item.id]
  const start = items.slice(0, at).findLastIndex(({ kind }) => kind === 'stop') + 1
  const stop = items.findIndex(({ kind }, index) => index > at && kind === 'stop')
  const sentence = items.slice(start, stop < 0 ? items.length : stop)
  const only = [...named].every((id) => id === to || id === from)
  if (!only || !isTurned(sentence, at - start)) return none
  const isOld = (one: Item, index: number): boolean =>
    one.kind === 'garment' && garmentIds[one.id] === from && items[index - 1]?.kind !== 'no'
  const left = items.filter((one, index) => !isOld(one, index))
  return { patches: renamed(draft, from, to), items: left }
}
