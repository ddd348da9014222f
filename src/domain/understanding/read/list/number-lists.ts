import type { Player } from '../../draft.ts'
import { faceWords, listed } from '../../words/languages.ts'
import { isMonth } from '../calendar/day-parts.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'

export type NumberList = {
  readonly numbers: readonly string[]
  readonly from: number
  readonly to: number
  readonly ranged: boolean
}

const through: readonly string[] = listed.players.through

const isFigure = (token: Token | undefined, next: Token | undefined): boolean =>
  token !== undefined &&
  isNumber(token) &&
  /^\d{1,3}$/.test(token.text) &&
  !(next?.kind === 'word' && next.start === token.end && !listed.players.and.includes(next.key))

const range = (from: string, to: string): readonly string[] => {
  const [first, last] = [Number(from), Number(to)]
  return last > first && last - first < 200 ? Array.from({ length: last - first + 1 }, (_, index) => String(first + index)) : []
}

const figureAt = (tokens: readonly Token[], at: number): boolean => isFigure(tokens[at], tokens[at + 1])

type Member = { readonly numbers: readonly string[]; readonly to: number; readonly ranged: boolean }

/** A range or a single figure at a token. */
const memberAt = (tokens: readonly Token[], at: number): Member | null => {
  if (!figureAt(tokens, at)) return null
  const text = tokens[at]?.text ?? ''
  const joined = isWord(tokens[at + 1], ...through) || tokens[at + 1]?.text === '-'
  const numbers = joined && figureAt(tokens, at + 2) ? range(text, tokens[at + 2]?.text ?? '') : []
  return numbers.length > 0 ? { numbers, to: at + 3, ranged: true } : { numbers: [text], to: at + 1, ranged: false }
}

/** Where the next figure of a list stands, over a comma, an "and" or a number sign; null when the list ends. */
const nextMember = (tokens: readonly Token[], at: number): number | null => {
  let next = at
  if (tokens[next]?.text === ',') next += 1
  if (isWord(tokens[next], ...listed.players.and) || tokens[next]?.text === '&') next += 1
  if (tokens[next]?.text === '#' || (next > at && isWord(tokens[next], ...listed.players.leftOutLead))) next += 1
  return next > at && figureAt(tokens, next) ? next : null
}

const leftOutWords: readonly string[] = listed.players.leftOut

type LeftOut = { readonly numbers: readonly string[]; readonly to: number }

/** "… but skip 7", "… except 4 and 13", "… sin el 7": the figures that a range leaves out; none without such a word. */
const leftOutAt = (tokens: readonly Token[], from: number): LeftOut | null => {
  let at = from
  while (tokens[at]?.text === ',' || isWord(tokens[at], ...listed.players.butNot)) at += 1
  if (!isWord(tokens[at], ...leftOutWords)) return null
  at += 1
  while (tokens[at]?.text === '#' || isWord(tokens[at], ...listed.players.leftOutLead)) at += 1
  const numbers: string[] = []
  let to = at
  for (let next: number | null = figureAt(tokens, at) ? at : null; next !== null; next = nextMember(tokens, to)) {
    numbers.push(tokens[next]?.text ?? '')
    to = next + 1
  }
  return numbers.length === 0 ? null : { numbers, to }
}

/** "4, 7, 00 and 13", "1 through 12", "1-5", "del 1 al 8": the jersey numbers of a list or a range that begins at a token. */
export const numberListAt = (tokens: readonly Token[], from: number): NumberList | null => {
  const numbers: string[] = []
  let ranged = false
  let to = from
  let at: number | null = isWord(tokens[from], ...listed.players.from) ? from + 1 : from
  while (at !== null) {
    const member: Member | null = memberAt(tokens, at)
    if (member === null) break
    numbers.push(...member.numbers)
    ranged ||= member.ranged
    to = member.to
    at = nextMember(tokens, to)
  }
  if (numbers.length === 0) return null
  const leftOut = ranged ? leftOutAt(tokens, to) : null
  if (leftOut === null) return { numbers, from, to, ranged }
  return { numbers: numbers.filter((number) => !leftOut.numbers.includes(number)), from, to: leftOut.to, ranged }
}

export type Listed = {
  readonly players: readonly Player[]
  readonly sized: readonly { readonly numbers: readonly string[]; readonly size: Player['size']; readonly fit: Player['fit'] }[]
  readonly taken: ReadonlySet<number>
}

