import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** What stands on which garment: "home back-number white". */
const madeOf = (language: 'en' | 'es', words: string) => {
  const { composed } = play({ id: 'two', now: '2027-03-02T10:00', language, says: [words], facts: [] }, shop)
  return composed.order.decorations
    .flatMap(({ on, content, layers }) =>
      (on ?? []).map((garment) => {
        const vinyl = (layers ?? []).find((layer) => layer.kind === 'vinyl')
        return `${garment} ${content?.kind} ${vinyl?.colour ?? '?'}`
      }),
    )
    .sort()
}

const homeAway = ['away number black', 'home number white']

test.each([
  ['en', 'home red and away white jerseys, white numbers on the back of the home, black on the away', homeAway],
  ['en', 'home red and away white jerseys, white numbers 8 in on the back of the home, black numbers on the away', homeAway],
  ['en', 'red home and white away jerseys. white numbers on the back of the home ones and black on the away ones', homeAway],
  ['en', 'white numbers on the home, black numbers on the away, red home and white away jerseys', homeAway],
  ['es', 'números blancos en el local y negros en el visitante, jerseys local rojo y visitante blanco', homeAway],
  [
    'en',
    'the jersey red, the hoodie black, numbers white on the jersey and gold on the hoodie',
    ['hoodie number gold', 'jersey number white'],
  ],
  ['en', 'jersey red with white numbers and hoodie grey with navy numbers', ['hoodie number navy', 'jersey number white']],
  [
    'es',
    'playera roja con números blancos en la espalda y sudadera gris con el nombre en negro',
    ['hoodie name black', 'tee number white'],
  ],
  ['en', 'jerseys are red w white numbers on back. polos black, nothing on the back of those', ['jersey number white']],
] as const)('%s: each garment has the colour that was said of it: %s', (language, words, made) => {
  expect(madeOf(language, words)).toEqual(made)
})
