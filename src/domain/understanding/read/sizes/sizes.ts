import type { Fit, Size } from '../../../garment/garment.ts'
import { cutWords, listed, sizeWords, wordValues } from '../../words/languages.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'

/** A size, a cut, or both, as people write them. */
export type SizeFound = { readonly size?: Size; readonly fit?: Fit; readonly to: number }

/** Whether a line is of the size that was said, and of the cut where one was said. */
export const isOfSize = (
  { size, fit }: SizeFound,
  line: { readonly size?: string | undefined; readonly fit?: string | undefined },
): boolean => line.size === size && (fit === undefined || line.fit === fit)

/** These are sizes only in capitals: "s", "al", "as", "am" are words or halves of them. */
const capitalSizes: Readonly<Record<string, { readonly size: Size; readonly fit?: Fit }>> = {
  S: { size: 'S' },
  M: { size: 'M' },
  L: { size: 'L' },
  G: { size: 'L' },
  AS: { size: 'S', fit: 'men' },
  AM: { size: 'M', fit: 'men' },
  AL: { size: 'L', fit: 'men' },
}

const shortSizes: Readonly<Record<string, { readonly size: Size; readonly fit: Fit }>> = {
  yxs: { size: 'XS', fit: 'youth' },
  ys: { size: 'S', fit: 'youth' },
  ym: { size: 'M', fit: 'youth' },
  yl: { size: 'L', fit: 'youth' },
  yxl: { size: 'XL', fit: 'youth' },
  ysm: { size: 'S', fit: 'youth' },
  ymd: { size: 'M', fit: 'youth' },
  ylg: { size: 'L', fit: 'youth' },
  axl: { size: 'XL', fit: 'men' },
  axs: { size: 'XS', fit: 'men' },
  wxs: { size: 'XS', fit: 'women' },
  ws: { size: 'S', fit: 'women' },
  wm: { size: 'M', fit: 'women' },
  wl: { size: 'L', fit: 'women' },
  wxl: { size: 'XL', fit: 'women' },
}

const multiples: Readonly<Record<string, Size>> = { '2': '2XL', '3': '3XL', '4': '4XL' }
const baby: Readonly<Record<string, Size>> = { '2': '2T', '3': '3T', '4': '4T', '5': '5T' }

const touches = (a: Token | undefined, b: Token | undefined): boolean => a !== undefined && b !== undefined && a.end === b.start

