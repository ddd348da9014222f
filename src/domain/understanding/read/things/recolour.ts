import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Term } from '../text/lexicon.ts'
import { isWord, type Token } from '../text/tokens.ts'

export type Recolour = { readonly patches: readonly Patch[]; readonly taken: ReadonlySet<number> }

/** Everywhere that a colour stands in the draft. */
export const usesOf = (value: unknown, colour: string, path: readonly string[] = []): readonly (readonly string[])[] => {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'colour' && inner === colour ? [[...path, key]] : usesOf(inner, colour, [...path, key]),
  )
}

const painted = ({ garments, styles, marks }: Draft) => ({ garments, styles, marks })

const meant = (term: Term, draft: Draft): string | null => {
  if (term.meaning.kind !== 'colour') return null
  const ids = term.meaning.readings ?? [term.meaning.id]
  const used = ids.filter((id) => usesOf(painted(draft), id).length > 0)
  return used.length === 1 ? (used[0] ?? null) : null
}

const links: readonly string[] = listed.things.recolour

const linked = (tokens: readonly Token[], from: number, to: number): boolean => {
  const between = tokens.slice(from, to)
  return (
    between.length > 0 &&
    between.length <= 4 &&
    between.every((token) => isWord(token, ...links)) &&
    between.some((token) => isWord(token, ...listed.things.into))
  )
}

/** "change the navy to black", "cambia el azul por rojo": wherever the first colour stands it becomes the second. */
export const readRecolour = (tokens: readonly Token[], terms: readonly Term[], draft: Draft): Recolour => {
  const hues = terms.filter((term) => term.meaning.kind === 'colour')
  for (const [index, old] of hues.entries()) {
    const fresh = hues[index + 1]
    if (fresh?.meaning.kind !== 'colour' || fresh.meaning.readings !== undefined || !linked(tokens, old.to, fresh.from)) continue
    const was = meant(old, draft)
    const { id } = fresh.meaning
    if (was === null) continue
    const patches = usesOf(painted(draft), was).map((path): Patch => ({ path, value: id }))
    return { patches, taken: new Set(Array.from({ length: fresh.to - old.from }, (_, step) => old.from + step)) }
  }
  return { patches: [], taken: new Set() }
}
