import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const marks = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'name', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.decorations.map(({ place, content }) =>
    [place, content?.kind === 'text' ? content.text : (content?.kind ?? 'text?')].join(' '),
  )
}

test.each([
  ['en', ['20 hoodies, dark green, our name across the back in white - Hillside Chess Club'], ['yoke Hillside Chess Club']],
  ['en', ['purple shirts, team name on the back in silver glitter. we are the Gutter Gals'], ['yoke Gutter Gals']],
  ['en', ["we're the Gutter Gals", 'purple shirts, our name on the back in silver'], ['yoke Gutter Gals']],
  ['en', ['Team: Redwood Rockets. black tees with the team name on the front in white'], ['full-front Redwood Rockets']],
  ['es', ['camisas negras, el nombre del equipo atrás en dorado. somos Los Chuecos'], ['yoke Los Chuecos']],
  ['es', ['somos Los Chuecos', 'camisas negras, nuestro nombre atrás en dorado'], ['yoke Los Chuecos']],
] as const)('(%s) %j: the name of all is the team’s', (language, says, found) => {
  expect(marks(language, ...says)).toEqual(found)
})

test.each([
  ['en', ['15 gray shirts with our name on the left chest in navy'], ['left-chest text?']],
  ['es', ['15 playeras grises con nuestro nombre al frente en azul marino'], ['full-front text?']],
  ['en', ['15 gray shirts with the team name on the back in navy'], ['yoke text?']],
] as const)('(%s) %j: where nobody said which, what it shall say is asked', (language, says, found) => {
  expect(marks(language, ...says)).toEqual(found)
})

test.each([
  [
    'en',
    ['black jerseys, our names and numbers on the back in white. we are the Gutter Gals'],
    ['name name', 'back-number number'],
  ],
  [
    'en',
    ['black jerseys, our name and number on the back in white. we are the Gutter Gals'],
    ['name name', 'back-number number'],
  ],
  ['en', ['we are the Gutter Gals', 'black tees, team name GALS on the back in white'], ['yoke GALS']],
  ['es', ['jerseys negros, nuestros nombres atrás en blanco. somos Los Chuecos'], ['name name']],
  ['es', ['somos Los Chuecos', 'jerseys negros, cada quien su nombre atrás en blanco'], ['name name']],
] as const)('(%s) %j: the names of each, and what is told to be written, stay', (language, says, found) => {
  expect(marks(language, ...says).toSorted()).toEqual([...found].toSorted())
})