/** 2XL, 3X, 2T: a figure with its letters on it. */
const figureSize = (tokens: readonly Token[], at: number): SizeFound | null => {
  const figure = tokens[at]
  const letters = tokens[at + 1]
  if (figure === undefined || !isNumber(figure) || letters === undefined || !touches(figure, letters)) return null
  const key = letters.key.replace(/\.$/, '').replace(/'s$/, 's')
  if (key === 't' || key === 'ts') {
    const size = baby[figure.text]
    return size === undefined ? null : { size, fit: 'toddler', to: at + 2 }
  }
  const size = multiples[figure.text]
  return size !== undefined && ['x', 'xl', 'xg', 'xls'].includes(key) ? { size, to: at + 2 } : null
}

/** Sizes in months; those that no shop's toddler sizes stand for (common practice: 24 months is 2T) have to be asked. */
const months: Readonly<Record<string, Size | null>> = {
  '3': null,
  '6': null,
  '9': null,
  '12': null,
  '18': null,
  '24': '2T',
  '36': '3T',
}
const monthLetters: readonly string[] = ['m', 'mo', 'mos']

/** "9 Joy 24M": a figure behind a name that has its number is of months, and so is one alone in a column of sizes. */
const monthsSize = (tokens: readonly Token[], at: number, alone: boolean): SizeFound | null => {
  const [figure, letter, name] = [tokens[at], tokens[at + 1], tokens[at - 1]]
  const size = figure !== undefined && isNumber(figure) ? months[figure.text] : undefined
  if (size === undefined || !touches(figure, letter) || !monthLetters.includes(letter?.key ?? '')) return null
  const pause = tokens.slice(0, at).findLastIndex(({ kind, text }) => kind === 'break' || [',', ';', '.'].includes(text))
  const numbered = name?.kind === 'word' && /^\p{Lu}/u.test(name.text) && tokens.slice(pause + 1, at).some(isNumber)
  if (!numbered && !(alone && tokens.length === 2)) return null
  return size === null ? { fit: 'toddler', to: at + 2 } : { size, fit: 'toddler', to: at + 2 }
}

/** "double extra large", "extra extra large", "triple XL", "doble XG", "equis ele": sizes as they are spoken. */
const spokenSize = (tokens: readonly Token[], at: number): SizeFound | null => {
  const { doubled, tripled, lettered } = listed.dictation
  const times = [lettered, doubled, tripled].findIndex((words) => isWord(tokens[at], ...words))
  if (times < 0) return null
  if (times === 0) return wordValues.letters[tokens[at + 1]?.key ?? ''] === 'l' ? { size: 'XL', to: at + 2 } : null
  const base =
    sizeWords[tokens[at + 1]?.key ?? ''] === 'XL'
      ? { size: 'XL', to: at + 2 }
      : (spokenSize(tokens, at + 1) ?? pairSize(tokens, at + 1))
  if (base?.size !== 'XL') return null
  return { size: times === 1 ? '2XL' : '3XL', to: base.to }
}

/** "extra large", "extra grande", "x large", "Y M". */
const pairSize = (tokens: readonly Token[], at: number): SizeFound | null => {
  const first = tokens[at]
  const second = tokens[at + 1]
  const times = isWord(first, 'x') && isNumber(tokens[at - 1])
  if (!times && isWord(first, ...listed.players.extra)) {
    const size = sizeWords[second?.key ?? '']
    if (size === 'L') return { size: 'XL', to: at + 2 }
    return size === 'S' ? { size: 'XS', to: at + 2 } : null
  }
  return null
}

const bareSize = (tokens: readonly Token[], at: number, loose: boolean): SizeFound | null => {
  const token = tokens[at]
  if (token === undefined) return null
  const found = figureSize(tokens, at) ?? spokenSize(tokens, at) ?? pairSize(tokens, at)
  if (found !== null) return found
  if (token.kind !== 'word') return null
  if (/^\p{L}\.$/u.test(token.text) && at + 1 < tokens.length && tokens[at + 1]?.kind !== 'break') return null
  const text = token.text.replace(/\.$|'s$/, '')
  const capital = capitalSizes[loose && text.length === 1 ? text.toUpperCase() : text]
  if (capital !== undefined) return { ...capital, to: at + 1 }
  const short = shortSizes[/^[ayw]-(?:xs|s|m|l|xl)$/.test(token.key) ? token.key.replace('-', '') : token.key]
  if (short !== undefined) return { ...short, to: at + 1 }
  const size = sizeWords[token.key]
  return size === undefined ? null : { size, to: at + 1 }
}

const fitAt = (tokens: readonly Token[], at: number): { readonly fit: Fit; readonly to: number } | null => {
  const skip = isWord(tokens[at], ...listed.players.cutLead) ? 1 : 0
  const token = tokens[at + skip]
  const fit = token === undefined ? undefined : cutWords[token.key]
  if (fit === undefined || !Object.hasOwn(cutWords, token?.key ?? '')) return null
  return { fit, to: pastApostrophe(tokens, at + skip + 1) }
}

/** "ladies' S", "boys' M": the sign that ends a plural of whom it is for. */
const pastApostrophe = (tokens: readonly Token[], to: number): number => {
  const sign = tokens[to]
  return (sign?.text === "'" || sign?.text === '’') && touches(tokens[to - 1], sign) ? to + 1 : to
}

/** The cut that words at a place name: "women's", "de dama", "youth". */
export const cutAt = fitAt

const letters: Readonly<Record<string, Fit>> = { a: 'men', m: 'men', w: 'women', y: 'youth' }

/** "W S", "W 2XL": women's by its letter; "A2XL", "Y2XL" and the like where the letter touches the figure. */
const letteredSize = (tokens: readonly Token[], at: number): SizeFound | null => {
  const [letter, next] = [tokens[at], tokens[at + 1]]
  const fit = letters[letter?.key ?? '']
  const glued = fit !== undefined && letter !== undefined && touches(letter, next) && isNumber(next)
  if (!glued && letter?.text !== 'W' && letter?.text !== 'w') return null
  const size = glued ? figureSize(tokens, at + 1) : bareSize(tokens, at + 1, false)
  return size === null || size.fit !== undefined ? null : { ...size, fit: fit ?? 'women' }
}

/** "de dama en chica", "women's in medium": a size that is led to behind its cut. */
const pastLink = (tokens: readonly Token[], to: number): number => {
  let at = to
  while (at < to + 2 && isWord(tokens[at], ...listed.players.sizeLink)) at += 1
  return at
}

/**
 * The size that begins at a token: cut before or after it ("youth medium", "M de niño"), "size" and "talla" skipped. With `loose`
 * the letters s, m, l and g count in small writing too, as in a column of sizes.
 */
export const sizeAt = (tokens: readonly Token[], from: number, loose = false): SizeFound | null => {
  const at = isWord(tokens[from], ...listed.players.sizeLead) ? from + 1 : from
  const lettered = letteredSize(tokens, at) ?? monthsSize(tokens, at, loose)
  if (lettered !== null) return lettered
  const before = fitAt(tokens, at)
  const sized = bareSize(tokens, before === null ? at : pastLink(tokens, before.to), loose || before !== null || at > from)
  if (sized === null) return null
  if (sized.fit !== undefined) return sized
  if (before !== null) return { ...sized, fit: before.fit }
  const after = fitAt(tokens, sized.to)
  return after === null ? sized : { ...sized, fit: after.fit, to: after.to }
}

/** Whether a size stands anywhere among these. */
export const hasSize = (tokens: readonly Token[]): boolean => tokens.some((_, at) => sizeAt(tokens, at)?.size !== undefined)

/** "XL folks", "M jerseys": a size of things. */
const isOfThings = (token: Token | undefined): boolean =>
  token?.kind === 'word' && /s$/.test(token.key) && !isWord(token, ...listed.told.tails)

/** Whether a size that stands there is one: written out without its cut, "small" and "chica" are other words too ("a small question"). */
export const isPlainSize = (tokens: readonly Token[], from: number, { fit, to }: SizeFound): boolean => {
  const next = tokens[to]
  if (isOfThings(next)) return false
  if (fit !== undefined || tokens.slice(from, to).some((token) => /^[\dA-Z]+$/.test(token.text))) return true
  return !isWord(tokens[from - 1], ...listed.told.feeling) && (next?.kind !== 'word' || isWord(next, ...listed.told.tails))
}
