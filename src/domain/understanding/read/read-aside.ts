import type { Context } from '../document.ts'
import type { Draft } from '../draft.ts'
import { readApart } from './players/apart.ts'
import { readLastNames } from './players/last-names.ts'
import { readOfSome } from './players/of-some.ts'
import { readRowMarks } from './players/row-marks.ts'
import { type Lexicon, termsOf } from './text/lexicon.ts'
import { tokensOf } from './text/tokens.ts'
import { readArtwork } from './things/artwork.ts'
import { readFaces } from './things/faces.ts'
import { readRulebook } from './whole/rulebooks.ts'

type Before = {
  readonly draft: Draft
  readonly withRows: Draft
  readonly lexicon: Lexicon
  readonly context: Pick<Context, 'shop'>
}

const sportIn = (text: string, lexicon: Lexicon): string | undefined =>
  termsOf(lexicon, tokensOf(text)).flatMap(({ meaning }) => (meaning.kind === 'sport' ? [meaning.id] : []))[0]

/** What is set aside before sentences are read: a rule book, drawings, faces, what is of some players or of a piece alone, what some wear. */
export const readAside = (text: string, { draft, withRows, lexicon, context: { shop } }: Before) => {
  const book = readRulebook(text, sportIn(text, lexicon) ?? draft.sport, shop.rulebooks)
  const artwork = readArtwork(book.rest, draft, lexicon)
  const faces = readFaces(artwork.rest, shop)
  const apart = readApart(faces.rest, withRows, lexicon)
  const marks = readRowMarks({ text: apart.rest, draft: withRows, lexicon })
  const some = readOfSome(marks.rest, { draft: withRows, lexicon })
  const parts = [book, artwork, faces, some, marks].flatMap(({ patches }) => patches)
  return { book, artwork, faces, apart, marks, some, patches: [...parts, ...readLastNames(text, withRows)] }
}
