import type { Draft, Mark } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { without } from '../text/set-aside.ts'
import { blanked, isEnd, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { placesAt } from './groups.ts'
import { type LayerNamed, type LayersNamed, layersNamed } from './layers-named.ts'
import { isAround, type Layer, offOf, wears, wornIn } from './worn-layers.ts'

/**
 * What a message takes off of what is put on; `unheard` names what is nowhere, `alike` what is asked for somebody alone. `rest` is the
 * text without these words.
 */
export type LayersOff = {
  readonly patches: readonly Patch[]
  readonly unheard: readonly string[]
  readonly alike: readonly string[]
  readonly rest: string
}

/** `stone`: the colour of stones of which none is said. */
type Scene = { readonly draft: Draft; readonly lexicon: Lexicon; readonly stone: string }

const isAt = ({ content, place }: Mark, { contents, spots }: LayersNamed): boolean => {
  const isOf = contents.length === 0 || contents.some((one) => one === content)
  return isOf && (spots.length === 0 || (place !== undefined && spots.some((spot) => placesAt(content, spot).includes(place))))
}

/** What words for a layer may mean, the first that is there: "the crystal outline" is of stones where no vinyl outline has that colour. */
const meant = ({ kinds, hues }: LayerNamed, into: string | null): readonly Layer[] => {
  if (kinds.includes('stones')) return [{ kind: 'stones', hues, into }]
  if (kinds.includes('outline'))
    return [
      { kind: 'outline', hues, into },
      { kind: 'stones', hues, into },
    ]
  return kinds.map((kind) => ({ kind, hues, into }))
}

const offNamed = (
  named: LayersNamed,
  layer: LayerNamed,
  { draft, stone, into = null }: Scene & { readonly into?: string | null },
): readonly Patch[] => {
  const all = wornIn(draft)
  const some = all.filter(({ mark }) => isAt(mark, named))
  const of = named.spots.length > 0 ? 'place' : named.contents.length > 0 ? 'content' : 'all'
  for (const one of meant(layer, into)) {
    const fits = some.filter(
      (worn) => wears(worn, one, stone) && (one.kind !== 'stones' || layer.kinds[0] !== 'outline' || isAround(worn)),
    )
    if (fits.length > 0) return fits.flatMap((worn) => offOf(worn, one, of))
  }
  return []
}

const isSpecial = ({ layers, contents, spots }: LayersNamed): boolean =>
  contents.length + spots.length > 0 || layers.some(({ hues }) => hues.length > 0)

const headed: readonly string[] = ['content', 'garment', 'outline', 'stones', 'shadow', 'word', 'role', 'part']

/** What says how something is made and needs a thing that is made so. */
const makes: readonly string[] = ['colour', 'stone-size', 'class', 'rows', 'style', 'contours', 'length']

const splitAt = (tokens: readonly Token[]): readonly (readonly Token[])[] => {
  const end = tokens.findIndex((token) => isEnd(token) || token.text === ',')
  return end < 0 ? [tokens] : [tokens.slice(0, end), ...splitAt(tokens.slice(end + 1))]
}

/** "… , just the glitter", "only the white glitter": of what is there already that alone is left, and nothing comes instead. */
const isLeft = (terms: readonly Term[], { marks, styles }: Draft): boolean => {
  const styled = [...Object.values(styles), ...Object.values(marks).map(({ style }) => style)]
  return (
    ['only', 'class'].every((kind) => terms.some(({ meaning }) => meaning.kind === kind)) &&
    terms.every(({ meaning }) => {
      if (meaning.kind === 'colour') return styled.some((style) => style?.colour === meaning.id)
      return meaning.kind === 'class'
        ? styled.some((style) => style?.class === meaning.id)
        : ['only', 'vinyl'].includes(meaning.kind)
    })
  )
}

/** The clause that says what comes instead of what is taken off, with its colour; null where that is no one colour. */
type Instead = { readonly hue: string | null; readonly from: number; readonly to: number }

/** "Lose the navy outline, make it gold": another colour comes in its stead; another thing is read elsewhere. */
const insteadOf = (tokens: readonly Token[], all: readonly LayersNamed[], { lexicon, draft }: Scene): Instead | null => {
  const spans = all.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, step) => from + step))
  for (const clause of splitAt(without(tokens, new Set(spans)))) {
    const terms = termsOf(lexicon, clause).filter(({ meaning }) => !['in', 'with', 'and', 'count'].includes(meaning.kind))
    const hues = terms.flatMap(({ meaning }) => (meaning.kind === 'colour' ? [meaning] : []))
    const dangling =
      terms.some(({ meaning }) => makes.includes(meaning.kind)) && !terms.some(({ meaning }) => headed.includes(meaning.kind))
    const [first, last, only] = [clause[0], clause.at(-1), hues[0]]
    if (first === undefined || last === undefined || isLeft(terms, draft)) continue
    if (!dangling && !(clause.some((token) => isWord(token, ...listed.leftOff.inStead)) && terms.length > 0)) continue
    const clear = hues.length === 1 && terms.length === 1 && all.length === 1 && only?.readings === undefined
    return { hue: clear ? (only?.id ?? null) : null, from: first.start, to: last.end }
  }
  return null
}

