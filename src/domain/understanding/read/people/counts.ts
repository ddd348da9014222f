import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Term } from '../text/lexicon.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'

const { people, weAre } = listed.rosters

/** "son 10.", "somos 12": a bare figure that ends what is said. */
const bareCount = (tokens: readonly Token[], at: number): number => {
  const after = tokens[at + 2]
  const ends = after === undefined || after.kind === 'break' || ['.', ',', '!', ':', ';'].includes(after.text)
  const corrected = tokens
    .slice(Math.max(0, at - 6), at)
    .some((token, index, near) => isWord(token, ...listed.days.not) && near[index + 1]?.key === tokens[at]?.key)
  return !corrected && isWord(tokens[at], ...weAre) && isNumber(tokens[at + 1]) && ends ? Number(tokens[at + 1]?.text) : 0
}

const peopleCount = (tokens: readonly Token[], terms: readonly Term[], at: number): number => {
  if (!isWord(tokens[at], ...people)) return 0
  const before = tokens[at - 1]
  const group = tokens[at - 2]?.end === before?.start && isWord(tokens[at - 2], 'u')
  if (group) return 0
  const term = terms.find((one) => one.to === at && one.meaning.kind === 'count')
  return isNumber(before) ? Number(before?.text) : term?.meaning.kind === 'count' ? term.meaning.id : 0
}

/** "6 of them,", "8 of us.": a figure of all of them that ends what is said. */
const countOfThem = (tokens: readonly Token[], at: number): number => {
  const [of, them, after] = tokens.slice(at + 1, at + 4)
  const ends = after === undefined || after.kind === 'break' || ['.', ',', '!', ':', ';'].includes(after.text)
  const all = isNumber(tokens[at]) && isWord(of, ...listed.things.of) && isWord(them, ...listed.rosters.ofThem)
  return all && ends ? Number(tokens[at]?.text) : 0
}

/** "6 players", "son 4 niñas": how many there shall be in all. */
export const readCount = (tokens: readonly Token[], terms: readonly Term[]): readonly Patch[] => {
  for (const at of tokens.keys()) {
    const count = peopleCount(tokens, terms, at) || bareCount(tokens, at) || countOfThem(tokens, at)
    if (Number.isInteger(count) && count > 1 && count <= 500) return [{ path: ['count'], value: count }]
  }
  return []
}
