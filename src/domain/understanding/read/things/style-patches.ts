import type { Style } from '../../draft.ts'
import type { Patch } from '../../patch.ts'

export const isEmpty = (style: Style): boolean => Object.keys(style).length === 0

/** A make as changes of the draft at a place. */
export const stylePatches = (root: readonly string[], style: Style): readonly Patch[] => {
  const { stones, ...make } = style
  return [
    ...Object.entries(make).map(([key, value]): Patch => ({ path: [...root, key], value })),
    ...Object.entries(stones ?? {}).map(([key, value]): Patch => ({ path: [...root, 'stones', key], value })),
  ]
}
