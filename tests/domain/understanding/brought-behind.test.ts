import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const from = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'brought', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.garments.map((garment) => `${garment.id} ${garment.colour} ${garment.from}`)
}

test.each([
  ['en', '14 maroon jerseys, we bring them. white numbers on the back', 'jersey maroon customer'],
  ['en', "14 maroon jerseys, we'll bring them in. white numbers on the back", 'jersey maroon customer'],
  ['en', "12 black tees with GO on the front in white, I'll drop them off on tuesday", 'tee black customer'],
  ['es', '14 jerseys guindas con número blanco atrás, los llevamos el martes', 'jersey maroon customer'],
  ['es', '12 playeras negras, nosotros las traemos. VAMOS al frente en blanco', 'tee black customer'],
  ['es', '12 playeras negras con VAMOS al frente en blanco, se las llevo mañana', 'tee black customer'],
] as const)('(%s) %j: garments that are brought behind their name are the customer’s', (language, said, found) => {
  expect(from(language, said)).toEqual([found])
})

test.each([
  ['en', '14 maroon jerseys, white numbers on the back, coach will bring them to the game', 'jersey maroon shop'],
  ['en', "14 maroon jerseys, white numbers on the back, we'll bring them to the tournament", 'jersey maroon shop'],
  ['en', '14 maroon jerseys, white numbers on the back, we pick them up', 'jersey maroon shop'],
  ['es', '14 jerseys guindas con número blanco atrás, los llevamos al torneo', 'jersey maroon shop'],
  ['es', '14 jerseys guindas con número blanco atrás, me los traen a la escuela', 'jersey maroon shop'],
] as const)('(%s) %j: what goes somewhere else is the shop’s', (language, said, found) => {
  expect(from(language, said)).toEqual([found])
})
