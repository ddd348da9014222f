import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'

const said = spoken.later

const atAnotherTime = anyOf(said.sends, said.soon)
const ofTheList = anyOf(said.sizes, said.names, said.numbers, said.list)
const named = { sizes: anyOf(said.sizes), names: anyOf(said.names), numbers: anyOf(said.numbers) } as const
const wanted = anyOf(said.needs)
const theList = new RegExp(`\\b${said.theList}\\b`, 'g')

const clausesOf = (folded: string): readonly string[] => folded.match(/[^.,;\n!?]+/g) ?? []

/** A clause about sending something of the list at another time: its day is no day of the order. */
export const sendsLater = (folded: string): boolean =>
  ofTheList.test(folded) && atAnotherTime.test(folded) && !wanted.test(folded.replace(theList, ''))

/** "I'll send it later", "te la paso luego". */
export const isForLater = (folded: string): boolean => atAnotherTime.test(folded)

/** "Sizes later", "names TBD", "los nombres se los paso el lunes": what of the list comes later. */
export const readLater = (text: string): readonly Patch[] =>
  clausesOf(fold(text)).flatMap((clause) => {
    if (!atAnotherTime.test(clause)) return []
    return (['sizes', 'names', 'numbers'] as const).flatMap((what): readonly Patch[] =>
      named[what].test(clause) ? [{ path: ['later', what], value: true }] : [],
    )
  })
