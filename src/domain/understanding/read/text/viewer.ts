import { languages, spoken } from '../../words/languages.ts'
import { anyOf, fold } from './tokens.ts'

const said = spoken.sides
const looking = anyOf(said.looking)
const chestSaid = anyOf(said.chest)

type Side = { readonly other: string; readonly chest: string }

/** Each word for a side, with the one for the other side and the place on that other side's chest. */
const sides: ReadonlyMap<string, Side> = new Map(
  Object.values(languages).flatMap(({ sides: { left, right, leftChest, rightChest } }) => [
    ...left.map((word, index) => [word, { other: right[index] ?? word, chest: rightChest[0] ?? '' }] as const),
    ...right.map((word, index) => [word, { other: left[index] ?? word, chest: leftChest[0] ?? '' }] as const),
  ]),
)

const side = new RegExp(`\\b(?:${[...sides.keys()].join('|')})\\b`, 'i')
const chestLead = new RegExp(`\\b${said.chestLead}\\b`, 'i')

const without = Object.values(languages).flatMap(
  ({
    sides: {
      takenOff: off,
      without: [word = ''],
    },
  }) => off.map((source) => ({ pattern: new RegExp(`\\b${source}\\b`, 'g'), word })),
)

/** "Take the outline off": without it. */
const takenOff = (text: string): string => without.reduce((rest, { pattern, word }) => rest.replace(pattern, `${word} $1`), text)

/**
 * "The left side as you look at him" is his right: the side seen by an onlooker is written as the wearer's, and what is said of it
 * after that is left out.
 */
export const wearersSide = (text: string): string =>
  takenOff(text)
    .split(/(?<=[.!?\n])/)
    .map((sentence) => {
      const folded = fold(sentence)
      const seen = looking.exec(folded)
      const found = side.exec(folded)
      if (seen === null || found === null) return sentence
      const chest = chestSaid.test(folded)
      const turned = sides.get(found[0].toLowerCase())
      const start = Math.min(found.index, seen.index)
      const end = folded.indexOf(',', Math.max(found.index, seen.index))
      const tail = end < 0 ? '' : sentence.slice(end)
      const head = sentence.slice(0, start).replace(chestLead, '')
      return `${head} ${(chest ? turned?.chest : turned?.other) ?? found[0]}${tail}`
    })
    .join('')
