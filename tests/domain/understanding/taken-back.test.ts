import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const after = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed, conversation } = play({ id: 'back', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const layer = composed.order.decorations.find(({ place }) => place === 'back-number')?.layers?.[0]
  const sizes = composed.order.roster.map(({ name, size }) => `${name} ${size}`)
  return { hue: layer?.kind === 'vinyl' ? layer.colour : undefined, sizes, draft: conversation.draft }
}

const english = ['Gray jerseys, navy numbers on the back', 'Cade YM 5\nLuis YL 13\nTuck YS 1']
const red = [...english, 'hmm lets make the numbers red instead']
const spanish = ['Jerseys grises, números azul marino atrás', 'Cade M 5\nLuis G 13\nTico CH 1', 'mejor los números rojos']

test.each([
  'nah undo that, the navy was better',
  'undo that, I liked the navy better',
  'undo that, coach hates the red',
  'scratch that, red looks bad on gray',
  'never mind, keep them navy',
  'nvm navy was fine',
  'back to navy please, red is too loud',
  'no wait undo. the navy was right',
  'can you undo that? navy was nicer',
  'can we go back to how it was?',
  'actually leave it how it was, navy matches our pants',
  'forget the red, navy it is',
  'put it back to navy',
  'take that back, we voted for navy',
  'lol undo that',
  'nah undo that, the navy was better. who do you like in the world series lol',
])('a change is taken back with its reason: %s', (words) => {
  expect(after('en', ...red, words).hue).toBe('navy')
  expect(after('en', ...red, words, 'Who do you like in the world series lol').hue).toBe('navy')
})

test.each([
  'no, deshazlo, se veía mejor el azul marino',
  'siempre no, el azul marino estaba mejor',
  'deshaz eso, al entrenador no le gusta el rojo',
  'mejor regrésalo a azul marino',
  'cancela ese cambio, el rojo no se ve',
  'no, mejor como estaba antes',
  'puedes deshacer eso? quedaba mejor antes',
  'ya no, déjalo en azul marino',
  'deshaz eso jaja, viste el partido?',
])('un cambio se deshace con su razón: %s', (words) => {
  expect(after('es', ...spanish, words).hue).toBe('navy')
})

test.each([
  ['undo that and make Tuck a YM', ['Cade M', 'Luis L', 'Tuck M']],
  ['my bad, undo that. also Tuck should be a YM', ['Cade M', 'Luis L', 'Tuck M']],
  ['undo that, and drop Cade', ['Luis L', 'Tuck S']],
  ['undo that but Luis is a YM', ['Cade M', 'Luis M', 'Tuck S']],
  ['undo that and add 22 Omar YL', ['Cade M', 'Luis L', 'Tuck S', 'Omar L']],
])('what else is said beside an undo is heard too: %s', (words, sizes) => {
  expect(after('en', ...red, words)).toMatchObject({ hue: 'navy', sizes })
})

test('another value beside an undo is taken, and words that only make room for it undo nothing', () => {
  expect(after('en', ...red, 'undo that, make them gold').hue).toBe('gold')
  expect(after('en', ...red, 'undo that. make the numbers gold').hue).toBe('gold')
  expect(after('en', ...red, 'scratch that, Luis is a YM')).toMatchObject({ hue: 'red', sizes: ['Cade M', 'Luis M', 'Tuck S'] })
})

test.each([
  "don't undo that, the red is great",
  'keep the red',
  'is the navy better?',
  'the color was fine before',
  'déjalo como está',
])('nothing is taken back by: %s', (words) => {
  expect(after('en', ...red, words).hue).toBe('red')
})

test('an undo that names a line changed earlier takes back that line and no other', () => {
  const says = [...english, 'make Luis an XL', 'make Cade YS']
  expect(after('en', ...says, 'undo the Luis one').sizes).toEqual(['Cade S', 'Luis L', 'Tuck S'])
  expect(after('en', ...says, 'undo that, Cade is fine in YM but keep Luis XL').sizes).toEqual(['Cade M', 'Luis XL', 'Tuck S'])
})
