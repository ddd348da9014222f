import type { Way } from '../press/way.ts'
import type { ProblemOf } from '../result/result.ts'

/** Every problem says where its limit comes from and what could be done instead; an empty list means there is no way out. */
type Why = { readonly source: string; readonly ways: readonly Way[] }
type Book = { readonly body: string; readonly clause: string; readonly edition: string; readonly mark: string }
type Size = { readonly place: string; readonly text: string; readonly hasMicrometres: number; readonly border: string }

/** What the rules of the trade, of the law and of the leagues can find in an order. */
export type RuleProblems = {
  'fibre-unknown': Why & { readonly garment: string }
  /** The maker's sheet does not name this fibre. */
  'fibre-not-on-sheet': Why & {
    readonly garment: string
    readonly material: string
    readonly fibre: string
    readonly percent: number
  }
  /** The maker's sheet says no to this fibre. */
  'fibre-refused': Why & { readonly garment: string; readonly material: string; readonly fibre: string; readonly percent: number }
  'care-label-unread': Why & { readonly garment: string }
  'over-care-label': Why & {
    readonly garment: string
    readonly dots: number
    readonly ironTenthsC: number
    readonly setTenthsC: number
    readonly upToTenthsC: number
  }
  'finish-unknown': Why & { readonly garment: string }
  'finish-repels': Why & { readonly garment: string; readonly material: string }
  'finish-needs-test': Why & { readonly garment: string; readonly material: string }
  'drops-beaded': Why & { readonly garment: string; readonly seconds: number; readonly material: string }
  'drops-doubtful': Why & { readonly garment: string; readonly seconds: number }
  /** Cloth that often repels though nobody said so: nylon, red jerseys. */
  'repellence-suspected': Why & { readonly garment: string; readonly because: string }
  'bleed-risk': Why & {
    readonly garment: string
    readonly dye: string
    readonly colour: string
    readonly material: string
    readonly fromTenthsC: number
    readonly setTenthsC: number
    /** With the press's swing on top. */
    readonly upToTenthsC: number
  }
  'stretch-needs-stretch': Why & { readonly garment: string; readonly material: string; readonly percent: number }
  'solid-stones-on-stretch': Why & { readonly garment: string; readonly decoration: string; readonly percent: number }
  /** `isKnown`: somebody said how it is knitted; nobody has, and it is pressed as if it had holes. */
  'perforated-cloth': Why & { readonly garment: string; readonly isKnown: boolean }
  'press-marks': Why & { readonly garment: string; readonly because: string }
  /** Nothing sticks on what lies below. */
  'not-on-top': Why & { readonly decoration: string; readonly above: string; readonly below: string }
  'stones-under-three': Why & { readonly line: number; readonly decoration: string; readonly smallPartsMicrometres: number }
  'leaded-stones-child': Why & {
    readonly line: number
    readonly material: string
    readonly lot: string
    readonly leadPpmMost: number
  }
  'certificate-missing': Why & {
    readonly material: string
    readonly lot: string
    readonly lines: readonly number[]
    readonly leadPpmMost: number
    readonly nickelNanogramsMost: number
    readonly leadInMouthablePpmMost: number
  }
  'age-unknown': Why & { readonly lines: readonly number[] }
  'childrens-wear': Why & { readonly lines: readonly number[] }
  'strings-on-child': Why & { readonly garment: string; readonly lines: readonly number[] }
  'stones-on-game-wear': Why & { readonly decorations: readonly string[] }
  'reflective-banned': Why & Book & { readonly decoration: string; readonly material: string }
  'ornaments-clause': Why & Book & { readonly decoration: string; readonly text: string }
  'body-not-solid': Why & Book & { readonly decoration: string; readonly because: string }
  'own-colour-number': Why & { readonly garment: string; readonly decoration: string; readonly colour: string }
  'failing-pair': Why &
    Book & { readonly garment: string; readonly decoration: string; readonly jersey: string; readonly number: string }
  'low-contrast': Why & {
    readonly garment: string
    readonly decoration: string
    readonly ratioTimes100: number
    readonly leastTimes100: number
  }
  'illegal-number': Why & Book & { readonly line: number; readonly number: string; readonly nearest: readonly string[] }
  'number-twice': Why & Book & { readonly number: string; readonly lines: readonly number[]; readonly forbidden: boolean }
  'numbers-clash': Why & Book & { readonly numbers: readonly string[]; readonly lines: readonly number[] }
  'number-too-small': Why & Book & Size & { readonly leastMicrometres: number }
  'number-too-large': Why & Book & Size & { readonly mostMicrometres: number }
  'stroke-too-thin': Why & Book & Size & { readonly leastMicrometres: number }
  'stroke-too-thick': Why & Book & Size & { readonly mostMicrometres: number }
  'border-too-wide': Why & Book & Size & { readonly mostMicrometres: number }
  'too-many-colours': Why & Book & { readonly decoration: string; readonly colours: readonly string[]; readonly most: number }
  'too-many-layers': Why & { readonly decoration: string; readonly layers: number; readonly most: number }
  'name-too-small': Why & Book & Size & { readonly leastMicrometres: number }
  'name-too-large': Why & Book & Size & { readonly mostMicrometres: number }
  'name-near-number': Why & Book & { readonly place: string; readonly hasMicrometres: number; readonly leastMicrometres: number }
  'place-missing': Why & Book & { readonly garment: string; readonly place: string }
  'no-rulebook': Why & { readonly sport: string }
  'old-edition': Why & Book & { readonly years: number }
  'ask-your-league': Why & Book
  'goalkeeper-number': Why & Book & { readonly line: number; readonly number: string }
  'wider-than-free': Why & {
    readonly decoration: string
    readonly text: string
    readonly widthMicrometres: number
    readonly freeWidthMicrometres: number
  }
  'places-collide': Why & { readonly first: string; readonly second: string; readonly overlapMicrometres: number }
  'implausible-record': Why & {
    readonly material: string
    readonly field: string
    readonly value: number
    readonly least: number
    readonly most: number
  }
}
export type RuleProblem = ProblemOf<RuleProblems>
