import type { Language } from '../../units/language.ts'
import type { Asked } from '../conversation.ts'
import type { Context } from '../document.ts'
import type { Draft } from '../draft.ts'
import { listed } from '../words/languages.ts'
import { isAdd } from './change.ts'
import { readDates } from './dates.ts'
import type { Lexicon } from './lexicon.ts'
import { readNumberLists } from './number-lists.ts'
import { union, without } from './set-aside.ts'
import { isNumber, isWord, type Token } from './tokens.ts'
import { wordsOfNewcomers } from './told-player.ts'

/** "agréguenle el 10 en 2XL": the number of somebody who is put on the list is no day. */
const addedNumbers = (tokens: readonly Token[]): ReadonlySet<number> =>
  new Set(
    [...tokens.keys()].filter(
      (at) => isNumber(tokens[at]) && isAdd(tokens[at - 2]) && isWord(tokens[at - 1], ...listed.again.addedNumber),
    ),
  )

/** A message, the drafts around it, and how its days are told apart. */
export type Given = {
  /** The message without its roster lines. */
  readonly text: string
  /** The draft before the message, and with its roster lines. */
  readonly before: Draft
  readonly draft: Draft
  readonly lexicon: Lexicon
  readonly context: Context
  readonly language: Language
  readonly asked: Asked | null
}

/** Days and hours, where the figures of lists and of newcomers are none. */
export const datesIn = (scene: Given, tokens: readonly Token[], corrected: ReadonlySet<number>) => {
  const free = without(tokens, corrected)
  const known = new Set(Object.values(scene.draft.rows).flatMap((row) => row.number ?? []))
  const others = union(addedNumbers(tokens), wordsOfNewcomers(free, scene), readNumberLists(free, known).taken)
  return readDates(without(free, others), {
    draft: scene.before,
    today: scene.context.now.slice(0, 10),
    language: scene.language,
    bare: scene.asked?.code === 'ask-hour' && corrected.size === 0 && tokens.length <= 6,
    text: scene.text,
  })
}
