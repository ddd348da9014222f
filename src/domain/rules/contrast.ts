import type { Decoration } from '../order/order.ts'
import { way } from '../press/way.ts'
import { bookFacts, bookSeverity } from './book-facts.ts'
import { bindingBook, decorationsOf, type Rule, type RuleFacts } from './facts.ts'

/** The colour of the body: the topmost vinyl that has the face's own shape, else the stones. */
const bodyColour = (decoration: Decoration): string | null => {
  const faces = decoration.layers.filter((layer) => layer.kind === 'vinyl' && layer.shape === 'face')
  return (faces[faces.length - 1] ?? decoration.layers[decoration.layers.length - 1])?.colour ?? null
}

type Pair = {
  readonly garment: string
  readonly jersey: string
  readonly decoration: string
  readonly number: string
  readonly at: string
}

/** Each number's body colour against the cloth it is worn on. */
const pairs = (facts: RuleFacts): readonly Pair[] => {
  if (facts.order.use !== 'game') return []
  return decorationsOf(facts.order)
    .filter(({ decoration }) => decoration.content.kind === 'number')
    .flatMap(({ decoration, at }) =>
      facts.job.garments
        .filter((garment) => garment.places.some((place) => place.decoration === decoration.id))
        .flatMap((garment) => {
          const number = bodyColour(decoration)
          const pair = { garment: garment.id, jersey: garment.cloth.colour, decoration: decoration.id, at: `${at}/layers` }
          return number === null ? [] : [{ ...pair, number }]
        }),
    )
}

/** A number in the jersey's own colour: refused where the book says so, border or not. */
export const ownColour: Rule = (facts) => {
  const book = bindingBook(facts)
  return pairs(facts)
    .filter((pair) => pair.jersey === pair.number)
    .map(({ garment, decoration, number, at }) => {
      const forbidden = book !== null && book.ownColour === 'forbidden'
      const source = book === null ? 'common practice' : bookFacts(book).source
      const ways = [way('other-colour'), way('ask-league')]
      const severity = forbidden ? bookSeverity(book, 'ownColour') : 'caution'
      return { code: 'own-colour-number', at, severity, facts: { garment, decoration, colour: number, source, ways } }
    })
}

/** Pairs of colours that a body names as not contrasting. */
export const failingPairs: Rule = (facts) => {
  const book = bindingBook(facts)
  if (book === null) return []
  return pairs(facts)
    .filter(
      ({ jersey, number }) =>
        jersey !== number && book.failingPairs.some((pair) => pair.includes(jersey) && pair.includes(number)),
    )
    .map(({ garment, decoration, jersey, number, at }) => ({
      code: 'failing-pair',
      at,
      severity: bookSeverity(book, 'failingPairs'),
      facts: { ...bookFacts(book), garment, decoration, jersey, number, ways: [way('other-colour'), way('ask-league')] },
    }))
}

const channel = (byte: number): number => {
  const share = byte / 255
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

const luminance = (hex: string): number => {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => channel(Number.parseInt(hex.slice(at, at + 2), 16)))
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/** Ratio of two colours' relative luminances, 1 to 21 (W3C, WCAG 2.1). */
export const contrastRatio = (a: string, b: string): number => {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y)
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05)
}

/** Large text wants 3 : 1 (W3C, WCAG 2.1, 1.4.3); a number is read from the far side line. */
const leastRatioTimes100 = 300

/** Numbers that are hard to read on their jersey, by the colours as they are on screen. */
export const lowContrast: Rule = (facts) => {
  const hexOf = (id: string): string | undefined => facts.colours.find((colour) => colour.id === id)?.hex
  return pairs(facts).flatMap(({ garment, decoration, jersey, number, at }): ReturnType<Rule> => {
    const [cloth, body] = [hexOf(jersey), hexOf(number)]
    if (cloth === undefined || body === undefined || jersey === number) return []
    const ratioTimes100 = Math.floor(contrastRatio(cloth, body) * 100)
    if (ratioTimes100 >= leastRatioTimes100) return []
    const source = 'W3C, WCAG 2.1, 1.4.3: 3 : 1 for large text'
    const found = { garment, decoration, ratioTimes100, leastTimes100: leastRatioTimes100, source, ways: [way('other-colour')] }
    return [{ code: 'low-contrast', at, severity: 'caution', facts: found }]
  })
}
