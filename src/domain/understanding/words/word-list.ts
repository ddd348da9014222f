import type { dyes, Feature, Fibre, Fit, finishes, Knit, Size } from '../../garment/garment.ts'
import type { PlaceId } from '../../garment/place.ts'
import type { StoneSize, VinylClass } from '../../material/material.ts'
import type { Use } from '../../order/order.ts'
import type { GarmentKind } from '../draft.ts'
import type { AgainPhrases } from './matters/again.ts'
import type { AnewPhrases } from './matters/anew.ts'
import type { AgePhrases, AnswerPhrases, SidePhrases, SigningPhrases } from './matters/answers.ts'
import type { BroughtPhrases } from './matters/brought.ts'
import type { Clock, DayPhrases, HourPhrases } from './matters/calendar.ts'
import type { CancellingPhrases } from './matters/cancelling.ts'
import type { ChangePhrases } from './matters/changes.ts'
import type { ClausePhrases } from './matters/clauses.ts'
import type { ComplaintPhrases, WashCounts } from './matters/complaints.ts'
import type { DictationPhrases } from './matters/dictation.ts'
import type { ElsewherePhrases } from './matters/elsewhere.ts'
import type { IntentPhrases } from './matters/intents.ts'
import type { LeftOffPhrases } from './matters/left-off.ts'
import type { LikeOtherPhrases } from './matters/like-others.ts'
import type { LaterPhrases, OccasionPhrases } from './matters/occasions.ts'
import type { PartPhrases } from './matters/parts.ts'
import type { MoneyPhrases, PeoplePhrases } from './matters/people.ts'
import type { PlayerPhrases } from './matters/players.ts'
import type { RosterPhrases, RowMarkPhrases } from './matters/rosters.ts'
import type { RulebookPhrases } from './matters/rulebooks.ts'
import type { TakenBackPhrases } from './matters/taken-back.ts'
import type { TeamPhrases } from './matters/team.ts'
import type { ThingPhrases } from './matters/things.ts'
import type { ToldPhrases } from './matters/told.ts'
import type { UndecidedPhrases } from './matters/undecided.ts'
import type { WordValues } from './matters/values.ts'
import type { WrittenPhrases } from './matters/written.ts'

/** Where on a body, before it is known what goes there. */
export type Spot = 'front' | 'back' | 'both-sides' | 'above' | 'below' | 'sleeves' | 'shoulders' | 'chest' | PlaceId

/** What a word or phrase of the trade means. */
export type Meaning =
  | { readonly kind: 'colour'; readonly id: string; readonly readings?: readonly string[] }
  | { readonly kind: 'class'; readonly id: VinylClass }
  | { readonly kind: 'vinyl' }
  | { readonly kind: 'content'; readonly id: 'number' | 'name' }
  /** `make`: speaks of how all is lettered and not of words to write: "white print". */
  | { readonly kind: 'word'; readonly make?: true }
  /** `loose`: people call any top so: "rugby shirts", "playeras". `another`: the same cloth again for another batch. */
  | {
      readonly kind: 'garment'
      readonly id: GarmentKind
      readonly catalogue?: string
      readonly unnumbered?: GarmentKind
      readonly loose?: true
      readonly another?: true
    }
  | { readonly kind: 'role'; readonly id: 'home' | 'away' }
  | { readonly kind: 'knit'; readonly id: Knit }
  | { readonly kind: 'fibre'; readonly id: Fibre }
  | { readonly kind: 'dye'; readonly id: (typeof dyes)[number] }
  | { readonly kind: 'finish'; readonly id: (typeof finishes)[number] }
  | { readonly kind: 'feature'; readonly id: Feature }
  | { readonly kind: 'place'; readonly id: Spot }
  | { readonly kind: 'outline' }
  | { readonly kind: 'shadow' }
  | { readonly kind: 'blocker' }
  | { readonly kind: 'stones' }
  | { readonly kind: 'stone-size'; readonly id: StoneSize }
  | { readonly kind: 'rows' }
  | { readonly kind: 'around' }
  | { readonly kind: 'contours'; readonly id: 'both' | 'outer' }
  | { readonly kind: 'style'; readonly id: 'solid' | 'single-line' }
  | { readonly kind: 'thin' }
  | { readonly kind: 'sleeve-length' }
  | { readonly kind: 'part' }
  | { readonly kind: 'script' }
  | { readonly kind: 'arc' }
  | { readonly kind: 'no' }
  | { readonly kind: 'only' }
  | { readonly kind: 'both' }
  /** `near`: only where the garment follows: "we have the shirts". */
  | { readonly kind: 'own'; readonly near?: true }
  | { readonly kind: 'sport'; readonly id: string }
  | { readonly kind: 'use'; readonly id: Use }
  | { readonly kind: 'count'; readonly id: number }
  | { readonly kind: 'unit'; readonly id: 'in' | 'cm' | 'mm' }
  | { readonly kind: 'in' }
  | { readonly kind: 'with' }
  | { readonly kind: 'and' }

