import { listed } from '../../words/languages.ts'
import { isCapital, isEnd, isNumber, isWord, paused, phraseEnd, phrasesOf, type Token } from './tokens.ts'

const settled = phrasesOf(listed.told.settled)

/** A stretch of tokens, its end not counted in. */
export type Stretch = { readonly from: number; readonly to: number }

const isMark = (token: Token | undefined, ...signs: readonly string[]): boolean => signs.includes(token?.text ?? '')

/** Stretches between the tokens that part them, those that end one counted in. */
const parted = (tokens: readonly Token[], parts: (token: Token) => boolean): readonly Stretch[] => {
  const ends = [...tokens.keys()].filter((at) => tokens[at] !== undefined && parts(tokens[at]))
  return [0, ...ends.map((at) => at + 1)].map((from, index) => ({ from, to: (ends[index] ?? tokens.length - 1) + 1 }))
}

/** The sentences of a message, each with the sign that ends it. */
export const sentencesOf = (tokens: readonly Token[]): readonly Stretch[] =>
  parted(tokens, (token) => isEnd(token) || isMark(token, '?')).filter(({ from, to }) => to > from)

const within = (tokens: readonly Token[], { from, to }: Stretch): readonly Token[] => tokens.slice(from, to)

const placesIn = ({ from, to }: Stretch): readonly number[] => Array.from({ length: to - from }, (_, index) => from + index)

/** "Is 9 a medium?" asks; "can 9 be a medium?" wishes. */
const asks = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => isMark(token, '?')) && !tokens.some((token) => isWord(token, ...listed.told.requests))

const opensClause = (tokens: readonly Token[], at: number): boolean => at === 0 || tokens[at - 1]?.kind !== 'word'

/** "if"; "si" only where it opens its clause and is no "sí". */
const isConditional = (tokens: readonly Token[], at: number): boolean => {
  if (isWord(tokens[at], ...listed.told.conditional)) return true
  const opening = isWord(tokens[at], ...listed.told.conditionalFirst) && opensClause(tokens, at)
  return opening && tokens[at]?.text.toLowerCase() === tokens[at]?.key && tokens[at + 1]?.kind !== 'sign'
}

/** "Beto or Whitlock", "M or L": one of two, and nobody knows which. */
const leavesOpen = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.told.either) &&
  [tokens[at - 1], tokens[at + 1]].every((token) => isCapital(token) || isNumber(token))

const isKin = (token: Token | undefined): boolean => isWord(token, ...listed.told.kin)

/** "Beto's cousin", "el hermano de Diego": of somebody else than the player. */
const isOfKin = (tokens: readonly Token[], at: number): boolean =>
  isKin(tokens[at]) &&
  ((tokens[at - 1]?.text.endsWith("'s") ?? false) || (isWord(tokens[at + 1], ...listed.told.of) && isCapital(tokens[at + 2])))

/** "might"; "might as well" is settled. */
const isDoubt = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.told.doubting) && phraseEnd(tokens, at + 1, settled) === null

/** "Hale would burst a medium": nobody wishes for what would be; "he would like a medium" does. */
const isUnreal = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.told.bursting) ||
  (isWord(tokens[at], ...listed.told.unreal) && tokens[at + 1]?.kind === 'word' && !isWord(tokens[at + 1], ...listed.told.wished))

const doubtful = (tokens: readonly Token[]): boolean =>
  [...tokens.keys()].some((at) => isDoubt(tokens, at) || isUnreal(tokens, at) || leavesOpen(tokens, at) || isOfKin(tokens, at))

/** What of a sentence states nothing: all of a question, conditional clauses, clauses of doubt and of other people. */
const idle = (tokens: readonly Token[]): readonly Stretch[] => {
  if (asks(tokens)) return [{ from: 0, to: tokens.length }]
  return parted(tokens, (token) => isMark(token, ',') || isWord(token, ...listed.again.and)).flatMap((clause) => {
    const condition = placesIn(clause).find((at) => isConditional(tokens, at))
    if (doubtful(within(tokens, clause))) return [clause]
    return condition === undefined ? [] : [{ from: condition, to: clause.to }]
  })
}

/** The tokens of a message with pauses for whatever states nothing: questions, conditions, doubts, and what is said of a player's kin. */
export const stated = (tokens: readonly Token[]): readonly Token[] => {
  const silent = new Set(
    sentencesOf(tokens).flatMap((sentence) =>
      idle(within(tokens, sentence)).flatMap((stretch) => placesIn(stretch).map((at) => sentence.from + at)),
    ),
  )
  return silent.size === 0
    ? tokens
    : tokens.map((token, at) =>
        silent.has(at) && token.kind !== 'break' && !isEnd(token) && token.text !== '?' ? paused(token) : token,
      )
}
