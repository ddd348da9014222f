import type { Shop } from '../../shop/shop.ts'
import type { Draft } from '../draft.ts'
import { readApart } from './apart.ts'
import { readArtwork } from './artwork.ts'
import { readFaces } from './faces.ts'
import { readLastNames } from './last-names.ts'
import type { Lexicon } from './lexicon.ts'
import { readOfSome } from './of-some.ts'
import { readRowMarks } from './row-marks.ts'

type Before = { readonly draft: Draft; readonly withRows: Draft; readonly lexicon: Lexicon; readonly shop: Shop }

/** What is set aside before sentences are read: drawings, faces, what is of some players or of a piece alone, what some wear. */
export const readAside = (text: string, { draft, withRows, lexicon, shop }: Before) => {
  const artwork = readArtwork(text, draft, lexicon)
  const faces = readFaces(artwork.rest, shop)
  const apart = readApart(faces.rest, withRows, lexicon)
  const marks = readRowMarks({ text: apart.rest, draft: withRows, lexicon })
  const some = readOfSome(marks.rest, { draft: withRows, lexicon })
  return { artwork, faces, apart, marks, some, names: readLastNames(text, withRows) }
}
