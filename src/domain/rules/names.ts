import { way } from '../press/way.ts'
import { bookFacts } from './book-facts.ts'
import { bindingBook, placesOf, type Rule } from './facts.ts'

/** How far the name stays from the number on its side, where a body gives it. */
export const nameFromNumber: Rule = (facts) => {
  const book = bindingBook(facts)
  const least = book?.name?.fromNumberLeastMicrometres ?? null
  if (book === null || least === null) return []
  const places = placesOf(facts).map(({ garment, place }) => ({ garment: garment.id, place }))
  const numbers = places.filter(({ place }) => place.place === 'back-number')
  return places
    .filter(({ place }) => place.place === 'name')
    .flatMap(({ garment, place }) =>
      numbers
        .filter((number) => number.garment === garment)
        .flatMap((number): ReturnType<Rule> => {
          const [name, body] = [place, number.place]
          if (name.topMicrometres === null || body.topMicrometres === null) return []
          const above = name.topMicrometres <= body.topMicrometres
          const [upper, lower] = above ? [name, body] : [body, name]
          const gap = (lower.topMicrometres ?? 0) - (upper.topMicrometres ?? 0) - (upper.heightMicrometres ?? 0)
          if (gap >= least) return []
          const found = {
            ...bookFacts(book),
            place: name.place,
            hasMicrometres: gap,
            leastMicrometres: least,
            ways: [way('another-place'), way('ask-league')],
          }
          return [{ code: 'name-near-number', at: name.at, severity: 'caution', facts: found }]
        }),
    )
}
