import type { Draft } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { type Clause, clausesOf, isSentenceEnd } from '../text/clauses.ts'
import { blanked, fold, isNumber, isWord, tokensOf } from '../text/tokens.ts'
import { type Ref, refsIn } from '../whom/refs.ts'

/** Clauses that ask a piece more for one player, and the text without them. */
export type SecondPiece = { readonly unheard: readonly string[]; readonly rest: string }

const said = spoken.again
const garment = `(?! ${said.noPiece}\\b)(?: ${said.garment})?`
const ends = '(?= *(?:$|[(.!-]))'
/** "Two", "2 shirts", "another" with nothing that it is another of, but a size: "another number" is no piece. */
const piece = `(?:${said.pieces}|${said.furtherPiece}${ends}|${said.furtherPiece}(?= (?:${said.garment}|${said.forWhom})\\b))`
/** "Two shirts"; a figure alone is a number they get ("Gray gets 3"), unless two sizes follow. */
const amount = `(?:${piece}${garment}|${said.figuredPieces} ${said.garment})`
const figured = new RegExp(`\\b${said.wearing} ${said.figuredPieces}(?= *(?:$|[(:]))`)
const wearing = new RegExp(`\\b${said.wearing} ${amount}(?![\\w])`)
const forWhom = new RegExp(`\\b${piece}${garment}(?: [\\w ]{1,14}?)? ${said.forWhom} (?!\\w* ?\\d+ )`)
const givenFirst = new RegExp(`\\b${said.giving} ${amount}(?: [\\w ]{1,14}?)? ${said.givenTo} `)
const givenLast = new RegExp(`\\b${said.giving}(?: #?[\\w']+){1,2} ${amount}(?![\\w])`)

const small: readonly string[] = listed.again.sizesBeside

/** Nothing stands at a place in the text but sizes and small words, to its end. */
const isSizes = (text: string): boolean => {
  const tokens = tokensOf(text)
  let at = 0
  while (at < tokens.length) {
    const size = sizeAt(tokens, at)
    const idle = isWord(tokens[at], ...small) || isNumber(tokens[at]) || tokens[at]?.kind === 'sign'
    if (size?.size === undefined && !idle) return false
    at = size?.size === undefined ? at + 1 : size.to
  }
  return true
}

/** A player who is surely named: by name, or by a number that is said to be one. */
const isSure = (text: string, { by, from }: Ref, index: number): boolean => {
  const ahead = tokensOf(text).slice(0, from)
  const marked = ahead.at(-1)?.text === '#' || isWord(ahead.at(-1), ...listed.players.loose, ...listed.again.addedNumber)
  return by === 'name' || marked || (from === 0 && index === 0)
}

const placed = (text: string, { rows }: Draft) => {
  const tokens = tokensOf(text)
  return refsIn(tokens, rows)
    .filter((ref, index) => isSure(text, ref, index))
    .map((ref) => ({ start: tokens[ref.from]?.start ?? 0, end: tokens[ref.to - 1]?.end ?? 0 }))
}

/** What stands behind an amount: nothing, a sign, a size, or a small word. */
const goesOn = (behind: string): boolean => isSizes(behind.replace(/[(].*$/, ''))

const sizesIn = (text: string): number => {
  const tokens = tokensOf(text)
  return [...tokens.keys()].filter((at) => sizeAt(tokens, at)?.size !== undefined).length
}

/** "La 4 quiere 2, M y G". */
const asksFigured = (group: readonly Clause[], draft: Draft): boolean => {
  const [first, ...sizes] = group
  const wanted = figured.exec(fold(first?.text ?? ''))
  const named = wanted !== null && placed(first?.text ?? '', draft).some(({ end }) => end <= wanted.index)
  return named && sizesIn(sizes.map(({ text }) => text).join(', ')) > 1
}

const asksAnother = ({ text }: Clause, draft: Draft): boolean => {
  const folded = fold(text)
  const refs = placed(text, draft)
  const wanted = wearing.exec(folded)
  const behind = (match: RegExpExecArray): number => match.index + match[0].length
  if (wanted !== null && refs.some(({ end }) => end <= wanted.index) && goesOn(text.slice(behind(wanted)))) return true
  const given = givenLast.exec(folded)
  const inside = refs.some(({ start }) => given !== null && start >= given.index && start < behind(given))
  if (given !== null && inside && goesOn(text.slice(behind(given)))) return true
  return [forWhom, givenFirst].some((pattern) => {
    const match = pattern.exec(folded)
    return match !== null && refs.some(({ start }) => start >= behind(match) - 1 && start <= behind(match) + 4)
  })
}

/** The clause with the sizes that follow it: "wants two", "an M", "an L". */
const withSizes = (clauses: readonly Clause[], at: number): readonly Clause[] => {
  let to = at + 1
  for (;;) {
    const next = clauses[to]
    if (next === undefined || isSentenceEnd(next.joint) || !isSizes(next.text)) return clauses.slice(at, to)
    to += 1
  }
}

/**
 * "Beto needs another in M", "la 4 quiere 2, M y G": a piece more for somebody of the list. A line of the list is one piece, so it is said
 * back to the customer and must change neither the size nor the number of the piece that is there.
 */
export const readSecondPiece = (text: string, draft: Draft): SecondPiece => {
  const clauses = Object.keys(draft.rows).length === 0 ? [] : clausesOf(text)
  const asked = clauses.flatMap((clause, at) => {
    const group = withSizes(clauses, at)
    return asksAnother(clause, draft) || asksFigured(group, draft) ? [group] : []
  })
  const spans = asked.map((group) => ({ from: group[0]?.from ?? 0, to: group.at(-1)?.to ?? 0 }))
  return {
    unheard: spans.map(({ from, to }) => text.slice(from, to).trim()),
    rest: spans.reduce((left, { from, to }) => blanked(left, from, to), text),
  }
}
