import type { Draft } from '../draft.ts'
import { withDictatedDays } from './calendar/dictated-days.ts'
import { withAmountsForWhom } from './list/amounts-for-whom.ts'
import { withCountedIn } from './list/counted-in.ts'
import { withCutBehindList } from './list/cut-behind-list.ts'
import { withDictatedNumbers } from './list/dictated-numbers.ts'
import { withEachSize } from './list/each-size.ts'
import { withGluedAmounts } from './list/glued-amounts.ts'
import { spreadHeadings } from './list/headings.ts'
import { spreadRows } from './list/inline-rows.ts'
import { withNicknames, withoutOtherNames } from './list/nicknames.ts'
import { withNumbersByName } from './list/numbers-by-name.ts'
import { spreadNumbers } from './list/numbers-by-size.ts'
import { withNumbersInTurn } from './list/numbers-in-turn.ts'
import { spreadBySize } from './list/size-lists.ts'
import { withSizedPeople } from './list/sized-people.ts'
import { spreadSpoken } from './list/spoken-rows.ts'
import { withPlayersInTurn } from './list/told-in-turn.ts'
import { withInsteadOf } from './players/instead-of.ts'
import { withoutKin } from './players/kin.ts'
import { withCorrectedNumbers } from './players/number-corrected.ts'
import { withSameSizes } from './players/same-size.ts'
import { withBrought } from './text/brought.ts'
import { withColouredFigure } from './text/coloured-figure.ts'
import { withDictatedSigns } from './text/dictated-signs.ts'
import { joinLabelled } from './text/labelled-lines.ts'
import type { Lexicon } from './text/lexicon.ts'
import { withKnownForms } from './text/same-as.ts'
import { withoutSheen } from './text/sheen-of-cloth.ts'
import { withWholeSides } from './text/short-sides.ts'
import { withKnownGarment } from './things/known-garment.ts'
import { withRightSpelling } from './things/misspelt.ts'
import { withRefusedBehind } from './things/refused-behind.ts'

/** "Kim-M", "Lee-XL": a size joined to a name by a hyphen. */
const hyphenSize = /(?<=\p{Ll})-(?=(?:[YAW]?(?:XS|S|M|L|XL)|[2-4]XL)(?:[\s,;.]|$))/gu

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

/** A message as its sentences and lines are read: in the words that are known, a player a line, without who is told by whose kin he is. */
export const madePlain = (clean: string, scene: Scene): string => {
  const { draft, lexicon } = scene
  const refused = withRefusedBehind(withCutBehindList(withoutOtherNames(withNicknames(clean, draft))), scene)
  const named = withKnownGarment(refused, scene)
  const spelt = withEachSize(withBrought(withRightSpelling(withColouredFigure(withoutSheen(named), scene), scene), lexicon))
  const plain = withNumbersByName(withGluedAmounts(withAmountsForWhom(withPlayersInTurn(spelt, scene)), scene), draft)
  const told = withCorrectedNumbers(withInsteadOf(withSameSizes(plain, draft), draft), draft)
  const written = withDictatedNumbers(withDictatedDays(withDictatedSigns(withWholeSides(withKnownForms(told)))), draft)
  const lines = spreadBySize(
    spreadHeadings(
      spreadSpoken(
        spreadRows(spreadNumbers(withSizedPeople(withCountedIn(joinLabelled(withNumbersInTurn(written)), scene)), draft)),
        scene,
      ),
    ),
  )
  return withoutKin(lines.replace(hyphenSize, ' '), draft)
}
