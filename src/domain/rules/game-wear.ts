import type { Decoration } from '../order/order.ts'
import { way } from '../press/way.ts'
import { bookFacts, bookSeverity } from './book-facts.ts'
import { bindingBook, decorationsOf, placesOf, type Rule } from './facts.ts'

/** Stones on a jersey worn in a game: ask the league in writing. */
export const stonesInGames: Rule = (facts) => {
  if (facts.order.use !== 'game') return []
  const stoned = decorationsOf(facts.order).filter(({ decoration }) => decoration.layers.some((layer) => layer.kind === 'stones'))
  const [first] = stoned
  if (first === undefined) return []
  const decorations = stoned.map(({ decoration }) => decoration.id)
  const found = { decorations, source: 'common practice', ways: [way('ask-league'), way('no-stones')] }
  return [{ code: 'stones-on-game-wear', at: first.at, severity: 'caution', facts: found }]
}

/** Reflective material where a body bans it. */
export const reflectiveBans: Rule = (facts) => {
  const book = bindingBook(facts)
  const ornaments = book?.ornaments ?? null
  if (book === null || ornaments === null || ornaments.bans !== 'reflective') return []
  return placesOf(facts).flatMap(({ place }) =>
    place.layers
      .filter(({ material }) => material.kind === 'vinyl' && material.class === 'reflective')
      .map((layer) => ({
        code: 'reflective-banned',
        at: layer.at,
        severity: bookSeverity(book, 'ornaments'),
        facts: {
          ...bookFacts(book),
          decoration: place.decoration,
          material: layer.material.id,
          ways: [way('another-class'), way('ask-league')],
        },
      })),
  )
}

const isOrnament = (decoration: Decoration, bans: string): boolean =>
  decoration.layers.some(
    (layer) =>
      layer.kind === 'stones' || (layer.class === 'reflective' && bans === 'reflective-ornaments') || layer.class === 'foil',
  )

/** A clause on ornaments that stones, foil or reflective vinyl may fall under. */
export const ornamentClauses: Rule = (facts) => {
  const book = bindingBook(facts)
  const ornaments = book?.ornaments ?? null
  if (book === null || ornaments === null || ornaments.bans === 'none') return []
  return decorationsOf(facts.order)
    .filter(({ decoration }) => isOrnament(decoration, ornaments.bans))
    .map(({ decoration, at }) => ({
      code: 'ornaments-clause',
      at,
      severity: 'caution',
      facts: { ...bookFacts(book), decoration: decoration.id, text: ornaments.text, ways: [way('ask-league'), way('no-stones')] },
    }))
}

const whyNotSolid = (decoration: Decoration): string | null => {
  const [body] = decoration.layers.filter((layer) => layer.kind === 'vinyl' && layer.shape === 'face').slice(-1)
  if (body?.kind === 'vinyl' && ['glitter', 'foil', 'printed', 'reflective'].includes(body.class)) return body.class
  const filled = decoration.layers.some(
    (layer) => layer.kind === 'stones' && (layer.layout.style !== 'outline' || body === undefined),
  )
  return filled ? 'stone-filled' : null
}

/** The body of the number one solid colour: glitter, foil, print and stone-filled bodies are asked about. */
export const solidBodies: Rule = (facts) => {
  const book = bindingBook(facts)
  if (book === null || !book.solidBody) return []
  return decorationsOf(facts.order)
    .filter(({ decoration }) => decoration.content.kind === 'number')
    .flatMap(({ decoration, at }): ReturnType<Rule> => {
      const because = whyNotSolid(decoration)
      if (because === null) return []
      const found = { ...bookFacts(book), decoration: decoration.id, because, ways: [way('ask-league'), way('another-class')] }
      return [{ code: 'body-not-solid', at, severity: 'caution', facts: found }]
    })
}

/** Places that must carry the number, on garments that get numbers at all. */
export const numberPlaces: Rule = (facts) => {
  const book = bindingBook(facts)
  if (book === null) return []
  const numbers = decorationsOf(facts.order).filter(({ decoration }) => decoration.content.kind === 'number')
  return facts.job.garments.flatMap((garment) => {
    const here = numbers
      .filter(({ decoration }) => garment.places.some((place) => place.decoration === decoration.id))
      .map(({ decoration }) => decoration.place)
    if (here.length === 0) return []
    return book.number.onPlaces
      .filter((place) => !here.includes(place))
      .map((place) => ({
        code: 'place-missing',
        at: garment.at,
        severity: 'caution',
        facts: { ...bookFacts(book), garment: garment.id, place, ways: [way('another-place', place), way('ask-league')] },
      }))
  })
}

/** From this age on an edition may have been replaced. */
const oldAfterYears = 3

/** Rules change every season: which book was used, and whether its edition is old. */
export const editions: Rule = (facts) => {
  if (facts.order.use !== 'game') return []
  const book = bindingBook(facts)
  const ways = [way('ask-league')]
  if (book === null) {
    return [
      {
        code: 'no-rulebook',
        at: '/rulebook',
        severity: 'note',
        facts: { sport: facts.order.sport, source: 'common practice', ways },
      },
    ]
  }
  const years = Number(facts.today.slice(0, 4)) - book.editionYear
  const ask = { code: 'ask-your-league', at: '/rulebook', severity: 'note', facts: { ...bookFacts(book), ways } } as const
  if (years <= oldAfterYears) return [ask]
  return [ask, { code: 'old-edition', at: '/rulebook', severity: 'caution', facts: { ...bookFacts(book), years, ways } }]
}
