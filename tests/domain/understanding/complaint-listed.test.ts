import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

type Told = readonly [
  language: 'en' | 'es',
  says: readonly string[],
  numbers: readonly string[] | undefined,
  names: readonly string[] | undefined,
]

const told: readonly Told[] = [
  ['en', ['On two of the Lakeside warmups you did, Priya and Wren, the stones are coming off'], undefined, ['Priya', 'Wren']],
  ['en', ['The numbers on three of our Harbor Gulls jerseys are cracking: 6, 19 and 27'], ['6', '19', '27'], undefined],
  ['en', ['the vinyl on a couple of shirts is peeling, Theo and Marcus'], undefined, ['Theo', 'Marcus']],
  ['en', ['numbers are peeling off the jerseys', 'two of them, 7 and 30'], ['7', '30'], undefined],
  ['en', ['names are lifting on our hoodies', "there's four of them, 2, 9, 14 and 21"], ['2', '9', '14', '21'], undefined],
  ['en', ['numbers are cracking', "it's four jerseys, 3, 8, 11 and 20"], ['3', '8', '11', '20'], undefined],
  ['en', ['stones fell off two of the cheer tops', "it's Odette and Lia"], undefined, ['Odette', 'Lia']],
  ['en', ['letters are peeling off', 'only on Sam and Joaquin'], undefined, ['Sam', 'Joaquin']],
  ['en', ['numbers are peeling', "it's been two weeks, washed 3 times"], undefined, undefined],
  ['en', ['numbers are peeling', 'we got them in two batches, October and November'], undefined, undefined],
  ['en', ['numbers are peeling', 'washed two times, 30 and 40 degrees'], undefined, undefined],
  ['es', ['A dos de las blusas, la de Renata y la de Sofía, ya se les cayeron piedras'], undefined, ['Renata', 'Sofía']],
  ['es', ['se están despegando los números de tres playeras: 4, 15 y 33'], ['4', '15', '33'], undefined],
  ['es', ['se están despegando los números', 'a dos playeras, Ximena y Paula'], undefined, ['Ximena', 'Paula']],
  ['es', ['los nombres se están pelando', 'son Iker y Bruno'], undefined, ['Iker', 'Bruno']],
  ['es', ['se están despegando los números', 'en dos partes, octubre y noviembre'], undefined, undefined],
]

test.each(told)('%s: %j', async (language, says, numbers, names) => {
  const { played } = await heard(language, says)
  expect(played.conversation.complaint?.numbers).toEqual(numbers)
  expect(played.conversation.complaint?.names).toEqual(names)
  expect(played.conversation.draft.rows).toEqual({})
})
