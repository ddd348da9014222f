import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = [
  'white jerseys, navy names and numbers on the back',
  '9 Petrov S\n7 Ana Ruiz M\n12 Beto L. 19 gets the C\n19 Boyd L',
]
const counted = ['playeras negras de dama que digan OTTERS enfrente en blanco. Son 3 ch, 5 m y 2 g']

test('a name near to one of the list takes its place where the old one is spoken of', async () => {
  expect((await heard('en', [...english, "*Petroff with two f's, not Petrov"])).rows[0]).toBe('9 Petroff men S')
})

test('an undo keeps its reason, and "as it was" takes back the line it names and no other', async () => {
  const changed = [...english, 'make 9 an XL', 'make 12 a medium']
  expect((await heard('en', [...changed, "wait no undo that, his mom says he's fine in what he had"])).rows[2]).toBe(
    '12 Beto men L',
  )
  const { rows } = await heard('en', [...changed, 'leave 9 as it was'])
  expect([rows[0], rows[2]]).toEqual(['9 Petrov men S', '12 Beto men M'])
})

test('another amount of a counted size is taken in whatever words it comes', async () => {
  expect((await heard('es', [...counted, 'ah y de las g son 4'])).rows).toEqual(['women S x3', 'women M x5', 'women L x4'])
})

test('who is no line of the list is said back, not taken for somebody else', async () => {
  const { rows, played } = await heard('en', [...english, 'Beto is happy, Marcos is M'])
  expect(rows[2]).toBe('12 Beto men L')
  expect(played.replies.some(({ code }) => code === 'words-unheard')).toBe(true)
})
