import { listed } from '../../words/languages.ts'
import { cutAt, hasSize, sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, tokensOf } from '../text/tokens.ts'
import { readRowLine } from './row-line.ts'
import { playersUnder } from './size-lists.ts'

/** A line that holds nothing but a size or a cut: it heads the lines below. */
type Heading = { readonly kind: 'size' | 'cut'; readonly text: string; readonly lead?: string }

const around = [...listed.rosters.aroundSize, ':', '-', '–', '*', '•', '=']

const leading: readonly string[] = [
  ...listed.players.cutIs,
  ...listed.players.every,
  ...listed.players.sizeNoun,
  ...listed.rosters.aroundSize,
  ',',
  '(',
  '-',
]

/** "Las jugadoras, corte dama:", "these are the moms (womens)": words that a cut ends; they are kept without it. */
const cutBehind = (line: string): Heading | null => {
  const tokens = tokensOf(line.replace(/[\s:.)]+$/, ''))
  const at = tokens.findIndex((_, index) => index > 0 && cutAt(tokens, index)?.to === tokens.length)
  let to = at
  while (to > 0 && leading.includes(tokens[to - 1]?.key ?? '')) to -= 1
  const ahead = tokens.slice(0, to)
  if (at < 0 || to === at || ahead.length === 0 || ahead.length > 6 || ahead.some(isNumber) || hasSize(ahead)) return null
  return { kind: 'cut', text: line.slice(tokens[at]?.start, tokens.at(-1)?.end), lead: `${line.slice(0, tokens[to - 1]?.end)}:` }
}

const headingOf = (line: string): Heading | null => headingAlone(line) ?? cutBehind(line)

const headingAlone = (line: string): Heading | null => {
  const text = line.replace(/^[\s\-–*•=]+|[\s:\-–*=]+$/g, '')
  const tokens = tokensOf(text)
  if (tokens.length === 0 || tokens.length > 6) return null
  const from = tokens.findIndex((token) => !around.includes(token.key))
  const size = sizeAt(tokens, Math.max(0, from), tokens.length === 1)
  const cut = size === null ? cutAt(tokens, Math.max(0, from)) : null
  const to = size?.to ?? cut?.to ?? 0
  if (to === 0 || !tokens.slice(to).every((token) => around.includes(token.key))) return null
  return { kind: size === null ? 'cut' : 'size', text: text.slice(tokens[from]?.start, tokens[to - 1]?.end) }
}

/** "S x 8" under "Womens:" is "Womens S x 8"; a size that says its cut keeps it; null where the line has no size. */
const withCut = (line: string, cut: string): string | null => {
  const tokens = tokensOf(line)
  const at = tokens.findIndex((_, index) => sizeAt(tokens, index, index === 0)?.size !== undefined)
  const size = at < 0 ? null : sizeAt(tokens, at, at === 0)
  if (size === null || tokens.length > 9) return null
  return size.fit === undefined ? `${line.slice(0, tokens[at]?.start)}${cut} ${line.slice(tokens[at]?.start)}` : line
}

const rowsUnder = (line: string, size: string): readonly string[] | null => {
  if (hasSize(tokensOf(line))) return null
  const several = playersUnder(line, size)
  if (several !== null) return several
  const row = readRowLine(line, true)
  return row?.name === undefined || row.name.split(' ').length > 3 ? null : [`${line.trim()}; ${size}`]
}

/** Lines of names under a line that is only their size: each is a player of that size; null where one is no name. Behind the last size the list may end. */
const spreadUnder = (lines: readonly string[], size: string, last: boolean): readonly string[] | null => {
  const rows = lines.map((line) => rowsUnder(line, size))
  const end = rows.indexOf(null)
  const listed = end < 0 ? rows.length : end
  if (listed === 0 || (end >= 0 && !last)) return null
  return [...rows.slice(0, listed).flatMap((row) => row ?? []), ...lines.slice(listed)]
}

type Lines = { readonly lines: readonly string[]; readonly headings: readonly (Heading | null)[] }

/** Where the lines end that a heading stands over: at an empty line or the next heading. */
const endOf = ({ lines, headings }: Lines, at: number): number => {
  let to = at + 1
  while (to < lines.length && (lines[to] ?? '').trim() !== '' && headings[to] === null) to += 1
  return to
}

/** "Ann", "M", "Bob", "L": the size stands under its name. */
const isNameAbove = ({ lines, headings }: Lines, at: number): boolean => {
  const before = lines[at - 1]?.trim() ?? ''
  return before !== '' && headings[at - 1] === null && readRowLine(before) !== null
}

/** "MEDIUM", "Ruth", "Del", "LARGE", "Tony": null where not every heading of a size has its names. */
const underSizes = ({ lines, headings }: Lines): readonly string[] | null => {
  const first = headings.findIndex((one) => one?.kind === 'size')
  if (first < 0 || isNameAbove({ lines, headings }, first)) return null
  const out = lines.slice(0, first)
  let cut = headings.slice(0, first).findLast((one) => one?.kind === 'cut')?.text
  let at = first
  while (at < lines.length) {
    const heading = headings[at] ?? null
    if (heading?.kind === 'cut') cut = heading.text
    if (heading?.kind !== 'size') {
      out.push(lines[at] ?? '')
      at += 1
      continue
    }
    const to = endOf({ lines, headings }, at)
    const size = cut === undefined ? heading.text : (withCut(heading.text, cut) ?? heading.text)
    const last = headings.slice(to).every((one) => one === null)
    const rows = spreadUnder(lines.slice(at + 1, to), size, last)
    if (rows === null) return null
    out.push(...rows)
    at = to
  }
  return out
}

/** "Womens:", "S x 8", "M x 14": the cut of the lines below, up to one that has no size. */
const underCuts = (lines: readonly string[]): readonly string[] => {
  let cut: string | null = null
  return lines.map((line, at) => {
    const heading = headingOf(line)
    const next = lines.slice(at + 1).find((one) => one.trim() !== '') ?? ''
    if (heading?.kind === 'cut' && withCut(next, heading.text) !== null) {
      cut = heading.text
      return heading.lead ?? ''
    }
    const own: string | null = cut === null || line.trim() === '' ? null : withCut(line, cut)
    if (line.trim() !== '' && own === null) cut = null
    return own ?? line
  })
}

const isCounted = (line: string): boolean => {
  const tokens = tokensOf(line)
  return tokens.some((token) => isNumber(token) || isWord(token, 'x'))
}

/** Lines that stand under a line with only their size or their cut say it themselves. */
export const spreadHeadings = (text: string): string => {
  const lines = text.split('\n')
  if (lines.length < 2 || lines.length > 600) return text
  const headings = lines.map((line) => (line.length > 60 ? null : headingOf(line)))
  if (headings.every((one) => one === null)) return text
  const sized = underSizes({ lines, headings })
  if (sized !== null && !lines.every(isCounted)) return sized.join('\n')
  return underCuts(lines).join('\n')
}