type Told = 'changes' | 'kept' | 'unheard' | 'alike'

/** What one stretch of words with its changes means; null where it is no matter of layers that are there. */
const told = (named: LayersNamed, patches: readonly Patch[]): Told | null => {
  if (named.keeps) return patches.length > 0 || named.layers.length === 0 ? 'kept' : null
  if (named.ofOne) return 'alike'
  if (patches.length > 0) return 'changes'
  return named.plainly || !isSpecial(named) ? null : 'unheard'
}

const recoloured = (
  text: string,
  named: LayersNamed,
  { scene, instead }: { readonly scene: Scene; readonly instead: Instead },
): LayersOff => {
  const tokens = tokensOf(text)
  const [first, last] = [tokens[named.from], tokens[named.to - 1]]
  const patches = named.keeps ? [] : named.layers.flatMap((layer) => offNamed(named, layer, { ...scene, into: instead.hue }))
  if (instead.hue === null || patches.length === 0 || first === undefined || last === undefined)
    return { patches: [], unheard: [], alike: [], rest: text }
  return { patches, unheard: [], alike: [], rest: blanked(blanked(text, first.start, last.end), instead.from, instead.to) }
}

/**
 * Layers that are taken off by name, colour, kind or place: "remove the crystal outline", "take the stones off the numbers", "quita el
 * contorno azul". What is named and is nowhere is said back, what is to stay is left alone; a colour in its stead is another matter.
 */
export const readLayersOff = (text: string, scene: Scene): LayersOff => {
  const none: LayersOff = { patches: [], unheard: [], alike: [], rest: text }
  if (text.length > 600 || wornIn(scene.draft).length === 0) return none
  const tokens = tokensOf(text)
  const all = layersNamed(tokens, scene.lexicon)
  const [only] = all
  const instead = insteadOf(tokens, all, scene)
  if (only === undefined) return none
  if (instead !== null) return recoloured(text, only, { scene, instead })
  return all.reduce<LayersOff>((found, named) => {
    const draft = preview(scene.draft, found.patches)
    const patches = named.layers.flatMap((layer) => offNamed(named, layer, { ...scene, draft }))
    const means = told(named, patches)
    const [first, last] = [tokens[named.from], tokens[named.to - 1]]
    if (means === null || first === undefined || last === undefined) return found
    const words = text.slice(first.start, last.end)
    return {
      patches: means === 'changes' ? [...found.patches, ...patches] : found.patches,
      unheard: means === 'unheard' ? [...found.unheard, words] : found.unheard,
      alike: means === 'alike' ? [...found.alike, words] : found.alike,
      rest: blanked(found.rest, first.start, last.end),
    }
  }, none)
}
