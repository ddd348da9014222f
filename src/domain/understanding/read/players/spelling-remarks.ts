import { listed, wordValues } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { fold, isWord, type Token } from '../text/tokens.ts'

/** What is said of a letter of a name: that it is there, twice (`doubled`), or is not (`wanted` false); `from` and `to` are places of tokens. */
export type Remark = {
  readonly letters: string
  readonly wanted: boolean
  readonly doubled: boolean
  readonly from: number
  readonly to: number
}

const single = /^(\p{L})(?:'?s)?$/u
const pair = /^(ph|th|ch|ck|sh|qu|([b-df-hj-np-tv-z])\2|[aeiouy]{2})(?:'?s)?$/u

/** Letters as they are written or called: "k", "f's", "Ls", "ph", "zeta", "ñ". */
const lettersOf = (token: Token | undefined): string | null => {
  if (token?.kind !== 'word') return null
  if (/^[aeiou]s$/.test(token.text)) return null // "No es", "not as", "is": words, and no letter of several.
  const written = token.text.toLowerCase().normalize('NFC')
  if (written === 'ñ' || written === 'eñe') return 'ñ'
  return single.exec(token.key)?.[1] ?? wordValues.letters[token.key] ?? pair.exec(token.key)?.[1] ?? null
}

const before: readonly string[] = [...listed.told.beforeLetter, ...listed.again.twice]
const between: readonly string[] = [...before, ...listed.changes.the, ...listed.again.small]

/** Where the letters stand that a word leads to: "con f", "with an f", "con doble l", "two Ls". */
const lettersAt = (tokens: readonly Token[], at: number): number | null => {
  if (!isWord(tokens[at], ...before)) return null
  let next = at + 1
  while (isWord(tokens[next], ...between) && (isWord(tokens[next + 1], ...before) || lettersOf(tokens[next + 1]) !== null))
    next += 1
  return lettersOf(tokens[next]) === null ? null : next
}

const refused = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], ...listed.changes.without) || isWord(tokens[at - 1], ...listed.changes.not)

/** All that a sentence says of letters; "Ana con M" tells a size and no letter, unless spelling is spoken of. */
export const remarksIn = (tokens: readonly Token[]): readonly Remark[] => {
  const remarks: Remark[] = []
  const spells = speaksOfSpelling(tokens)
  for (let at = 0; at < tokens.length; at += 1) {
    const place = lettersAt(tokens, at) ?? (isWord(tokens[at], ...listed.changes.not) ? refusedAt(tokens, at) : null)
    if (place === null) continue
    const said = tokens.slice(at, place)
    const doubled = said.some((token, index) => isWord(token, ...listed.again.twice) || (index === 0 && token.text === '2'))
    const isSize = !spells && !doubled && sizeAt(tokens, place)?.size !== undefined
    const letters = isSize ? null : lettersOf(tokens[place])
    const wanted = !refused(tokens, at) && !isWord(tokens[at], ...listed.changes.not)
    if (letters !== null) remarks.push({ letters, doubled, wanted, from: at, to: place + 1 })
    at = place
  }
  return remarks
}

/** "no ph", "not an a": letters right behind a refusal. */
const refusedAt = (tokens: readonly Token[], at: number): number | null => {
  const next = isWord(tokens[at + 1], ...between) && lettersOf(tokens[at + 2]) !== null ? at + 2 : at + 1
  return lettersOf(tokens[next]) === null ? null : next
}

/** Spelling itself is spoken of: "se escribe", "misspelled". */
export const speaksOfSpelling = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => isWord(token, ...listed.changes.spells))

const bare = (letters: string): string => (letters === 'ñ' ? 'ñ' : fold(letters))
const plain = (word: string): string => word.toLowerCase().replace(/[^ñ\p{M}]/gu, (sign) => fold(sign))

/** A word is written as all the remarks say. */
export const isWrittenSo = (word: string, remarks: readonly Remark[]): boolean =>
  remarks.every(({ letters, wanted }) => !wanted || plain(word.normalize('NFC')).includes(bare(letters)))

/** Letters that sound alike in the languages that are spoken here. */
const groups: readonly (readonly string[])[] = [
  ['z', 's', 'c', 'x'],
  ['k', 'c', 'q', 'qu', 'ck'],
  ['y', 'i', 'ie', 'ey'],
  ['v', 'b', 'w'],
  ['f', 'ph'],
  ['j', 'g', 'x'],
  ['ñ', 'n'],
]

/** The only place where some letters stand in a word. */
const onlyPlace = (word: string, letters: string): number | null => {
  const first = plain(word).indexOf(letters)
  return first < 0 || plain(word).includes(letters, first + 1) ? null : first
}

const asWritten = (word: string, at: number, { was, letters }: { readonly was: string; readonly letters: string }): string => {
  const changed = `${word.slice(0, at)}${letters}${word.slice(at + was.length)}`
  return /^\p{Lu}/u.test(word) ? `${changed.slice(0, 1).toUpperCase()}${changed.slice(1)}` : changed
}

/** "Sophia con f": the letters that sound alike, where just one of them stands there. */
const exchanged = (word: string, { letters }: Remark, old: Remark | undefined): string | null => {
  if (plain(word).includes(letters)) return null
  const alike = old === undefined ? groups.filter((group) => group.includes(letters)).flat() : [old.letters]
  const places = alike.flatMap((was) => {
    const body = letters === 'ñ' ? ` ${word.slice(1)}` : word // No name begins with the "n" that is meant.
    return plain(body).includes(was) ? [{ was, at: onlyPlace(body, was) }] : []
  })
  const whole = places.filter(({ was }) => !places.some((other) => other.was !== was && other.was.includes(was)))
  const [only, ...more] = whole
  return only === undefined || only.at === null || more.length > 0 ? null : asWritten(word, only.at, { was: only.was, letters })
}

/** A letter twice: where it stands once, or at the end where the end was said. */
const doubledIn = (word: string, letters: string, ends: boolean): string | null => {
  const places = [...plain(word)].flatMap((sign, index) => (sign === letters ? [index] : []))
  const at = ends ? places.at(-1) : places[0]
  if (at === undefined || (places.length > 1 && !ends) || (ends && at !== word.length - 1)) return null
  return `${word.slice(0, at + 1)}${(word[at] ?? '').toLowerCase()}${word.slice(at + 1)}`
}

/** A word as the remarks alone have it; null where they leave open which letter is meant. */
export const respelledBy = (word: string, remarks: readonly Remark[], ends: boolean): string | null => {
  const [wanted, ...more] = remarks.filter((one) => one.wanted)
  const [old, ...others] = remarks.filter((one) => !one.wanted)
  if (more.length + others.length > 0) return null
  if (wanted?.doubled === true) return doubledIn(word, bare(wanted.letters), ends)
  if (wanted !== undefined) return exchanged(word, wanted, old)
  const at = old === undefined ? null : onlyPlace(word, old.letters)
  return old === undefined || at === null ? null : asWritten(word, at, { was: old.letters, letters: '' })
}
