import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import type { Term } from '../text/lexicon.ts'
import { isEnd, isWord, type Token } from '../text/tokens.ts'
import { type Recolour, usesOf } from './recolour.ts'

const none: Recolour = { patches: [], taken: new Set() }

const painted = ({ garments, styles, marks }: Draft) => ({ garments, styles, marks })

type Hue = { readonly ids: readonly string[]; readonly from: number; readonly to: number }

const huesIn = (terms: readonly Term[]): readonly Hue[] =>
  terms.flatMap(({ meaning, from, to }) =>
    meaning.kind === 'colour' ? [{ ids: meaning.readings ?? [meaning.id], from, to }] : [],
  )

const usedAs = ({ ids }: Hue, draft: Draft) => ids.flatMap((one) => usesOf(painted(draft), one))

/** Terms beside which a colour is told of what they name: read where things are read. */
const things: readonly string[] = ['garment', 'content', 'place', 'role', 'outline', 'shadow', 'stones', 'part', 'count']

const articles: readonly string[] = [...listed.things.theThing, ...listed.things.stoneJoins]

/** "… on the grey", "sobre gris", "en lo gris": the colour under the one that is spoken of. */
const isGround = (tokens: readonly Token[], { from }: Hue): boolean =>
  [1, 2].some(
    (back) => isWord(tokens[from - back], ...listed.things.ground) && (back === 1 || isWord(tokens[from - 1], ...articles)),
  )

const isAlone = (tokens: readonly Token[], { from, to }: Hue): boolean =>
  (tokens[from - 1]?.kind !== 'word' || tokens[from - 1]?.text.endsWith('.') === true) &&
  (tokens[to] === undefined || tokens[to]?.kind !== 'word' || isWord(tokens[to], ...listed.things.politely))

/** "Mejor blanco", "blanco mejor", "que sea blanco", ". Blanco por favor": words that put a colour in another's place. */
const isBetter = (tokens: readonly Token[], old: Hue, fresh: Hue): boolean => {
  const ahead = tokens.slice(old.to, fresh.from)
  const near = [...ahead.slice(-3), ...tokens.slice(fresh.to, fresh.to + 3)]
  return near.some((token) => isWord(token, ...listed.things.better)) || isAlone(tokens, fresh)
}

const isDoubted = (tokens: readonly Token[], old: Hue, fresh: Hue): boolean => {
  const start = tokens.slice(0, old.from).findLastIndex(isEnd) + 1
  const said = [...tokens.slice(start, old.from), ...tokens.slice(old.to, fresh.from)]
  return (
    said.some((token) => isWord(token, ...listed.things.doubted)) || isWord(tokens[fresh.from - 1], ...listed.things.doubting)
  )
}

/**
 * "Amarillo no se va a ver, mejor blanco", "yellow won't show. White instead": a colour that is there is doubted and another said to be
 * better; wherever the first stands it becomes the second. Where it is the cloth's and the print's at once nothing is decided.
 */
export const readDoubtedColour = (tokens: readonly Token[], terms: readonly Term[], draft: Draft): Recolour => {
  if (terms.some(({ meaning }) => things.includes(meaning.kind)) || tokens.some(({ text }) => text === '?')) return none
  const [old, fresh, ...more] = huesIn(terms).filter((hue) => usedAs(hue, draft).length === 0 || !isGround(tokens, hue))
  const [id, ...other] = fresh?.ids ?? []
  if (old === undefined || fresh === undefined || id === undefined || more.length + other.length > 0) return none
  const used = usedAs(old, draft)
  const roots = new Set(used.map(([root]) => (root === 'garments' ? root : 'print')))
  if (roots.size !== 1 || old.ids.includes(id) || !isDoubted(tokens, old, fresh) || !isBetter(tokens, old, fresh)) return none
  const patches = used.map((path): Patch => ({ path, value: id }))
  return { patches, taken: new Set(Array.from({ length: fresh.to - old.from }, (_, step) => old.from + step)) }
}
