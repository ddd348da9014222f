import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { readAgeOfOne } from './ages/age-of-one.ts'
import { readAgesOfFew } from './ages/ages-of-few.ts'
import { type CutOfSizes, cutPatches } from './list/cut-of-sizes.ts'
import { goneWith, recount } from './list/recount.ts'
import type { Lexicon } from './text/lexicon.ts'
import { withoutEmptyLetters } from './things/letters-place.ts'

/** What follows from the changes of a message for the list and what is put on. */
export const settled = (
  draft: Draft,
  after: Draft,
  { cuts, said, lexicon }: { readonly cuts: readonly CutOfSizes[]; readonly said: string; readonly lexicon: Lexicon },
): readonly Patch[] => [
  ...recount(draft, after),
  ...goneWith(draft, after),
  ...withoutEmptyLetters(after),
  ...cutPatches(cuts, after),
  ...(draft.ages === after.ages ? readAgeOfOne(said, after, lexicon) : []),
  ...readAgesOfFew(said, after),
]
