import type { Asked, Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import type { Item } from './items.ts'
import { usesOf } from './recolour.ts'

export type HueFound = { readonly patches: readonly Patch[]; readonly open: readonly Open[] }

type Hue = Extract<Item, { kind: 'colour' }>

/** "gold, not silver": where it was silver it is gold. */
export const swapColours = (draft: Draft, negated: readonly string[], loose: readonly Hue[]): readonly Patch[] => {
  const [old] = negated
  const [fresh] = loose
  if (old === undefined || fresh === undefined) return []
  const parts = { garments: draft.garments, styles: draft.styles, marks: draft.marks }
  return usesOf(parts, old).map((path) => ({ path, value: fresh.id }))
}

const looseQuestion = (hue: Hue, path: readonly string[], at: string): Open => ({
  about: 'colour',
  path: at,
  quote: hue.key,
  readings: (hue.readings ?? []).map((id) => ({ value: id, kind: 'colour', patches: [{ path, value: id }] })),
})

/** "Make them navy" when everything has its colour: is it the garment's or the letters'? */
const ofWhat = (draft: Draft, hue: Hue): HueFound => {
  const garments = Object.keys(draft.garments).map((id): Patch => ({ path: ['garments', id, 'colour'], value: hue.id }))
  const marks = Object.entries(draft.marks).filter(([, mark]) => mark.wanted !== false)
  const letters = marks.map(([id]): Patch => ({ path: ['marks', id, 'style', 'colour'], value: hue.id }))
  if (hue.readings !== undefined || garments.length === 0 || letters.length === 0) return { patches: [], open: [] }
  const readings = [
    { value: 'garments', kind: 'word', patches: garments },
    { value: 'letters', kind: 'word', patches: letters },
  ] as const
  return { patches: [], open: [{ about: 'colour-of', path: '/garments/0/colour', quote: hue.key, readings }] }
}

const isUsed = ({ garments, styles, marks }: Draft, hue: Hue): boolean =>
  (hue.readings ?? [hue.id]).some((id) => usesOf({ garments, styles, marks }, id).length > 0)

/** Where a colour is asked for or missing: the garment first, a text before it. */
const bareAt = (draft: Draft, asked: Asked | null): readonly string[] | null => {
  if (asked?.code === 'ask-vinyl-colour') return ['styles', 'all', 'colour']
  const bare = Object.entries(draft.garments).find(([, wish]) => wish.colour === undefined)?.[0]
  const marks = Object.entries(draft.marks).filter(
    ([id, mark]) =>
      mark.wanted !== false &&
      mark.style?.colour === undefined &&
      draft.styles['all']?.colour === undefined &&
      draft.styles[mark.content]?.colour === undefined &&
      draft.styles[id]?.colour === undefined,
  )
  const mark = marks.length === 1 ? marks[0]?.[0] : undefined
  const dressed = Object.keys(draft.garments).length > 0
  if (mark !== undefined && ((bare === undefined && dressed) || draft.marks[mark]?.content === 'text'))
    return ['marks', mark, 'style', 'colour']
  const garment = bare ?? (Object.keys(draft.garments).length === 0 ? 'jersey' : undefined)
  if (garment !== undefined) return ['garments', garment, 'colour']
  const contents = [...new Set(marks.map(([, { content }]) => content))]
  return contents.length === 0 ? null : ['styles', contents.length === 1 ? (contents[0] ?? 'all') : 'all', 'colour']
}

/** Colours said of nothing in particular go where a colour was asked for, or where one is missing: the garment first, then what is on it. */
export const placeLoose = (draft: Draft, loose: readonly Hue[], asked: Asked | null): HueFound => {
  const [hue, next] = loose
  if (hue === undefined) return { patches: [], open: [] }
  const first = placeOne(draft, hue, asked)
  if (next === undefined || first.patches.length === 0) return first
  const second = placeOne(preview(draft, first.patches), next, null)
  return { patches: [...first.patches, ...second.patches], open: [...first.open, ...second.open] }
}

const placeOne = (draft: Draft, hue: Hue, asked: Asked | null): HueFound => {
  const path = bareAt(draft, asked)
  if (path === null) return isUsed(draft, hue) ? { patches: [], open: [] } : ofWhat(draft, hue)
  if (hue.readings !== undefined) return { patches: [], open: [looseQuestion(hue, path, '/garments/0/colour')] }
  return { patches: [{ path, value: hue.id }], open: [] }
}
