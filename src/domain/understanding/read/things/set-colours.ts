import type { ContentKind, Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Term } from '../text/lexicon.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'

type Role = 'home' | 'away'
const roles: readonly Role[] = ['home', 'away']

type Hue = Stretch & { readonly id: string }
type Said = Stretch & { readonly role: Role }

/** What one half of a sentence names: "al blanco … números morados", "away numbers white". */
type Half = { readonly hues: readonly Hue[]; readonly role: Role | null }

/** Of which set the cloth is and in which colour it is printed on; `cloth` only where it was not known before. */
type Reading = { readonly set: Role; readonly cloth: string; readonly ink: string | null }

/** Colours of sets told in pairs, with the tokens that tell them. */
export type SetColours = { readonly patches: readonly Patch[]; readonly taken: ReadonlySet<number> }

type Scene = {
  readonly tokens: readonly Token[]
  readonly terms: readonly Term[]
  readonly draft: Draft
  /** Adjectives follow their noun, as in Spanish. */
  readonly postfix: boolean
}

const nowhere: SetColours = { patches: [], taken: new Set() }

const otherMakes: readonly string[] = ['outline', 'shadow', 'stones', 'stone-size', 'part', 'no']

const huesIn = (terms: readonly Term[]): readonly Hue[] =>
  terms.flatMap(({ meaning, from, to }) =>
    meaning.kind === 'colour' && meaning.readings === undefined ? [{ id: meaning.id, from, to }] : [],
  )

const rolesIn = (terms: readonly Term[]): readonly Said[] =>
  terms.flatMap(({ meaning, from, to }) => (meaning.kind === 'role' ? [{ role: meaning.id, from, to }] : []))

const contentsIn = (terms: readonly Term[]): readonly (Stretch & { readonly id: ContentKind })[] =>
  terms.flatMap(({ meaning, from, to }) => (meaning.kind === 'content' ? [{ id: meaning.id, from, to }] : []))

/** The two halves of colours and sets in their order, each with as many; null where they are not told alike. */
const halvesOf = (terms: readonly Term[]): readonly [Half, Half] | null => {
  const [hues, said] = [huesIn(terms), rolesIn(terms)]
  const all = [...hues, ...said].toSorted((a, b) => a.from - b.from)
  const middle = all[all.length / 2]
  if (middle === undefined || ![2, 4].includes(hues.length) || ![0, 2].includes(said.length)) return null
  const half = (isIn: (one: Stretch) => boolean): Half => ({
    hues: hues.filter(isIn),
    role: said.find(isIn)?.role ?? null,
  })
  const [first, second] = [half(({ from }) => from < middle.from), half(({ from }) => from >= middle.from)]
  const alike = first.hues.length === second.hues.length && (first.role === null) === (second.role === null)
  return alike ? [first, second] : null
}

const isMade = ({ terms, postfix }: Scene, hue: Hue): boolean =>
  contentsIn(terms).some((content) => (postfix ? content.to === hue.from : content.from === hue.to))

const clothOf = ({ garments }: Draft, set: Role): string | undefined => garments[set]?.colour

/** Numbers or names are spoken of among the colours and sets, or in one of those colours, and not only beside them. */
const isOfPrint = (scene: Scene): boolean => {
  const said = [...huesIn(scene.terms), ...rolesIn(scene.terms)]
  const [from, to] = [Math.min(...said.map((one) => one.from)), Math.max(...said.map((one) => one.to))]
  const among = contentsIn(scene.terms).some((content) => content.from >= from && content.to <= to)
  return among || huesIn(scene.terms).some((hue) => isMade(scene, hue))
}

/** A colour alone beside its set: of the cloth that was not known, else what is printed on it. */
const ofOne = (scene: Scene, set: Role, hue: Hue): readonly Reading[] => {
  const known = clothOf(scene.draft, set)
  if (known === undefined) return isOfPrint(scene) ? [] : [{ set, cloth: hue.id, ink: null }]
  return contentsIn(scene.terms).length > 0 && known !== hue.id ? [{ set, cloth: known, ink: hue.id }] : []
}

type Pair = { readonly cloth: Hue; readonly ink: Hue }

/** Two colours, one of which is the cloth: the one that was known of it, else the one that nothing is printed in. */
const isPair = (scene: Scene, { set, sure }: { readonly set: Role; readonly sure: boolean }, { cloth, ink }: Pair): boolean => {
  const known = clothOf(scene.draft, set)
  const fits = known === undefined ? sure && isMade(scene, ink) : known === cloth.id
  return fits && cloth.id !== ink.id && !isMade(scene, cloth)
}

/** Every way to take a half: whose cloth one colour is, and that the other is printed on it. */
const readingsOf = (scene: Scene, { hues: [one, two], role }: Half): readonly Reading[] => {
  if (one === undefined) return []
  if (two === undefined) return role === null ? [] : ofOne(scene, role, one)
  const pairs: readonly Pair[] = [
    { cloth: one, ink: two },
    { cloth: two, ink: one },
  ]
  return (role === null ? roles : [role]).flatMap((set) =>
    pairs
      .filter((pair) => isPair(scene, { set, sure: role !== null }, pair))
      .map(({ cloth, ink }): Reading => ({ set, cloth: cloth.id, ink: ink.id })),
  )
}

