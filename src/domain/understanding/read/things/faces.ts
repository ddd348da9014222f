import type { FaceListing } from '../../../face/listing.ts'
import type { Shop } from '../../../shop/shop.ts'
import type { Open, Reading } from '../../conversation.ts'
import type { Patch } from '../../patch.ts'
import { faceWords } from '../../words/languages.ts'
import { blanked, fold, type Token, tokensOf } from '../text/tokens.ts'

/** The faces asked for by name, what has to be asked about them, and the text without those words. */
export type FacesFound = { readonly patches: readonly Patch[]; readonly open: readonly Open[]; readonly rest: string }

type Content = 'number' | 'name'

/** Words of a message that name a face; `face` is null where the shop has none of that name. */
type Named = { readonly from: number; readonly to: number; readonly face: FaceListing | null; readonly of: readonly Content[] }

const isStop = ({ key, kind }: Token): boolean => kind === 'break' || ['.', ';'].includes(key)

const contentOf = ({ key }: Token): Content | null => {
  if (faceWords.numbers.has(key)) return 'number'
  return faceWords.names.has(key) ? 'name' : null
}

/** What is lettered so: the content nearest before in the sentence, and the one it is joined to ("numbers and names in …"). */
const contentsBefore = (tokens: readonly Token[], at: number): readonly Content[] => {
  const found: Content[] = []
  for (const token of tokens.slice(0, at).reverse()) {
    if (isStop(token) || (found.length > 0 && token.key === ',')) break
    const content = contentOf(token)
    if (content === null && found.length > 0 && !faceWords.joins.has(token.key)) break
    if (content !== null && !found.includes(content)) found.push(content)
  }
  return found
}

/** "font graduate", "Graduate font"; "in anton" only after numbers or names in the same sentence. */
const isLed = (tokens: readonly Token[], { from, to, of }: Named): boolean => {
  const [before, next] = [tokens[from - 1]?.key ?? '', tokens[to]?.key ?? '']
  return faceWords.lettering.has(before) || faceWords.lettering.has(next) || (faceWords.links.has(before) && of.length > 0)
}

const keysOf = (phrase: string): readonly string[] => tokensOf(fold(phrase)).map(({ key }) => key)

/** Where a face of the shop is named, by its id or its name. */
const knownFaces = (tokens: readonly Token[], shop: Shop): readonly Named[] =>
  shop.faces.flatMap((face) => {
    const phrases = [face.name, face.id.replaceAll('-', ' ')].map(keysOf)
    return [...tokens.keys()].flatMap((from) => {
      const phrase = phrases.find((keys) => keys.every((key, index) => tokens[from + index]?.key === key))
      if (phrase === undefined) return []
      const named = { from, to: from + phrase.length, face, of: contentsBefore(tokens, from) }
      return isLed(tokens, named) ? [named] : []
    })
  })

const isTitled = (token: Token | undefined): boolean =>
  token?.kind === 'word' && /^\p{Lu}/u.test(token.text) && !faceWords.plain.has(token.key)

/** The capitals that follow the word for a face, else those before it, as a range of tokens. */
const titleBeside = (tokens: readonly Token[], at: number): { readonly from: number; readonly to: number } => {
  const from = faceWords.called.has(tokens[at + 1]?.key ?? '') ? at + 2 : at + 1
  const after = tokens.findIndex((token, index) => index >= from && !isTitled(token))
  const to = after < 0 ? tokens.length : after
  if (to > from) return { from, to }
  const plain = tokens.slice(1, at).findLastIndex((token) => !isTitled(token))
  return { from: plain + 2, to: at }
}

/** "font Something", "the Something font": a name in capitals beside the word for a face that is no face of the shop. */
const strangeFaces = (tokens: readonly Token[], known: readonly Named[]): readonly Named[] =>
  [...tokens.keys()]
    .filter((at) => faceWords.typeface.has(tokens[at]?.key ?? ''))
    .filter((at) => !known.some(({ from, to }) => at >= from - 1 && at <= to))
    .map((at) => ({ at, ...titleBeside(tokens, at) }))
    .filter(({ from, to }) => from < to)
    .map(({ at, from, to }) => ({ from, to, face: null, of: contentsBefore(tokens, Math.min(from, at)) }))

const readingOf = (face: FaceListing, of: readonly Content[]): Reading => ({
  value: face.id,
  kind: 'face',
  patches: of.map((content) => ({ path: ['styles', content, 'face'], value: face.id })),
})

/** Scripts are drawn for names: a number in one is asked about, and so is a face the shop does not have. */
const askAbout = (text: string, of: readonly Content[], shop: Shop): Open => {
  const fitting = shop.faces.filter((face) => face.kind === 'numeral' || !of.includes('number'))
  return {
    about: 'face',
    path: `/styles/${of[0] ?? 'number'}/face`,
    quote: text,
    readings: fitting.map((face) => readingOf(face, of)),
  }
}

const wordsAt = (
  text: string,
  tokens: readonly Token[],
  { from, to }: Named,
): readonly [start: number, end: number, words: string] => {
  const [start, end] = [tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0]
  return [start, end, text.slice(start, end)]
}

/** Faces of the shop by id or name, for numbers, for names or for both; nothing is chosen for a name that is not the shop's. */
export const readFaces = (text: string, shop: Shop): FacesFound => {
  const tokens = tokensOf(text)
  const known = knownFaces(tokens, shop)
  const patches: Patch[] = []
  const open: Open[] = []
  let rest = text
  for (const named of [...known, ...strangeFaces(tokens, known)]) {
    const { face, of } = named
    const [start, end, words] = wordsAt(text, tokens, named)
    const lettered: readonly Content[] = of.length > 0 ? of : [face?.kind === 'script' ? 'name' : 'number']
    const fits = face !== null && (face.kind === 'numeral' || !lettered.includes('number'))
    if (fits) patches.push(...readingOf(face, lettered).patches)
    if (!fits) open.push(askAbout(words, lettered, shop))
    rest = blanked(rest, start, end)
  }
  return { patches, open: open.slice(0, 1), rest }
}
