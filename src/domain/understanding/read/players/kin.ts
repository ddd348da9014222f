import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isAdd } from '../list/change.ts'
import { blanked, isCapital, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'
import { rowsByName } from '../whom/refs.ts'

const missing = phrasesOf(listed.clauses.missing)

/** Somebody may be put on the list: "una más", "falta", "another one". */
const speaksOfMore = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token, at) =>
      isAdd(token) ||
      isWord(token, ...listed.clauses.newcomer, ...listed.clauses.more) ||
      phraseEnd(tokens, at, missing) !== null,
  )

const isListed = (token: Token | undefined, { rows }: Draft): boolean =>
  token !== undefined && isCapital(token) && rowsByName(rows, token.text.replace(/'s$/, '')).length > 0

/** Where "el hermanito de Gael", "Gael's little brother" begins and ends, with the words that lead to it. */
const kinAt = (tokens: readonly Token[], at: number, draft: Draft): readonly [from: number, to: number] | null => {
  if (!isWord(tokens[at], ...listed.told.kin)) return null
  const [before, of, name] = [tokens[at - 1], tokens[at + 1], tokens[at + 2]]
  if (isWord(of, ...listed.told.of) && isListed(name, draft))
    return [isWord(before, ...listed.things.articles, ...listed.players.loose) ? at - 1 : at, at + 3]
  const owner = [at - 1, at - 2].find((place) => tokens[place]?.text.endsWith("'s") && isListed(tokens[place], draft))
  return owner === undefined ? null : [owner, at + 1]
}

/** "Una más para el hermanito de Gael, se llama Tadeo": who is told by whose kin he is, is not the one of the list. */
export const withoutKin = (text: string, draft: Draft): string => {
  const tokens = tokensOf(text)
  if (Object.keys(draft.rows).length === 0 || !speaksOfMore(tokens)) return text
  return [...tokens.keys()].reduce((left, at) => {
    const [from, to] = kinAt(tokens, at, draft) ?? [0, 0]
    return to > from ? blanked(left, tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0) : left
  }, text)
}
