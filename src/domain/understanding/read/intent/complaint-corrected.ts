import { spoken } from '../../words/languages.ts'

const said = spoken.complaints

const figure = '(?:#|\\b)(\\d{1,3})\\b(?![/.:]\\d)'
const lead = `(?:(?:${said.theNumber}|${said.onThe} |#)\\s?){0,2}`

/** "9, sorry, number 19", "del 9, digo, del 19": the first is taken back in the same breath. */
const rephrased = new RegExp(
  `${figure}[ ,.;:-]{0,3}(?:${said.mistaken}[ ,.:;-]{1,3}){1,3}(?:${said.pointing} ){0,2}${lead}\\d{1,3}\\b(?! ?${said.counted})`,
  'g',
)
/** "not 9", "no el 9". */
const denied = new RegExp(`\\b${said.denying} (?:${said.onThe} )?${lead}${figure}(?! ?${said.counted})`, 'g')
/** "24 is fine", "el 24 está bien". */
const unharmed = new RegExp(`${figure} ${said.unharmed}`, 'g')

/** The numbers that a message takes back or says nothing happened to. */
const numbersTakenBack = (folded: string): readonly string[] =>
  [rephrased, denied, unharmed].flatMap((pattern) => [...folded.matchAll(pattern)].map((match) => match[1] ?? ''))

const mistake = new RegExp(`^\\W*(?:(?:oh|ah|ay|uy|ok|no) ?,? )?${said.mistaken}\\b`)

/** "I meant 19", "quise decir el 19". */
const meant = new RegExp(`\\b${said.meaning} (?:${said.onThe} )?${lead}${figure}(?! ?${said.counted})`, 'g')

export const numbersMeant = (folded: string): readonly string[] => [...folded.matchAll(meant)].map((match) => match[1] ?? '')

/** The pieces of a complaint after a message that tells of pieces again: as many, told for a mistake, are those that were meant. */
export const numbersAfter = (before: readonly string[], told: readonly string[], folded: string): readonly string[] => {
  const gone = numbersTakenBack(folded)
  const fresh = told.filter((number) => !gone.includes(number))
  const instead = mistake.test(folded) && fresh.length > 0 && fresh.length === before.length
  return [...new Set([...(instead ? [] : before), ...fresh])].filter((number) => !gone.includes(number))
}
