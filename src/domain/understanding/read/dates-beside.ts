import type { Language } from '../../units/language.ts'
import type { Asked } from '../conversation.ts'
import type { Context } from '../document.ts'
import type { Draft } from '../draft.ts'
import { listed } from '../words/languages.ts'
import { readDates } from './calendar/dates.ts'
import { isAdd } from './list/change.ts'
import { readNumberLists } from './list/number-lists.ts'
import { wordsOfNewcomers } from './players/told-player.ts'
import { sizeAt } from './sizes/sizes.ts'
import type { Lexicon } from './text/lexicon.ts'
import { union, without } from './text/set-aside.ts'
import { isNumber, isWord, type Token } from './text/tokens.ts'

/** "agréguenle el 10 en 2XL": the number of somebody who is put on the list is no day. */
const addedNumbers = (tokens: readonly Token[]): ReadonlySet<number> =>
  new Set(
    [...tokens.keys()].filter(
      (at) => isNumber(tokens[at]) && isAdd(tokens[at - 2]) && isWord(tokens[at - 1], ...listed.again.addedNumber),
    ),
  )

const { and } = listed.players
const numberLead: readonly string[] = listed.players.leftOutLead

/** "El 7 en XL", "el 1 y el 8 talla L": figures that are given a size are players' numbers; "para el 7" is a day. */
const sizedNumbers = (tokens: readonly Token[]): ReadonlySet<number> => {
  const isLed = (at: number): boolean => isNumber(tokens[at]) && isWord(tokens[at - 1], ...numberLead)
  const isSized = (from: number): boolean => {
    let at = from
    while (
      at < from + 4 &&
      isWord(tokens[at], ...listed.players.areSized, ...listed.players.sizeLink, ...listed.again.pronouns)
    ) {
      if (sizeAt(tokens, at)?.size !== undefined) return true
      at += 1
    }
    return sizeAt(tokens, at)?.size !== undefined
  }
  const nextOf = (at: number): number => (isWord(tokens[at], ...and) || tokens[at]?.text === ',' ? at + 2 : -1)
  const leads = (at: number): boolean => isLed(at) && (isSized(at + 1) || (nextOf(at + 1) > 0 && leads(nextOf(at + 1))))
  return new Set([...tokens.keys()].filter((at) => leads(at) && !isWord(tokens[at - 2], ...listed.things.makeFor)))
}

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
  const others = union(
    addedNumbers(tokens),
    sizedNumbers(tokens),
    wordsOfNewcomers(free, scene),
    readNumberLists(free, known).taken,
  )
  return readDates(without(free, others), {
    draft: scene.before,
    today: scene.context.now.slice(0, 10),
    language: scene.language,
    bare: scene.asked?.code === 'ask-hour' && corrected.size === 0 && tokens.length <= 6,
    text: scene.text,
  })
}
