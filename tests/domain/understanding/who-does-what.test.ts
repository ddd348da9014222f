import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const draftAfter = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'who', now: '2027-03-02T10:00', language, says, facts: [] }, shop).conversation.draft

test.each([
  ['en', 'Jill Paxton is our treasurer, she pays and she signs off', { pays: 'Jill Paxton', signsOff: 'Jill Paxton' }],
  ['en', 'Our AD is Mark Sutter, he approves it. The boosters pay.', { pays: 'boosters', signsOff: 'Mark Sutter' }],
  [
    'en',
    "Hi, I'm Carla Boone. I'm paying and I'll pick them up.",
    { orders: 'Carla Boone', pays: 'Carla Boone', collects: 'Carla Boone' },
  ],
  [
    'es',
    'Paga mi papá, Eusebio Olmos. Yo paso a recogerlos, me llamo Daniela Olmos',
    { pays: 'Eusebio Olmos', collects: 'Daniela Olmos' },
  ],
  ['es', 'y la hermana Noemí Caballero es la que aprueba el diseño', { signsOff: 'Noemí Caballero' }],
] as const)('%s: %s', (language, words, people) => {
  const draft = draftAfter(language, words)
  expect(draft).toMatchObject(people)
  expect(draft.team).toBeUndefined()
})

test('the name of a team is nobody’s', () => {
  const { team, orders } = draftAfter('en', 'team name is Gutter Gulls')
  expect({ team, orders }).toEqual({ team: 'Gutter Gulls', orders: undefined })
})

test.each([
  ['en', 'Names and sizes: Ann M, Bob L, Mary Jo XL, Stu 2XL', ['Ann M', 'Bob L', 'Mary Jo XL', 'Stu 2XL']],
  ['es', 'yo soy Aranza CH, Dayra M, Itzel G no perdón Itzel M, y Brenda XG', ['Aranza S', 'Dayra M', 'Itzel M', 'Brenda XL']],
] as const)('names with their sizes in a sentence are players: %s', (language, words, rows) => {
  const after = Object.values(draftAfter(language, 'black hoodies, names on the back in white', words).rows)
  expect(after.map(({ name, size }) => `${name} ${size}`)).toEqual(rows)
})

test('another batch of the same cloth has its own colour of numbers', () => {
  const { garments, styles } = draftAfter('es', '9 jerseys blancos con número negro y 9 con número rojo')
  expect(garments).toMatchObject({ jersey: { colour: 'white', count: 9 }, 'jersey-2': { colour: 'white', count: 9 } })
  expect(styles).toMatchObject({ 'number@jersey': { colour: 'black' }, 'number@jersey-2': { colour: 'red' } })
})
