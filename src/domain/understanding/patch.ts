import { type Draft, draftSchema } from './draft.ts'

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json | undefined }

/** One change of the draft: the value at a path is set, or taken away when it is null; undefined changes nothing. */
export type Patch = { readonly path: readonly string[]; readonly value: Json | undefined }

type Branch = { readonly [key: string]: unknown }

const isBranch = (value: unknown): value is Branch => typeof value === 'object' && value !== null && !Array.isArray(value)

const patched = (branch: Branch, path: readonly string[], value: Json | undefined): Branch => {
  const [key, ...rest] = path
  if (key === undefined || value === undefined) return branch
  if (rest.length === 0 && value === null) {
    return Object.fromEntries(Object.entries(branch).filter(([other]) => other !== key))
  }
  if (rest.length === 0) return { ...branch, [key]: value }
  const inner = branch[key]
  if (inner === undefined && value === null) return branch
  return { ...branch, [key]: patched(isBranch(inner) ? inner : {}, rest, value) }
}

/** Roots that a draft always has. */
const roots: readonly string[] = ['garments', 'styles', 'marks', 'rows', 'tally', 'later', 'agreed', 'notes']

/** A patch that the draft's schema refuses (a text too long, a height out of reach) changes nothing. */
const applyOne = (draft: Draft, patch: Patch): Draft => {
  const [root = ''] = patch.path
  if (patch.path.length === 1 && patch.value === null && roots.includes(root)) return draft
  const next = draftSchema.safeParse(patched(draft, patch.path, patch.value))
  return next.success ? next.data : draft
}

/** The draft after the changes, in their order; all at once where that is valid, one by one where one of them is not. */
export const applyPatches = (draft: Draft, patches: readonly Patch[]): Draft => {
  if (patches.length === 0) return draft
  const next = draftSchema.safeParse(patches.reduce<Branch>((branch, { path, value }) => patched(branch, path, value), draft))
  return next.success ? next.data : patches.reduce(applyOne, draft)
}

/** Maker: the draft as it would be, for readers that look ahead within one message; what is kept goes through the schema. */
export const preview = (draft: Draft, patches: readonly Patch[]): Draft =>
  patches.reduce<Branch>((branch, { path, value }) => patched(branch, path, value), draft) as Draft
