import type { Draft } from '../../draft.ts'
import { garmentIds } from './hear-garment.ts'
import type { Item } from './items.ts'

/** Where a walk begins: the draft, what is said, and whether adjectives follow their noun. */
export type Start = {
  readonly draft: Draft
  readonly items: readonly Item[]
  readonly postfix: boolean
  readonly setsTold: boolean
}

const garmentsNamed = ({ draft, items }: Start): number => {
  const roles = new Set(items.flatMap((item) => (item.kind === 'role' ? [item.id] : [])))
  const kinds = new Set(items.flatMap((item) => (item.kind === 'garment' ? [garmentIds[item.id]] : [])))
  if (roles.size > 0) kinds.delete('jersey')
  return new Set([...Object.keys(draft.garments), ...roles, ...kinds]).size
}

const twoOfAKind = ({ items }: Start): boolean => {
  const colours = (kind: string) =>
    items.flatMap((item, at) =>
      item.kind === 'garment' && item.id === kind
        ? [items.slice(Math.max(0, at - 3), at).find((one) => one.kind === 'colour')?.key]
        : [],
    )
  if (items.some((item) => item.kind === 'garment' && item.another === true)) return true
  return Object.keys(garmentIds).some((kind) => new Set(colours(kind).filter((colour) => colour !== undefined)).size > 1)
}

/** Whether an order has more than one garment, those of this message counted in. */
export const isSeveral = (start: Start): boolean => garmentsNamed(start) > 1 || twoOfAKind(start)
