import { listed, spoken } from '../../words/languages.ts'
import { blanked, fold, isWord, tokensOf } from '../text/tokens.ts'
import type { Mention } from './age-mentions.ts'

const said = spoken.ages

/** "You asked ages: Leo is 2": that years follow is said first. */
const lead = new RegExp(`^\\s*${said.spokenOf}(?!\\w)`)
const opening = new RegExp(`^(?:(?:${said.agreed}|${spoken.answers.no})[,.!]+ *)+(?=.*\\S)`)

export const speaksOfAges = (text: string): boolean => lead.test(fold(text))

/** The text behind what leads to the ages, and behind a yes or no that opens it. */
export const withoutLead = (text: string): string => {
  const told = text.slice(lead.exec(fold(text))?.[0].length ?? 0)
  return told.slice(opening.exec(fold(told))?.[0].length ?? 0).trim()
}

/** The text without its mentions has no words but those that stand around names in a short answer. */
export const isBare = (text: string, mentions: readonly Mention[]): boolean =>
  tokensOf(mentions.reduce((left, { start, end }) => blanked(left, start, end), text)).every(
    (token) => token.kind === 'sign' || token.kind === 'break' || isWord(token, ...listed.ages.asides),
  )
