import { spoken } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, type Token, tokensOf } from '../text/tokens.ts'
import { readRowLine } from './row-line.ts'

const isFigure = (token: Token | undefined): boolean => isNumber(token) && /^\d{1,3}$/.test(token?.text ?? '')

/** In capitals, or in small letters a word or two that may be a name. */
const isNamed = (part: string, words: readonly Token[]): boolean =>
  isCapital(words[0]) || (words.length < 3 && readRowLine(part)?.name !== undefined)

/** "2 Nájera", "Jones 7", "#11 D'Amico", "María José": one player's name, with the number where there is one. */
const entryOf = (part: string): string | null => {
  const tokens = tokensOf(part).filter((token) => token.text !== '#')
  const figures = tokens.filter(isFigure)
  const [first, last] = [tokens[0], tokens.at(-1)]
  const words = tokens.filter((token) => !isFigure(token))
  if (words.length === 0 || words.length > 5 || !isNamed(part, words) || words.some((word) => ':?!'.includes(word.text)))
    return null
  if (figures.length === 0) return part.trim().replace(/\.$/, (stop) => (/\b\p{L}\.$/u.test(part.trim()) ? stop : ''))
  if (figures.length !== 1 || !(isFigure(first) || isFigure(last))) return null
  const name = part.replace(/#?\b\d{1,3}\b/, ' ').trim()
  return `${figures[0]?.text ?? ''}; ${name}`
}

const joint = new RegExp(`[,;]| ${spoken.rosters.joins} |&`)

/** The players named in one stretch, each with the size that it is headed by; null where it is not a list of two players or more. */
export const playersUnder = (text: string, size: string): readonly string[] | null => {
  const entries = text
    .split(joint)
    .filter((part) => part.trim() !== '')
    .map(entryOf)
  const whole = entries.flatMap((entry) => (entry === null ? [] : [`${entry}; ${size}`]))
  return entries.length > 1 && whole.length === entries.length ? whole : null
}

type Head = { readonly from: number; readonly to: number; readonly size: string }

/** Where a line has a size with one of these signs behind it. */
const headsOf = (line: string, tokens: readonly Token[], signs: readonly string[]): readonly Head[] => {
  const heads: Head[] = []
  for (const at of tokens.keys()) {
    const size = sizeAt(tokens, at)
    const sign = size === null ? undefined : tokens[size.to]
    const from = tokens[at]?.start ?? 0
    if (size?.size === undefined || !signs.includes(sign?.text ?? '') || (heads.at(-1)?.to ?? 0) > from) continue
    heads.push({ from, to: sign?.end ?? 0, size: line.slice(from, sign?.start).trim() })
  }
  return heads
}

/** What stands between a head and the next, without the signs that part them. */
const listOf = (line: string, { to }: Head, next: Head | undefined): string => {
  const list = line.slice(to, next?.from ?? line.length)
  return next === undefined ? list.replace(/[\s,;/|]+$/, '') : list.replace(/[\s,;./|]+$/, '')
}

/** The players of a line headed by their size: "Juvenil M: 2 Nájera, 5 Olmos", "M: Ruth, Del; L: Tony"; null where it is no such line. */
const playersOf = (line: string, signs: readonly string[]): readonly string[] | null => {
  const heads = headsOf(line, tokensOf(line), signs)
  const [first] = heads
  if (first === undefined || line.slice(0, first.from).trim() !== '') return null
  const lists = heads.map((head, index) => {
    const text = listOf(line, head, heads[index + 1])
    const entry = heads.length > 1 ? entryOf(text) : null
    return playersUnder(text, head.size) ?? (entry === null ? null : [`${entry}; ${head.size}`])
  })
  return lists.some((list) => list === null) ? null : lists.flatMap((list) => list ?? [])
}

const dashes: readonly string[] = ['-', '–']

/** "S - Ann, Bob", "L - Tony, Hank": with a dash only where several lines each have a size of their own, else it is "Hank, Tony" of size L. */
const isDashed = (lines: readonly string[]): boolean => {
  const sizes = lines.flatMap((line) =>
    playersOf(line, dashes) === null ? [] : headsOf(line, tokensOf(line), dashes).map(({ size }) => size),
  )
  return sizes.length > 1 && new Set(sizes).size === sizes.length
}

/** Lists by size with several players on a line become a line for each player. */
export const spreadBySize = (text: string): string => {
  const lines = text.split('\n')
  const short = lines.filter((line) => line.length <= 400).slice(0, 60)
  const signs = isDashed(short) ? [':', '=', ...dashes] : [':', '=']
  return lines.flatMap((line) => (line.length > 400 ? null : playersOf(line, signs)) ?? [line]).join('\n')
}
