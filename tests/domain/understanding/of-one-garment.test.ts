import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const english = [
  'home jerseys white, away jerseys navy, red names and numbers on the back of both',
  '9 Yoder S\n7 Ruiz M\n12 Beto L',
]
const spanish = ['jerseys blancos de local y azul marino de visita, números rojos atrás', '9 Yáñez CH\n7 Ruiz M\n12 Beto G']

/** Lines as "away 9 Yoder M", those only that are not as they were. */
const changed = (language: 'en' | 'es', words: string) => {
  const first = language === 'en' ? english : spanish
  const lines = (says: readonly string[]) =>
    play({ id: 'one', now: '2026-11-20T10:00', language, says, facts: [] }, shop).composed.order.roster.map(
      ({ garment, number, name, size }) => `${garment} ${number} ${name} ${size}`,
    )
  const before = lines(first)
  const after = lines([...first, words])
  expect(after).toHaveLength(before.length)
  return after.filter((line) => !before.includes(line))
}

test.each([
  ['Yoders away is M, home stays S', ['away 9 Yoder M']],
  ["Yoder's away should be a M, home stays S", ['away 9 Yoder M']],
  ["Yoder's away jersey in M please", ['away 9 Yoder M']],
  ['9 wants the away in M and the home in S', ['away 9 Yoder M']],
  ['home S away M for Yoder', ['away 9 Yoder M']],
  ['Yoder M on the away only', ['away 9 Yoder M']],
  ['just the away one for Yoder is M', ['away 9 Yoder M']],
  ["make Yoder's home M", ['home 9 Yoder M']],
  ["Beto's home is L, away is XL", ['away 12 Beto XL']],
  ['number 12 home L away XL', ['away 12 Beto XL']],
  ["on the away jersey Ruiz's name should be Ruiz-Gomez", ['away 7 Ruiz-Gomez M']],
  ['Ruiz wears 8 on the away', ['away 8 Ruiz M']],
  ['Yoder S home / M away', ['away 9 Yoder M']],
  ['all away jerseys one size up', ['away 9 Yoder M', 'away 7 Ruiz L', 'away 12 Beto XL']],
  ['Yoder is M in both', ['home 9 Yoder M', 'away 9 Yoder M']],
  ['Yoder should be M', ['home 9 Yoder M', 'away 9 Yoder M']],
])('what is told of one piece changes no other: %s', (words, lines) => {
  expect(changed('en', words)).toEqual(lines)
})

test.each([
  ['la de visita de Yáñez en M, la de local se queda CH', ['away 9 Yáñez M']],
  ['Yáñez de local CH y de visita M', ['away 9 Yáñez M']],
  ['el 12 local G visita XG', ['away 12 Beto XL']],
  ['a Yáñez solo la de visita en M', ['away 9 Yáñez M']],
  ['Yáñez M en las dos', ['home 9 Yáñez M', 'away 9 Yáñez M']],
])('lo que se dice de una prenda no cambia la otra: %s', (words, lines) => {
  expect(changed('es', words)).toEqual(lines)
})

test('a piece that was told apart is told of again, and the other stays', () => {
  const says = [...english, 'Yoders away is M, home stays S', "make Yoder's away an L"]
  const { roster } = play({ id: 'one', now: '2026-11-20T10:00', language: 'en', says, facts: [] }, shop).composed.order
  expect(roster.filter(({ name }) => name === 'Yoder').map(({ garment, size }) => `${garment} ${size}`)).toEqual([
    'home S',
    'away L',
  ])
})

test('how the pieces are made is told of nobody', () => {
  expect(changed('en', 'the away jerseys should be black')).toEqual([])
})
