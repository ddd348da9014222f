import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const order = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'figure', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const { garments, decorations, roster } = composed.order
  return {
    cloth: garments.map(({ colour }) => colour),
    number: decorations
      .filter(({ content }) => content?.kind === 'number')
      .map(({ place, layers }) => `${place} ${layers?.[0]?.colour}`),
    rows: roster.flatMap(({ number, name }) => (number === undefined && name === undefined ? [] : [`${number} ${name}`])),
  }
}

test.each([
  ['en', 'navy jersey with white number 7 and name Kelly Shaw', ['navy', '7 Kelly Shaw']],
  ['en', 'a navy jersey with a white 7 on the back and the name Ana Ruiz', ['navy', '7 Ana Ruiz']],
  ['en', 'one red jersey with number 12 in white, name Ruiz', ['red', '12 Ruiz']],
  ['en', 'red jersey with a 12 in white on the back, name Ruiz', ['red', '12 Ruiz']],
  ['es', 'un jersey azul marino con el número 7 blanco y el nombre Ana Ruiz', ['navy', '7 Ana Ruiz']],
  ['es', 'un jersey azul marino con un 7 en blanco y nombre Ana Ruiz', ['navy', '7 Ana Ruiz']],
  ['es', 'un jersey rojo con el 12 blanco atrás, nombre Ruiz', ['red', '12 Ruiz']],
] as const)('(%s) %j: the colour before a figure is the number’s', (language, said, [cloth, row]) => {
  expect(order(language, said)).toEqual({ cloth: [cloth], number: ['back-number white'], rows: [row] })
})

test.each([
  ['en', '10 black tees with a red 27 on the back of all of them', 'red'],
  ['en', '10 black tees with a big 27 in red on the back', 'red'],
  ['en', '10 black tees with a red number 27 on the back', 'red'],
  ['es', '10 playeras negras con un 27 rojo en la espalda', 'red'],
  ['es', '10 playeras negras con el número 27 en rojo atrás', 'red'],
] as const)('(%s) %j: on several the cloth stays what it is, and which numbers is asked', (language, said, number) => {
  expect(order(language, said)).toEqual({ cloth: ['black'], number: [`back-number ${number}`], rows: [] })
})

test.each([
  ['en', '7 red jerseys, white number on the back', 'red'],
  ['en', '10 black tees, white numbers 8 in on the back', 'black'],
  ['en', 'red jerseys with white numbers 1 to 12 on the back', 'red'],
  ['es', '7 jerseys rojos, número blanco atrás', 'red'],
  ['es', '10 playeras negras con número blanco de 20 cm atrás', 'black'],
] as const)('(%s) %j: amounts, heights and ranges are no such figures', (language, said, cloth) => {
  const { cloth: found, number } = order(language, said)
  expect([found, number]).toEqual([[cloth], ['back-number white']])
})

test.each([
  [
    'en',
    ['3 royal jerseys, gold numbers on the back', '4 Zoe Ruiz M\n7 Abel Luna L\n12 Eli Sanz M', '#7 in red please'],
    ['royal', 'red'],
  ],
  [
    'es',
    ['3 jerseys negros, números dorados atrás', '4 Zoe Ruiz M\n7 Abel Luna L\n12 Eli Sanz M', 'el 7 en rojo'],
    ['black', 'red'],
  ],
] as const)('(%s) %j: of a list it is a player’s piece', (language, says, cloth) => {
  expect(order(language, ...says).cloth).toEqual(cloth)
})
