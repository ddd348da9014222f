import { edgesOf } from '../press/edges.ts'
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
          const [ofName, ofBody] = [edgesOf(name), edgesOf(body)]
          if (ofName === null || ofBody === null) return []
          const gap = ofName.top <= ofBody.top ? ofBody.top - ofName.bottom : ofName.top - ofBody.bottom
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
