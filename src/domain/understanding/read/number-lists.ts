import type { Player } from '../draft.ts'
import { sizeAt } from './sizes.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

export type NumberList = {
  readonly numbers: readonly string[]
  readonly from: number
  readonly to: number
  readonly ranged: boolean
}

const through: readonly string[] = ['through', 'thru', 'to', 'al', 'a', 'hasta']

const isFigure = (token: Token | undefined, next: Token | undefined): boolean =>
  token !== undefined &&
  isNumber(token) &&
  /^\d{1,3}$/.test(token.text) &&
  !(next?.kind === 'word' && next.start === token.end && !/^(?:and|y)$/.test(next.key))

const range = (from: string, to: string): readonly string[] => {
  const [first, last] = [Number(from), Number(to)]
  return last > first && last - first < 200 ? Array.from({ length: last - first + 1 }, (_, index) => String(first + index)) : []
}

/** "4, 7, 00 and 13", "1 through 12", "1-5", "del 1 al 8": the jersey numbers of a list or a range that begins at a token. */
export const numberListAt = (tokens: readonly Token[], from: number): NumberList | null => {
  const numbers: string[] = []
  let ranged = false
  let at = isWord(tokens[from], 'del', 'from') ? from + 1 : from
  while (isFigure(tokens[at], tokens[at + 1])) {
    const text = tokens[at]?.text ?? ''
    const to = tokens[at + 2]
    const isRange =
      (isWord(tokens[at + 1], ...through) || tokens[at + 1]?.text === '-') && to !== undefined && isFigure(to, tokens[at + 3])
    const members = isRange ? range(text, to.text) : []
    if (members.length > 0) {
      numbers.push(...members)
      ranged = true
      at += 3
    } else {
      numbers.push(text)
      at += 1
    }
    const comma = tokens[at]?.text === ',' ? 1 : 0
    const and = isWord(tokens[at + comma], 'and', 'y', '&') || tokens[at + comma]?.text === '&' ? 1 : 0
    const hash = tokens[at + comma + and]?.text === '#' ? 1 : 0
    if (comma + and + hash === 0 || !isFigure(tokens[at + comma + and + hash], tokens[at + comma + and + hash + 1])) break
    at += comma + and + hash
  }
  return numbers.length === 0 ? null : { numbers, from, to: at, ranged }
}

export type Listed = {
  readonly players: readonly Player[]
  readonly sized: readonly { readonly numbers: readonly string[]; readonly size: Player['size']; readonly fit: Player['fit'] }[]
  readonly taken: ReadonlySet<number>
}

const isIntro = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at - 1], 'numbers', 'numeros', 'number', 'nos', 'nos.', 'dorsales') ||
  (tokens[at - 1]?.text === ':' && isWord(tokens[at - 2], 'numbers', 'numeros'))

const verbs: readonly string[] = ['are', 'is', 'son', 'es', 'in', 'talla', 'size', 'en', 'a', 'an', 'all', 'wear', 'get']

const sizeBehind = (tokens: readonly Token[], at: number) => {
  let next = at
  while (next < at + 3 && (isWord(tokens[next], ...verbs) || tokens[next]?.text === ':') && sizeAt(tokens, next) === null)
    next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : size
}

/** Numbers listed after the word "numbers", and sizes said of ranges of numbers ("1-5 are youth M"). */
export const readNumberLists = (tokens: readonly Token[], known: ReadonlySet<string>): Listed => {
  const players: Player[] = []
  const sized: { numbers: readonly string[]; size: Player['size']; fit: Player['fit'] }[] = []
  const taken = new Set<number>()
  let at = 0
  while (at < tokens.length) {
    const list = numberListAt(tokens, at)
    if (list === null) {
      at += 1
      continue
    }
    const size = sizeBehind(tokens, list.to)
    const intro = isIntro(tokens, isWord(tokens[at], 'del', 'from') ? at : list.from)
    const all = new Set([...known, ...players.flatMap((player) => player.number ?? [])])
    const fresh = list.numbers.filter((number) => !all.has(number))
    if (intro && (list.numbers.length > 1 || list.ranged)) players.push(...fresh.map((number) => ({ number })))
    const about = (list.ranged || list.numbers.length > 1) && (intro || list.numbers.every((number) => all.has(number)))
    if (size !== null && about) sized.push({ numbers: list.numbers, size: size.size, fit: size.fit })
    if ((intro && (list.numbers.length > 1 || list.ranged)) || (size !== null && about))
      for (let index = list.from; index < (size !== null && about ? size.to : list.to); index += 1) taken.add(index)
    at = list.to
  }
  return { players, sized, taken }
}
