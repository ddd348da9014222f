import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: '2 pink hoodies with their names in stones on the back',
  es: '2 sudaderas rosas con el nombre en piedras atrás',
  two: 'black tees, DANCE on the front in silver stones, gold number on the back with stones',
}

const layersOf = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'plain', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.decorations.map(({ place, layers = [] }) =>
    [place, ...layers.map((layer) => (layer.kind === 'stones' ? 'stones' : `${layer.class} ${layer.colour}`))].join(' '),
  )
}

test.each([
  ['en', 'fine just plain white vinyl'],
  ['en', 'make it plain white vinyl instead'],
  ['en', 'ok then white vinyl instead please'],
  ['en', 'can you do regular vinyl in white?'],
  ['en', 'only vinyl then, white'],
  ['es', 'mejor puro vinil blanco'],
  ['es', 'bueno, entonces vinil normal blanco'],
  ['es', 'mejor vinil blanco nada más'],
  ['es', 'en su lugar vinil blanco'],
] as const)('(%s) %j: who asks for plain vinyl has no stones any more', (language, said) => {
  expect(layersOf(language, orders[language], said)).toEqual(['name standard white'])
})

test.each([
  ['en', 'plain gold vinyl on the back only, no stones there', ['full-front stones', 'back-number standard gold']],
  ['es', 'atrás puro vinil dorado', ['full-front stones', 'back-number standard gold']],
] as const)('(%s) %j is of one place', (language, said, layers) => {
  expect(layersOf(language, orders.two, said)).toEqual(layers)
})

test.each([
  ['en', 'white vinyl under the stones'],
  ['en', 'not plain vinyl, stones please'],
  ['en', 'is plain vinyl cheaper?'],
  ['es', 'con vinil blanco abajo de las piedras'],
  ['es', '¿el puro vinil es más barato?'],
] as const)('(%s) %j keeps the stones', (language, said) => {
  expect(layersOf(language, orders[language], said)).toEqual([expect.stringContaining('stones')])
})