/** "con número dorado: el 2, el 5": a word for numbers shortly before the colon. */
const isHeaded = (tokens: readonly Token[], at: number): boolean => {
  const lead = isWord(tokens[at - 1], ...listed.players.leftOutLead) ? at - 2 : at - 1
  const before = tokens.slice(Math.max(0, lead - 3), lead)
  return tokens[lead]?.text === ':' && before.some((token) => faceWords.numbers.has(token.key))
}

/** "Numbers on the back 1 thru 15": a range in the same sentence behind a word for numbers, with no figure between. */
const isRangeBehind = (tokens: readonly Token[], { from, ranged }: NumberList): boolean => {
  const before = tokens.slice(Math.max(0, from - 6), from)
  const said = before.findLastIndex((token) => listed.players.intro.includes(token.key))
  return ranged && said >= 0 && before.slice(said).every((token) => token.kind === 'word' && !isMonth(token))
}

/** "Los números son el 1, …", "numbers are 4, …". */
const isToldBehind = (tokens: readonly Token[], at: number): boolean => {
  const lead = isWord(tokens[at - 1], ...listed.players.leftOutLead) ? at - 2 : at - 1
  return isWord(tokens[lead], ...listed.players.areSized) && isWord(tokens[lead - 1], ...listed.players.intro)
}

const isIntro = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at - 1], ...listed.players.intro) ||
  isToldBehind(tokens, at) ||
  isHeaded(tokens, at) ||
  (tokens[at - 1]?.text === ':' && isWord(tokens[at - 2], ...listed.players.introColon)) ||
  (isWord(tokens[at], ...listed.players.rangeFrom) &&
    isWord(tokens[at + 2], ...listed.players.rangeTo) &&
    !isWord(tokens[at + 4], ...listed.players.lengthUnits))

const verbs: readonly string[] = listed.players.areSized

const sizeBehind = (tokens: readonly Token[], at: number) => {
  let next = at
  while (next < at + 3 && (isWord(tokens[next], ...verbs) || tokens[next]?.text === ':') && sizeAt(tokens, next) === null)
    next += 1
  const size = sizeAt(tokens, next)
  return size?.size === undefined ? null : size
}

type Sized = Listed['sized'][number]

type HeardList = { readonly fresh: readonly string[]; readonly sized: Sized | null; readonly to: number }

/** What one list says: new numbers after the word "numbers", and a size for numbers that are known. */
const heardList = (tokens: readonly Token[], list: NumberList, known: ReadonlySet<string>): HeardList | null => {
  if (isWord(tokens[list.to], ...listed.players.isLength) || tokens[list.to]?.text === '"') return null
  const several = list.ranged || list.numbers.length > 1
  const intro = isIntro(tokens, list.from) || isRangeBehind(tokens, list)
  const one = isWord(tokens[list.from - 1], ...listed.players.leftOutLead) && list.numbers.every((number) => known.has(number))
  if (!(several || one) || !(intro || list.numbers.every((number) => known.has(number)))) return null
  const size = sizeBehind(tokens, list.to)
  if (!intro && size === null) return null
  const fresh = intro ? list.numbers.filter((number) => !known.has(number)) : []
  const sized = size === null ? null : { numbers: list.numbers, size: size.size, fit: size.fit }
  return { fresh, sized, to: size?.to ?? list.to }
}

/** Numbers listed after the word "numbers", and sizes said of ranges of numbers ("1-5 are youth M"). */
export const readNumberLists = (tokens: readonly Token[], known: ReadonlySet<string>): Listed => {
  const players: Player[] = []
  const sized: Sized[] = []
  const taken = new Set<number>()
  const all = new Set(known)
  let next = 0
  for (const at of tokens.keys()) {
    const list = at < next ? null : numberListAt(tokens, at)
    if (list === null) continue
    next = list.to
    const heard = heardList(tokens, list, all)
    if (heard === null) continue
    for (const number of heard.fresh) all.add(number)
    players.push(...heard.fresh.map((number) => ({ number })))
    if (heard.sized !== null) sized.push(heard.sized)
    for (let index = list.from; index < heard.to; index += 1) taken.add(index)
  }
  return { players, sized, taken }
}
