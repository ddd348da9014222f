import { sizeAt } from './sizes.ts'
import { isCapital, isNumber, type Token, tokensOf } from './tokens.ts'

const isFigure = (token: Token | undefined): boolean => isNumber(token) && /^\d{1,3}$/.test(token?.text ?? '')

/** "2 Nájera", "Jones 7", "#11 D'Amico": one player's number and name. */
const entryOf = (part: string): string | null => {
  const tokens = tokensOf(part).filter((token) => token.text !== '#')
  const figures = tokens.filter(isFigure)
  const [first, last] = [tokens[0], tokens.at(-1)]
  const words = tokens.filter((token) => !isFigure(token))
  if (figures.length !== 1 || words.length === 0 || !(isFigure(first) || isFigure(last)) || !isCapital(words[0])) return null
  const name = part.replace(/#?\b\d{1,3}\b/, ' ').trim()
  return `${figures[0]?.text ?? ''}, ${name}`
}

/** The players of a line headed by their size: "Juvenil M: 2 Nájera, 5 Olmos"; null where it is no such line. */
const playersOf = (line: string): readonly string[] | null => {
  const tokens = tokensOf(line)
  const size = sizeAt(tokens, 0)
  const colon = size === null ? undefined : tokens[size.to]
  if (size?.size === undefined || colon?.text !== ':') return null
  const head = line.slice(0, colon.start).trim()
  const entries = line
    .slice(colon.end)
    .split(/[,;]/)
    .filter((part) => part.trim() !== '')
    .map(entryOf)
  const whole = entries.flatMap((entry) => (entry === null ? [] : [`${entry}, ${head}`]))
  return entries.length > 1 && whole.length === entries.length ? whole : null
}

/** Lists by size with several players on a line become a line for each player. */
export const spreadBySize = (text: string): string =>
  text
    .split('\n')
    .flatMap((line) => (line.length > 400 ? null : playersOf(line)) ?? [line])
    .join('\n')
