import type { Context } from '../document.ts'
import type { Draft } from '../draft.ts'
import type { Understood } from '../understood.ts'
import { readApart } from './players/apart.ts'
import { readClothOfSome } from './players/cloth-of-some.ts'
import { readLastNames } from './players/last-names.ts'
import { readLayersOfSome } from './players/layers-of-some.ts'
import { readOfSome } from './players/of-some.ts'
import { readRowMarks } from './players/row-marks.ts'
import { type Lexicon, termsOf } from './text/lexicon.ts'
import { tokensOf } from './text/tokens.ts'
import { readArtwork } from './things/artwork.ts'
import { readFaces } from './things/faces.ts'
import { type LayersOff, readLayersOff } from './things/layers-off.ts'
import { readPlainVinyl } from './things/plain-vinyl.ts'
import { readSideAlone } from './things/side-alone.ts'
import { readWordsOfSome } from './things/words-of-some.ts'
import { readRulebook } from './whole/rulebooks.ts'

type Before = {
  readonly draft: Draft
  readonly withRows: Draft
  readonly lexicon: Lexicon
  readonly context: Pick<Context, 'shop'>
}

const sportIn = (text: string, lexicon: Lexicon): string | undefined =>
  termsOf(lexicon, tokensOf(text)).flatMap(({ meaning }) => (meaning.kind === 'sport' ? [meaning.id] : []))[0]

/** `told`: what of it changes nothing and is said back. */
type Wishes = Pick<LayersOff, 'patches' | 'rest'> & { readonly told: Pick<Understood, 'unheard' | 'alike' | 'which'> }

/** What is of some players alone, and the layers that are taken off. */
const readWishes = (text: string, draft: Draft, { lexicon, context: { shop } }: Before): Wishes => {
  const alike = readLayersOfSome(text, { draft, lexicon })
  const cloth = readClothOfSome(alike.rest, { draft, lexicon })
  const some = readOfSome(cloth.rest, { draft, lexicon })
  const stone = shop.profile.usual.stoneColour
  const layers = readLayersOff(some.rest, { draft, lexicon, stone })
  const plain = readPlainVinyl(layers.rest, { draft, lexicon, stone })
  return {
    patches: [...cloth.patches, ...some.patches, ...layers.patches, ...plain],
    told: { unheard: [...some.unheard, ...layers.unheard], alike: [...alike.alike, ...layers.alike], which: cloth.which },
    rest: layers.rest,
  }
}

/** What is set aside before sentences are read: a rule book, drawings, faces, what is of some players or of a piece alone, what some wear. */
export const readAside = (text: string, before: Before) => {
  const { draft, withRows, lexicon } = before
  const { shop } = before.context
  const book = readRulebook(text, sportIn(text, lexicon) ?? draft.sport, shop.rulebooks)
  const artwork = readArtwork(book.rest, draft, lexicon)
  const faces = readFaces(artwork.rest, shop)
  const side = readSideAlone(faces.rest, { draft: withRows, lexicon })
  const apart = readApart(side.rest, withRows, lexicon)
  const marks = readRowMarks({ text: apart.rest, draft: withRows, lexicon })
  const words = readWordsOfSome(marks.rest, { draft: withRows, lexicon })
  const some = readWishes(words.rest, withRows, before)
  const parts = [book, artwork, faces, side, some, words, marks].flatMap(({ patches }) => patches)
  return { book, artwork, faces, apart, marks, some, patches: [...parts, ...readLastNames(text, withRows)] }
}
