import type { Phrases } from './phrases.ts'

/**
 * Small words round garments and what goes on them, by where they stand: `articles` and `nounWords` before a noun, words before a
 * garment in passing (`onGarment`), between a make and what is made so (`makeFor`), what makes another garment of what is ordered (`turning` it, what is `turned`, `turnedInto` what) and nothing `besides`, for each of them (`each`), a list of names (`list`, `are`), one alone (`single`), spare pieces (`extra`),
 * what stones are on (`stonesOn`, `stoneJoins`, `made`), `nothing` there, a colour `ofRole`, sides, lengths (`ofUnit`, `tall`, `unitAhead` of a place, `bySide` between a height and its side), cuts, shares of a blend, one
 * colour for another (`recolour`, of which `into` must be one), and stones left off by place (`small` to `butNot`).
 * Said in passing: who is `going` away or home, or takes it there (`goingObjects`); what the shop did before (`doers`, `deeds`).
 * `everything` (with `everythingOn` behind it) that was named is made alike; `correcting` says that what was said is said anew, `mistaken` that it was a mistake;
 * `past` of what it was; `oneSleeve` is one that was spoken of before; what stays `unchanged`; `shifting` verbs put a thing elsewhere; `sideNoun` beside "left" and "right" alone.
 * A garment is called off by `callingOff` words, or is `noLonger` and not `wanting`.
 * A colour that is there is `doubted` (`doubting` words stand right before the other), another is `better`, `politely` put alone; `ground` is what it stands on.
 * Of two amounts one is `maybe` right.
 * Words between one size and another (`sizeLinks`), and in a clause of whose cloth has which colour (`clothWords`).
 * Patterns: `someOf` and `someShould` speak of a part of what there is; `moves` puts a thing elsewhere; `decides` and `drawingGoesOn` are said beside a drawing.
 */
export type ThingPhrases = Phrases<
  | 'nounWords'
  | 'articles'
  | 'or'
  | 'onGarment'
  | 'turning'
  | 'turned'
  | 'turnedInto'
  | 'besides'
  | 'makeFor'
  | 'each'
  | 'list'
  | 'are'
  | 'single'
  | 'extra'
  | 'stonesOn'
  | 'stoneJoins'
  | 'made'
  | 'nothing'
  | 'tall'
  | 'ofUnit'
  | 'of'
  | 'cuts'
  | 'all'
  | 'recolour'
  | 'into'
  | 'theThing'
  | 'notIn'
  | 'back'
  | 'over'
  | 'nextEdge'
  | 'ofRole'
  | 'percent'
  | 'share'
  | 'small'
  | 'having'
  | 'bare'
  | 'and'
  | 'any'
  | 'butNot'
  | 'without'
  | 'moves'
  | 'decides'
  | 'drawingGoesOn'
  | 'someOf'
  | 'someShould'
  | 'clothWords'
  | 'sizeLinks'
  | 'maybe'
  | 'unitAhead'
  | 'bySide'
  | 'going'
  | 'goingObjects'
  | 'doers'
  | 'everything'
  | 'everythingOn'
  | 'correcting'
  | 'mistaken'
  | 'past'
  | 'oneSleeve'
  | 'unchanged'
  | 'shifting'
  | 'sideNoun'
  | 'deeds'
  | 'doubted'
  | 'callingOff'
  | 'noLonger'
  | 'wanting'
  | 'doubting'
  | 'better'
  | 'ground'
  | 'politely'
>
