import type { Draft, GarmentWish } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { blanked, fold, isCapital, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { nameClauses } from '../whom/name-clauses.ts'
import { type Ref, refsIn } from '../whom/refs.ts'
import { isOfRole } from './make-of-role.ts'
import { isTextOfSome } from './text-of-some.ts'

/** The cloth of some players: what becomes of theirs, and clauses that do not say whose (`which`). */
export type ClothOfSome = { readonly patches: readonly Patch[]; readonly which: readonly string[]; readonly rest: string }

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

const some = new RegExp(`(?<![\\p{L}\\d])(?:${spoken.things.someOf}|${spoken.things.someShould})`, 'u')
const figure = /^\d+/
const made: readonly string[] = ['colour', 'stones', 'outline', 'shadow', 'class']

const total = ({ rows, count = 0, garments }: Draft): number =>
  Math.max(count, Object.keys(rows).length, ...Object.values(garments).map((wish) => wish.count ?? 0))

/** "Two of the jerseys should be white": of a part of what is there another make, and nobody named; "2 of them size L" tells no make. */
const isOfPart = (whole: string, { draft, lexicon }: Scene): boolean => {
  const text = whole.split(',').find((part) => some.test(fold(part)))
  if (text === undefined) return false
  const amount = Number(figure.exec(some.exec(fold(text))?.[0] ?? '')?.[0] ?? 0)
  const tokens = tokensOf(text)
  const makes = termsOf(lexicon, tokens).some(({ meaning }) => made.includes(meaning.kind))
  return makes && refsOf(tokensOf(whole), draft).length === 0 && (amount === 0 || amount < total(draft))
}

const isLed = (tokens: readonly Token[], { from, to, by }: Ref): boolean =>
  by === 'name' || to > from + 1 || tokens[from - 1]?.text === '#' || isWord(tokens[from - 1], ...listed.leftOff.whose)

/** Who is named; one figure by itself is anything. */
const refsOf = (tokens: readonly Token[], draft: Draft): readonly Ref[] => {
  const refs = refsIn(tokens, draft.rows)
  const numbers = refs.filter(({ by }) => by === 'number')
  return refs.filter((ref) => isLed(tokens, ref) || numbers.length > 1)
}

const small: readonly string[] = [...listed.things.clothWords, ...listed.leftOff.whose, ...listed.again.joins]

type Cloth = { readonly keys: readonly string[]; readonly hue: string }

const hueIn = (terms: readonly Term[]): string | null => {
  const [hue, ...more] = terms.flatMap(({ meaning }) => (meaning.kind === 'colour' ? [meaning] : []))
  return hue === undefined || more.length > 0 || hue.readings !== undefined ? null : hue.id
}

/** "Zoe and Eli's jerseys should be white", "el 4 y el 12 en blanco": a clause of players, one colour and nothing else. */
const clothIn = (text: string, { draft, lexicon }: Scene): Cloth | null => {
  const tokens = tokensOf(text)
  const refs = refsOf(tokens, draft)
  const isTheirs = (at: number) => refs.some(({ from, to }) => at >= from && at < to)
  const terms = termsOf(lexicon, tokens).filter(({ from }) => !isTheirs(from) || !isCapital(tokens[from]))
  const told = (at: number) => terms.some(({ from, to, meaning }) => at >= from && at < to && plain.includes(meaning.kind))
  const only = tokens.every(
    (token, at) => isTheirs(at) || told(at) || isWord(token, ...small) || ["'", '#', '&', ','].includes(token.text),
  )
  const keys = [...new Set(refs.flatMap((ref) => ref.keys))]
  const hue = hueIn(terms)
  const sure = refs.every((ref) => ref.keys.length === 1)
  return only && sure && hue !== null && keys.length > 0 && keys.length < Object.keys(draft.rows).length ? { keys, hue } : null
}

const plain: readonly string[] = ['colour', 'garment', 'and', 'in', 'of', 'with', 'unit']

/** The garment of which there is a like in that colour, else the next free id. */
const twinOf = ({ garments }: Draft, id: string, hue: string): string => {
  const kind = garments[id]?.kind
  const there = Object.entries(garments).find(([, wish]) => wish.kind === kind && wish.colour === hue)?.[0]
  if (there !== undefined) return there
  let number = 2
  while (garments[`${id}-${number}`] !== undefined) number += 1
  return `${id}-${number}`
}

const cloth = ({ colour: _colour, count: _count, each: _each, size: _size, ...wish }: GarmentWish, hue: string): GarmentWish => ({
  ...wish,
  colour: hue,
})

/** The pieces of these players in another colour: a garment apart, worn by them alone. */
const apart = (draft: Draft, id: string, { keys, hue }: Cloth): readonly Patch[] => {
  const twin = twinOf(draft, id, hue)
  const wish = draft.garments[id]
  if (wish === undefined) return []
  const fresh = draft.garments[twin] === undefined
  return [
    ...(fresh ? Object.entries(cloth(wish, hue)).map(([key, value]): Patch => ({ path: ['garments', twin, key], value })) : []),
    ...Object.entries(draft.marks).flatMap(([mark, { on }]): readonly Patch[] =>
      fresh && on?.includes(id) ? [{ path: ['marks', mark, 'on'], value: [...on, twin] }] : [],
    ),
    ...keys.map((key): Patch => ({ path: ['rows', key, 'garment'], value: twin })),
  ]
}

/** The one garment that these players wear; null where they have several. */
const wornBy = ({ rows, garments }: Draft, keys: readonly string[]): string | null => {
  const ids = Object.keys(garments)
  const worn = new Set(keys.flatMap((key) => rows[key]?.garment ?? ids.filter((id) => ids.length === 1 || id.endsWith('jersey'))))
  const [id, ...more] = [...worn]
  return id === undefined || more.length > 0 ? null : id
}

type Heard = { readonly patches: readonly Patch[]; readonly which: boolean }

const heardIn = (words: string, scene: Scene): Heard | null => {
  if (isOfPart(words, scene) || isOfRole(words, scene) || isTextOfSome(words, scene.draft)) return { patches: [], which: true }
  const own = clothIn(words, scene)
  if (own === null) return null
  const id = wornBy(scene.draft, own.keys)
  return id === null ? { patches: [], which: true } : { patches: apart(scene.draft, id, own), which: false }
}

/**
 * Another colour for the pieces of some: of players who are named, theirs alone become so; where only an amount is told ("two of the
 * jerseys should be white") it is asked whose, and nobody's is changed.
 */
export const readClothOfSome = (text: string, scene: Scene): ClothOfSome => {
  const none: ClothOfSome = { patches: [], which: [], rest: text }
  if (text.length > 600 || !Object.values(scene.draft.garments).some(({ colour }) => colour !== undefined)) return none
  return nameClauses(text, scene.draft).reduce<ClothOfSome>(({ patches, which, rest }, { from, to }) => {
    const words = text.slice(from, to)
    const heard = heardIn(words, { ...scene, draft: preview(scene.draft, patches) })
    if (heard === null) return { patches, which, rest }
    return {
      patches: [...patches, ...heard.patches],
      which: heard.which ? [...which, words.trim()] : which,
      rest: blanked(rest, from, to),
    }
  }, none)
}
