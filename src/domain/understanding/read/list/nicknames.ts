import type { Draft } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { blanked, fold, isNumber, tokensOf } from '../text/tokens.ts'

const fewest = 2

/** A number where there is one, a name, what stands in quotes behind it, and the rest of the line. */
const quoted =
  /^(\W*(?:\d{1,3}\b[\s.,:-]+)?)(\p{L}[\p{L}\p{M}'’. -]{0,30}?)[ -]*["“«]\s*([^"“”«»\n]{1,24}?)\s*["”»][\s,:–-]*([^\n]*)$/u

/** Behind the quotes stands a size, a number, or nothing: a surname behind them is none. */
const nicknamed = (part: string): string | null => {
  const [, number, , nick, rest] = quoted.exec(part.trim()) ?? []
  if (number === undefined || nick === undefined || rest === undefined || !/\p{L}/u.test(nick)) return null
  const tokens = tokensOf(rest)
  const ends = tokens.length === 0 ? number.trim() !== '' : isNumber(tokens[0]) || sizeAt(tokens, 0, true)?.size !== undefined
  return ends ? `${number}${nick} ${rest}`.trim() : null
}

/** The lines of a text, and the parts of those that are a list of such. */
const partsOf = (line: string): readonly string[] => {
  const parts = line.split(/[,;]/).filter((part) => part.trim() !== '')
  return parts.length >= fewest && parts.every((part) => nicknamed(part) !== null) ? parts : [line]
}

/**
 * 'Dave "Hammer" L', "9 Paco «Zurdo» XL": in a list of such what stands in quotes is what the player goes by, and the name of the line; not
 * where the last names were asked for.
 */
export const withNicknames = (text: string, { common }: Draft): string => {
  const lines = text.split('\n').flatMap(partsOf)
  const read = lines.map(nicknamed)
  if (common?.names === 'last' || read.filter((line) => line !== null).length < fewest) return text
  return lines.map((line, at) => read[at] ?? line).join('\n')
}

const { onlyNicknames, notNames } = spoken.rowMarks
const alone = new RegExp(`\\b${onlyNicknames}\\b`)
const refused = new RegExp(`[,;(]?\\s*(?:\\b${notNames}\\b)[^,;.!?\\n]*?(?=[,;.!?)\\n]|$)`, 'g')

/** "Just the nicknames, not the real names": names that are refused beside the nicknames are the players' others; what goes on stays as it is. */
export const withoutOtherNames = (text: string): string =>
  text.replace(/[^.!?\n]+/g, (sentence) => {
    const folded = fold(sentence)
    if (!alone.test(folded) || folded.length !== sentence.length) return sentence
    return [...folded.matchAll(refused)].reduceRight(
      (left, { index, 0: words }) => blanked(left, index, index + words.length),
      sentence,
    )
  })