export type WordList = readonly { readonly means: Meaning; readonly words: readonly string[] }[]

/**
 * How people speak of a type face, in lower case without accents: words beside its name, of which `typeface` means nothing else;
 * `called` may stand between; `plain` are capitals that name none; what is lettered; what leads to it and joins two of them.
 */
export type FaceWords = {
  readonly lettering: readonly string[]
  readonly typeface: readonly string[]
  readonly called: readonly string[]
  readonly plain: readonly string[]
  readonly numbers: readonly string[]
  readonly names: readonly string[]
  readonly links: readonly string[]
  readonly joins: readonly string[]
}

/** Words for a drawing, words that make it letters instead, and words that refuse it. */
export type ArtworkWords = {
  readonly words: readonly string[]
  readonly lettered: readonly string[]
  readonly refused: readonly string[]
}

/**
 * Colours that a shop may not have: words that make another shade of a hue, whether they stand before it, and names of shades with
 * the colours they are near to. Which is meant is asked.
 */
export type Shades = {
  readonly words: readonly string[]
  readonly before: boolean
  readonly near: Readonly<Record<string, readonly string[]>>
}

/**
 * What tells a language and holds for all of its sentences, in lower case without accents: `small` words and `letters` that are
 * its own, whether an adjective follows its noun, whether a month stands before the day in figures (3/19), whether colours bend in gender
 * and number; `months` from January and `weekdays` from Sunday, each with its short forms; sizes and cuts as they are written;
 * `groups`, words for whom amounts are told, each with the cut that those wear; `whole`, words
 * that people write without their apostrophe, each with the word as it is looked up.
 */
export type Basics = {
  readonly small: readonly string[]
  readonly letters: RegExp
  readonly nounFirst: boolean
  readonly monthFirst: boolean
  readonly bends: boolean
  readonly months: readonly (readonly string[])[]
  readonly weekdays: readonly (readonly string[])[]
  readonly sizes: Readonly<Record<string, Size>>
  readonly cuts: Readonly<Record<string, Fit>>
  readonly groups: Readonly<Record<string, string>>
  readonly whole: Readonly<Record<string, string>>
}

/** One language's words; `notBorrowed` are words of the other language that mean something else here. */
export type Words = {
  readonly basics: Basics
  readonly list: WordList
  readonly notBorrowed: readonly string[]
  readonly faces: FaceWords
  readonly artwork: ArtworkWords
  readonly shades: Shades
  readonly intents: IntentPhrases
  readonly complaints: ComplaintPhrases
  readonly washCounts: WashCounts
  readonly people: PeoplePhrases
  readonly money: MoneyPhrases
  readonly clock: Clock
  readonly values: WordValues
  /** Words and forms that the phrases leave out, without accents, with those that they have. */
  readonly sameAs: Readonly<Record<string, string>>
  readonly hours: HourPhrases
  readonly days: DayPhrases
  readonly later: LaterPhrases
  readonly occasions: OccasionPhrases
  readonly signing: SigningPhrases
  readonly answers: AnswerPhrases
  readonly ages: AgePhrases
  readonly sides: SidePhrases
  readonly rosters: RosterPhrases
  readonly rowMarks: RowMarkPhrases
  readonly team: TeamPhrases
  readonly written: WrittenPhrases
  readonly things: ThingPhrases
  readonly leftOff: LeftOffPhrases
  readonly players: PlayerPhrases
  readonly changes: ChangePhrases
  readonly anew: AnewPhrases
  readonly again: AgainPhrases
  readonly dictation: DictationPhrases
  readonly likeOthers: LikeOtherPhrases
  readonly undecided: UndecidedPhrases
  readonly brought: BroughtPhrases
  readonly elsewhere: ElsewherePhrases
  readonly parts: PartPhrases
  readonly told: ToldPhrases
  readonly takenBack: TakenBackPhrases
  readonly rulebooks: RulebookPhrases
  readonly cancelling: CancellingPhrases
  readonly clauses: ClausePhrases
}
