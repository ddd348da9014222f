import { listed } from '../../words/languages.ts'
import { span } from '../list/change.ts'
import { sentencesOf } from '../text/statements.ts'
import { isEnd, isNumber, isWord, type Token } from '../text/tokens.ts'

const said = listed.parts

const pauses = (token: Token | undefined): boolean => token === undefined || isEnd(token) || token.text === ','

/** A "no" that stands for itself: "so no, it stays at one", "no, ahí no lleva". */
const isPlainNo = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.anew.notFirst) && pauses(tokens[at + 1])

const isOfOthers = (tokens: readonly Token[]): boolean => {
  const first = tokens.findIndex((token) => isWord(token, ...said.somebody))
  const asked = tokens.findIndex((token) => isWord(token, ...said.asking))
  const clause = tokens.slice(first, asked)
  const opens = first >= 0 && tokens.slice(0, first).every((token) => isWord(token, ...said.beside) || token.kind === 'sign')
  return opens && asked > first && asked - first <= 6 && !clause.some((token) => isWord(token, ...said.weMean) || isNumber(token))
}

/** "One mom is asking for two rows, she isn't paying so no": what somebody else wanted and does not get changes nothing. */
export const askedAndRefused = (tokens: readonly Token[]): ReadonlySet<number> =>
  new Set(
    sentencesOf(tokens).flatMap(({ from, to }) => {
      const own = tokens.slice(from, to)
      const asked = own.findIndex((token) => isWord(token, ...said.asking))
      const refused = own.some((_, at) => at > asked && isPlainNo(own, at))
      return refused && isOfOthers(own) ? [...span(from, to)] : []
    }),
  )
