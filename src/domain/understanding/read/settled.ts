import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { readAgesOfFew } from './ages/ages-of-few.ts'
import { type CutOfSizes, cutPatches } from './list/cut-of-sizes.ts'
import { goneWith, recount } from './list/recount.ts'
import { withoutEmptyLetters } from './things/letters-place.ts'

/** What follows from the changes of a message for the list and what is put on. */
export const settled = (
  draft: Draft,
  after: Draft,
  { cuts, said }: { readonly cuts: readonly CutOfSizes[]; readonly said: string },
): readonly Patch[] => [
  ...recount(draft, after),
  ...goneWith(draft, after),
  ...withoutEmptyLetters(after),
  ...cutPatches(cuts, after),
  ...readAgesOfFew(said, after),
]
