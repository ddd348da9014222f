import type { Conversation } from '../conversation.ts'
import { readAgesByName } from './ages/ages-by-name.ts'
import { readAgesOfKind } from './ages/ages-of-kind.ts'
import { readYoungestToOldest } from './ages/youngest-to-oldest.ts'
import { readToFollow } from './calendar/to-follow.ts'
import { readCutOfSizes } from './list/cut-of-sizes.ts'
import { readSleevesOfRole } from './players/sleeves-of-role.ts'
import type { Lexicon } from './text/lexicon.ts'
import { tokensOf } from './text/tokens.ts'
import { chosenHue } from './things/chosen-hue.ts'
import { readCountCorrected } from './things/count-corrected.ts'

/** What is taken of a message before any list or sentence is read: a hue that was asked for, what of the list follows, the count told anew, cuts of sizes, and children's years. */
export const readEarly = (whole: string, { asked, draft }: Conversation, lexicon: Lexicon) => {
  const several = tokensOf(whole).length > 4
  const { patches: chosen, rest } = several ? chosenHue(whole, asked, lexicon) : { patches: [], rest: whole }
  const { patches: follows, rest: here } = readToFollow(rest, lexicon)
  const { patches: count, rest: counted } = readCountCorrected(here, draft)
  const { cuts, rest: cutless } = readCutOfSizes(counted)
  const { patches: span, rest: spanless } = readYoungestToOldest(cutless)
  const { patches: named, rest: nameless } = readAgesByName(spanless, draft)
  const { patches: years, rest: yearless } = readAgesOfKind(nameless)
  const { patches: sleeves, rest: text } = readSleevesOfRole(yearless, { draft, lexicon })
  return { chosen, early: [...span, ...named, ...years, ...sleeves, ...follows, ...count], cuts, text }
}
