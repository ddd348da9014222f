import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Ana Ruiz M\n12 Beto L']
const spanish = ['jerseys blancos con nombres y números en negro', "9 Josué S\n7 Anel O'Farrill M\n4 Diego S\n16 Diego M"]

test.each([
  ['Josiah just hit a growth spurt, make him an M please', 'M'],
  ['Josiah tried his old one on. He needs a 2XL', '2XL'],
  ["Josiah isn't an S, he's an L", 'L'],
  ['can you put Josiah in a medium', 'M'],
  ['move Josiah from S to M', 'M'],
  ['Josiah should be M not S', 'M'],
  ['#9 tried his on, make it an XL', 'XL'],
  ["make the 9 a medium he's shot up over the summer", 'M'],
  ['Josiah might as well go up to a 2XL', '2XL'],
])('"%s" gives the one who was named another size', async (words, size) => {
  const { rows } = await heard('en', [...english, words])
  expect(rows).toEqual([`9 Josiah men ${size}`, '7 Ana Ruiz men M', '12 Beto men L'])
})

test('two named together take the size together; a range keeps its own', async () => {
  expect((await heard('en', [...english, 'Josiah and Beto both need XL'])).rows).toEqual([
    '9 Josiah men XL',
    '7 Ana Ruiz men M',
    '12 Beto men XL',
  ])
})

test.each([
  ['Josué no es S, es 2XL. los demás igual', '2XL'],
  ['a Josué cámbialo a G', 'L'],
  ['Josué quiere M mejor, dice que le aprieta', 'M'],
  ['a Josué pásalo a XG', 'XL'],
])('"%s" gives the one who was named another size', async (words, size) => {
  expect((await heard('es', [...spanish, words])).rows[0]).toBe(`9 Josué men ${size}`)
})

test('of two of a name the number beside it says which; without it that is asked', async () => {
  const sure = await heard('es', [...spanish, 'El Diego del 4 se dio de baja, quítalo porfa'])
  expect(sure.rows).toEqual(['9 Josué men S', "7 Anel O'Farrill men M", '16 Diego men M'])
  const asked = await heard('es', [...spanish, 'Diego mejor L'])
  expect(asked.rows.slice(2)).toEqual(['4 Diego men S', '16 Diego men M'])
  expect(asked.open).toContain('drop')
})

test('a cut said of some is not everyone’s', async () => {
  expect((await heard('es', [...spanish, 'Josué y Anel son tallas de mujer'])).rows.slice(0, 3)).toEqual([
    '9 Josué women S',
    "7 Anel O'Farrill women M",
    '4 Diego men S',
  ])
})

test('another number said with "va a traer" or "will wear"', async () => {
  expect((await heard('es', [...spanish, 'el 9 siempre no, Josué va a traer el 15'])).rows[0]).toBe('15 Josué men S')
  expect((await heard('en', [...english, 'Josiah will wear 21'])).rows[0]).toBe('21 Josiah men S')
})

test.each([
  ['Anel se escribe con doble ele al final', "7 Anell O'Farrill men M"],
  ["Ay perdón, Anel se escribe con doble ele al final: Anell O'Farrill", "7 Anell O'Farrill men M"],
])('%s', async (words, row) => {
  expect((await heard('es', [...spanish, words])).rows[1]).toBe(row)
})

test.each([
  ["Ana is spelled with two n's", '7 Anna Ruiz men M'],
  ['Ana with a double n', '7 Anna Ruiz men M'],
  ['Ana with a double a', '7 Ana Ruiz men M'],
])('a doubled letter, where it is certain which: %s', async (words, row) => {
  expect((await heard('en', [...english, words])).rows[1]).toBe(row)
})

test('a newcomer may take the number of one who leaves in the same breath, or come without a size', async () => {
  const { rows } = await heard('en', [...english, 'ugh Josiah quit. drop Josiah and add Rosalind 9 youth S, and Jojo 2'])
  expect(rows.slice(2)).toEqual(['9 Rosalind youth S', '2 Jojo men'])
})

test('who is put on the list by number is no day', async () => {
  const { rows, played } = await heard('es', [...spanish, 'y agréguenle el 10 en 2XL pal profe'])
  expect(rows[4]).toBe('10 men 2XL')
  expect(played.conversation.draft.day).toBeUndefined()
})