/** "White for home": a colour right before the set that it is for. */
const isForSet = ({ tokens, terms }: Scene, role: Said): boolean =>
  huesIn(terms).some(({ to }) => (to === role.from - 1 || to === role.from) && isWord(tokens[to], ...listed.things.ofRole))

/** Cloth alone is read here only where each set stands behind its colour, and nothing is counted. */
const isPlainCloth = (scene: Scene): boolean =>
  rolesIn(scene.terms).every((role) => isForSet(scene, role)) &&
  !huesIn(scene.terms).some(({ from }) => isNumber(scene.tokens[from - 1]))

const contentsMeant = ({ terms, draft }: Scene): readonly ContentKind[] => {
  const said = contentsIn(terms).map(({ id }) => id)
  const known = Object.values(draft.marks).flatMap(({ content, wanted }) => (wanted === false ? [] : [content]))
  const meant = [...new Set(said.length > 0 ? said : known)]
  return meant.length > 0 ? meant : ['number']
}

const inkPatches = (scene: Scene, { set, ink }: Reading): readonly Patch[] =>
  ink === null
    ? []
    : contentsMeant(scene).flatMap((content): readonly Patch[] => {
        const marks = Object.entries(scene.draft.marks).filter(([, mark]) => mark.content === content && mark.wanted !== false)
        const own = marks.filter(([id]) => scene.draft.styles[`${id}@${set}`]?.colour !== undefined)
        return [
          ...(marks.length > 0 ? [] : [{ path: ['marks', content, 'content'], value: content }]),
          ...marks.flatMap(([id, { style }]) =>
            style?.colour === undefined ? [] : [{ path: ['marks', id, 'style', 'colour'], value: null }],
          ),
          ...own.map(([id]) => ({ path: ['styles', `${id}@${set}`, 'colour'], value: ink })),
          { path: ['styles', `${content}@${set}`, 'colour'], value: ink },
        ]
      })

const clothPatches = ({ draft }: Scene, { set, cloth }: Reading): readonly Patch[] =>
  clothOf(draft, set) === cloth
    ? []
    : [
        { path: ['garments', set, 'kind'], value: 'jersey' },
        { path: ['garments', set, 'colour'], value: cloth },
      ]

/** "White on purple and purple on white" says the same of both sets whichever colour is taken for the cloth. */
const isSame = (pair: readonly Reading[], other: readonly Reading[]): boolean =>
  pair.every(({ set, cloth, ink }) => other.some((one) => one.set === set && one.cloth === cloth && one.ink === ink))

/** The one way to take both halves, as of the two sets; null where there is none or there are several. */
const readingIn = (scene: Scene): readonly [Reading, Reading] | null => {
  const halves = halvesOf(scene.terms)
  if (halves === null || scene.terms.some(({ meaning }) => otherMakes.includes(meaning.kind))) return null
  const [first, second] = halves.map((half) => readingsOf(scene, half))
  const pairs = (first ?? []).flatMap((one) =>
    (second ?? []).flatMap((two): readonly (readonly [Reading, Reading])[] => (one.set === two.set ? [] : [[one, two]])),
  )
  const [only, ...others] = pairs
  if (only === undefined || others.some((pair) => !isSame(pair, only))) return null
  return only[0].ink === null && !isPlainCloth(scene) ? null : only
}

const within = (scene: Scene, { from, to }: Stretch): Scene => ({
  ...scene,
  tokens: scene.tokens.slice(from, to),
  terms: scene.terms
    .filter((term) => term.from >= from && term.to <= to)
    .map((term) => ({ ...term, from: term.from - from, to: term.to - from })),
})

/**
 * "Al blanco le van los números morados y al morado los números en blanco", "white with purple numbers for home and purple with white
 * numbers for away": what is printed on each of two sets, told by home and away or by the colours of their cloth. A sentence alone, else
 * the whole of a message that names four colours.
 */
export const readSetColours = (scene: Scene): SetColours => {
  const stretches = [...sentencesOf(scene.tokens), { from: 0, to: scene.tokens.length }]
  for (const stretch of stretches) {
    const own = within(scene, stretch)
    const pair = readingIn(own)
    if (pair === null) continue
    const places = [...huesIn(own.terms), ...rolesIn(own.terms)]
    return {
      patches: [
        ...(scene.draft.garments['jersey'] === undefined || scene.draft.garments['home'] !== undefined
          ? []
          : [{ path: ['garments', 'jersey'], value: null }]),
        ...pair.flatMap((reading) => [...clothPatches(scene, reading), ...inkPatches(own, reading)]),
      ],
      taken: new Set(
        places.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, step) => stretch.from + from + step)),
      ),
    }
  }
  return nowhere
}
