import type { Shop } from '../../../shop/shop.ts'
import type { Language } from '../../../units/language.ts'
import { languages } from '../../words/languages.ts'
import type { Meaning, WordList, Words } from '../../words/word-list.ts'
import { fold, type Token, tokensOf } from './tokens.ts'

/** A stretch of tokens with a meaning. */
export type Term = { readonly meaning: Meaning; readonly from: number; readonly to: number }

export type Lexicon = {
  readonly entries: ReadonlyMap<string, Meaning>
  /** How many tokens the longest phrase has that begins with a word. */
  readonly longest: ReadonlyMap<string, number>
}

const keyOf = (phrase: string): string =>
  tokensOf(phrase)
    .map((token) => token.key)
    .join(' ')

/** Spanish adjectives in gender and number: negro, negra, negros, negras; azul, azules. */
const bent = (phrase: string): readonly string[] => {
  const words = phrase.split(' ')
  const forms = (word: string): readonly string[] => {
    if (/[oa]$/.test(word)) return ['o', 'a', 'os', 'as'].map((end) => word.slice(0, -1) + end)
    if (/[e]$/.test(word)) return [word, `${word}s`]
    return /[lrns]$/.test(word) ? [word, `${word}es`] : [word]
  }
  const [first = '', ...rest] = words
  return [phrase, ...forms(fold(first)).map((form) => [form, ...rest].join(' '))]
}

/** The forms of a colour's name in a language. */
const formsOf = (code: string, name: string): readonly string[] => {
  const bends = Object.entries(languages).some(([own, { basics }]) => own === code && basics.bends)
  return bends ? bent(name) : [name]
}

/** A bare hue that several of the shop's colours end or begin with, and that is nobody's first name: "blue". */
const hueReadings = (shop: Shop, hue: string): readonly string[] => {
  const has = (name: string): boolean => name !== hue && (name.endsWith(` ${hue}`) || name.startsWith(`${hue} `))
  return shop.colours
    .filter(({ names }) => Object.values(names).some((list) => list.some((name) => has(name.toLowerCase()))))
    .map((colour) => colour.id)
}

const colourEntries = (shop: Shop): readonly (readonly [string, Meaning])[] =>
  shop.colours.flatMap(({ id, names }) => {
    const entry = (name: string, first: boolean, form: string): readonly [string, Meaning] => {
      const readings = first || name.includes(' ') ? [] : hueReadings(shop, name.toLowerCase())
      const several = readings.length > 1
      return [
        keyOf(form),
        several ? { kind: 'colour', id, readings: [id, ...readings.filter((other) => other !== id)] } : { kind: 'colour', id },
      ]
    }
    return Object.entries(names).flatMap(([code, list]) =>
      list.flatMap((name, index) => formsOf(code, name).map((form) => entry(name, index === 0, form))),
    )
  })

const namesIn = (names: Shop['colours'][number]['names'], code: string): readonly string[] =>
  Object.entries(names).flatMap(([own, list]) => (own === code ? list : []))

/** "Neon yellow", "verde limón", "lavender": shades of which the shop's nearest colours are asked about. */
const shadeEntries = (shop: Shop, { shades }: Words, code: string): readonly (readonly [string, Meaning])[] => {
  const known = new Set(shop.colours.map((colour) => colour.id))
  const asked = (ids: readonly string[]): readonly Meaning[] => {
    const [id, ...others] = ids.filter((one) => known.has(one))
    return id === undefined ? [] : [{ kind: 'colour', id, readings: [id, ...others] }]
  }
  const near = Object.entries(shades.near).flatMap(([name, ids]) => asked(ids).map((meaning) => [keyOf(name), meaning] as const))
  const hues = shop.colours.flatMap(({ id, names }) =>
    namesIn(names, code)
      .filter((name) => !name.includes(' '))
      .flatMap((name) => {
        const meanings = asked([id, ...hueReadings(shop, name.toLowerCase()).filter((other) => other !== id)])
        const forms = formsOf(code, name)
        return forms.flatMap((form) =>
          shades.words.flatMap((word) =>
            meanings.map((meaning) => [keyOf(shades.before ? `${word} ${form}` : `${form} ${word}`), meaning] as const),
          ),
        )
      }),
  )
  return [...hues, ...near]
}

const wordEntries = (list: WordList): readonly (readonly [string, Meaning])[] =>
  list.flatMap(({ means, words }) => words.map((phrase): readonly [string, Meaning] => [keyOf(phrase), means]))

const garmentEntries = (shop: Shop): readonly (readonly [string, Meaning])[] =>
  shop.garments.map(({ id, kind, name }): readonly [string, Meaning] => [
    keyOf(name.en),
    { kind: 'garment', id: kind, catalogue: id },
  ])

const build = (shop: Shop, language: Language): Lexicon => {
  const own = languages[language]
  const others = Object.values(languages).filter((other) => other !== own)
  const entries = new Map<string, Meaning>()
  const add = (pairs: readonly (readonly [string, Meaning])[]) => {
    for (const [key, meaning] of pairs) if (!entries.has(key)) entries.set(key, meaning)
  }
  add(wordEntries(own.list))
  add(colourEntries(shop))
  for (const [code, words] of Object.entries(languages)) add(shadeEntries(shop, words, code))
  for (const other of others) add(wordEntries(other.list).filter(([key]) => !own.notBorrowed.includes(key)))
  add(garmentEntries(shop))
  const longest = new Map<string, number>()
  for (const key of entries.keys()) {
    const words = key.split(' ')
    const first = words[0] ?? ''
    longest.set(first, Math.max(longest.get(first) ?? 0, words.length))
  }
  return { entries, longest }
}

const built = new WeakMap<Shop, Map<Language, Lexicon>>()

/** The words of a language with the shop's own colours and garments; words of the other language are understood where they differ. */
export const lexiconFor = (shop: Shop, language: Language): Lexicon => {
  const known = built.get(shop) ?? new Map<Language, Lexicon>()
  built.set(shop, known)
  const lexicon = known.get(language) ?? build(shop, language)
  known.set(language, lexicon)
  return lexicon
}

/** "Home's white", "the hoodie's black": the word without its 's. */
const longestFrom = ({ longest }: Lexicon, key: string): number =>
  longest.get(key) ?? (longest.has(key.replace(/'s$/, '')) ? 1 : 0)

const longestAt = (lexicon: Lexicon, tokens: readonly Token[], from: number): Term | null => {
  const most = Math.min(longestFrom(lexicon, tokens[from]?.key ?? ''), tokens.length - from)
  for (let length = most; length > 0; length -= 1) {
    const key = tokens
      .slice(from, from + length)
      .map((token) => token.key)
      .join(' ')
    const meaning = lexicon.entries.get(key) ?? lexicon.entries.get(key.replace(/'s$/, ''))
    if (meaning !== undefined) return { meaning, from, to: from + length }
  }
  return null
}

/** The terms found in tokens, the longest phrase first, none overlapping another. */
export const termsOf = (lexicon: Lexicon, tokens: readonly Token[]): readonly Term[] => {
  const terms: Term[] = []
  let at = 0
  while (at < tokens.length) {
    const term = longestAt(lexicon, tokens, at)
    if (term !== null) terms.push(term)
    at = term === null ? at + 1 : term.to
  }
  return terms
}
