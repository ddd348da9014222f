import type { Phrases } from './phrases.ts'

/**
 * How a team is named, word by word: `cues` and `leads` before its name, what a `group` is called behind it, `bodies` in it,
 * `joiners` inside it, `ofThe` before a name of several words; `personal` words, `openings` of a sentence and the `kin` of whoever is
 * `called` something are none. `articles` belong to the name where they are written so, `needs` is what a team does.
 */
export type TeamPhrases = Phrases<
  | 'cues'
  | 'leads'
  | 'groups'
  | 'bodies'
  | 'joiners'
  | 'personal'
  | 'openings'
  | 'kin'
  | 'of'
  | 'the'
  | 'called'
  | 'is'
  | 'isA'
  | 'needs'
  | 'ordinals'
  | 'articles'
>
