import { listed } from '../../words/languages.ts'
import { cutAt, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, phraseEnd, phrasesOf, type Token, tokensOf } from '../text/tokens.ts'

const said = listed.players
const both = phrasesOf(said.bothOf)
const fewest = 2

/** A cut in its words, where a stretch of text says nothing but it: "womens", "las dos de dama", "both are women's sizes". */
const cutAlone = (text: string, named: boolean): string | null => {
  const tokens = tokensOf(text)
  if (tokens.some(({ text: sign }) => sign === ':')) return null
  const start = phraseEnd(tokens, 0, both)
  if (named && start === null) return null
  let at = start ?? 0
  while (isWord(tokens[at], ...said.cutIs) && cutAt(tokens, at) === null) at += 1
  const cut = cutAt(tokens, at)
  if (cut === null || sizeAt(tokens, at) !== null) return null
  const end = isWord(tokens[cut.to], ...said.sizing, ...said.cutTail) ? cut.to + 1 : cut.to
  return tokens.slice(end).every(({ kind }) => kind !== 'word' && kind !== 'number')
    ? text.slice(tokens[at]?.start, tokens[cut.to - 1]?.end)
    : null
}

/** Where the last size of a stretch begins, if it has no cut of its own. */
const lastSize = (tokens: readonly Token[]): number | null => {
  const at = [...tokens.keys()].findLast((one) => sizeAt(tokens, one)?.size !== undefined)
  if (at === undefined || tokens.some((_, one) => sizeAt(tokens, one)?.fit !== undefined)) return null
  const start = isNumber(tokens[at - 1]) && sizeAt(tokens, at - 1)?.size !== undefined ? at - 1 : at
  return tokens[start]?.start ?? null
}

const withCut = (stretch: string, cut: string): string => {
  const at = lastSize(tokensOf(stretch))
  return at === null ? stretch : `${stretch.slice(0, at)}${cut} ${stretch.slice(at)}`
}

const isSized = (stretch: string): boolean => lastSize(tokensOf(stretch)) !== null

/** The parts of a sentence between pauses and "and", those between them. */
const partsOf = (sentence: string): readonly string[] => {
  const joints = tokensOf(sentence).filter((token) => [',', ';'].includes(token.text) || isWord(token, ...listed.again.and))
  const edges = [0, ...joints.flatMap(({ start, end }) => [start, end]), sentence.length]
  return edges.slice(1).map((to, at) => sentence.slice(edges[at], to))
}

/** "Toomey 14 L, Greer 6 S, both womens": the clause at the end of a sentence, for those of its parts. */
const inSentence = (sentence: string): string => {
  const parts = partsOf(sentence)
  const cut = parts.length < fewest ? null : cutAlone(parts.at(-1) ?? '', true)
  if (cut === null || parts.slice(0, -1).filter(isSized).length < fewest) return sentence
  return parts
    .slice(0, -2)
    .map((part) => withCut(part, cut))
    .join('')
}

const sentencesIn = (line: string): string =>
  line.replace(/[^.!?]+[.!?]?/g, (sentence) => {
    const end = /[.!?]$/.exec(sentence)?.[0] ?? ''
    return `${inSentence(end === '' ? sentence : sentence.slice(0, -1))}${end}`
  })

/** "Womens", a list, "Mens" and a list: the next line says that it heads what is below. */
const headsBelow = (lines: readonly string[], at: number): boolean => {
  const next = lines.slice(at + 1).find((line) => line.trim() !== '')
  return next !== undefined && isSized(next)
}

/** "1 Okonjo L", "5 Fairbanks M", "womens": a line of a cut alone below lines of a list is theirs and nobody's name. */
export const withCutBehindList = (text: string): string => {
  const lines = text.split('\n').map(sentencesIn)
  for (const [at, line] of lines.entries()) {
    const cut = cutAlone(line, false)
    let from = at
    while (from > 0 && isSized(lines[from - 1] ?? '')) from -= 1
    if (cut === null || at - from < fewest || headsBelow(lines, at)) continue
    for (let index = from; index < at; index += 1) lines[index] = withCut(lines[index] ?? '', cut)
    lines[at] = ''
  }
  return lines.join('\n')
}
