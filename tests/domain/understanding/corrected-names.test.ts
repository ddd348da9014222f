import { expect, test } from 'vitest'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const now = '2027-03-02T10:00'
const talk = (language: 'en' | 'es', ...says: readonly string[]) => play({ id: 'names', now, language, says, facts: [] }, shop)
const listOf = ({ conversation }: ReturnType<typeof talk>) =>
  Object.values(conversation.draft.rows).map(({ number, name, size }) => [number, name, size].filter((part) => part).join(' '))
const openOf = ({ conversation }: ReturnType<typeof talk>) =>
  conversation.open.map(({ about, readings }) => [about, ...readings.map(({ value }) => value)])

const team = 'Navy jerseys with white numbers and names\n9 Ramos M\n12 Ada Black L'

test.each([
  ['9 jersey should say Rojas', ['9 Rojas M', '12 Ada Black L']],
  ['the #9 shirt should read "De la Cruz"', ['9 De la Cruz M', '12 Ada Black L']],
  ["9's name should be Green", ['9 Green M', '12 Ada Black L']],
  ["Black's jersey should say White", ['9 Ramos M', '12 Ada White L']],
  ['the name on 9 should be Ramoz and 12 should be Eda Black', ['9 Ramoz M', '12 Eda Black L']],
  ['7 jersey should say Rojas', ['9 Ramos M', '12 Ada Black L']],
])('“%s” changes the name it speaks of, and neither count, colour nor text', (words, rows) => {
  const after = talk('en', team, words)
  expect(listOf(after)).toEqual(rows)
  expect(after.conversation.draft.garments).toEqual({ jersey: { kind: 'jersey', colour: 'navy' } })
  expect(Object.values(after.conversation.draft.marks).map(({ content }) => content)).toEqual(['number', 'name'])
})

test.each(['la playera 9 debe decir Rojas', 'el 9 debe decir Rojas', 'el nombre del 9 es Rojas'])('%s', (words) => {
  const after = talk('es', 'Playeras negras con números y nombres blancos\n9 Ramos M\n12 Luna G', words)
  expect(listOf(after)).toEqual(['9 Rojas M', '12 Luna L'])
  expect(after.conversation.draft.garments['tee']?.colour).toBe('black')
})

test('pieces that are counted stay a count', () => {
  const { conversation } = talk('en', 'Navy jerseys', '9 jerseys should say GO TEAM')
  expect(conversation.draft.garments['jersey']?.count).toBe(9)
})

test('a correction that fits two lines is asked about', () => {
  const after = talk('en', 'Navy jerseys\n9 Ramos M\n9 Black L', '9 should say Rojas')
  expect(listOf(after)).toEqual(['9 Ramos M', '9 Black L'])
  expect(openOf(after)).toEqual([['drop', '1', '2']])
})

test.each([
  ['en', 'Navy jerseys with white numbers\n4 Ana M\n5 Luz M\n6 Sol L', 'one of the mediums is out'],
  ['es', 'Playeras negras con números blancos\n4 Ana M\n5 Luz M\n6 Sol G', 'una de las medianas ya no va'],
  ['es', 'Playeras negras con números blancos\n4 Ana M\n5 Luz M\n6 Sol G', 'Oigan una de las medianas ya no va, quítenla porfa'],
] as const)('%s: of several of a size it is asked who leaves: %3$s', (language, roster, words) => {
  const asked = talk(language, roster, words)
  expect(openOf(asked)).toEqual([['drop', '1', '2']])
  expect(listOf(asked)).toHaveLength(3)
  expect(listOf(talk(language, roster, words, 'Luz'))).toEqual(['4 Ana M', '6 Sol L'])
})

test('counted pieces are alike: one fewer, and asked where two cuts have that size', () => {
  const counted = talk('en', '4 small, 3 mediums navy jerseys', 'one of the mediums is out').conversation.draft.tally
  expect(Object.values(counted).map(({ quantity }) => quantity)).toEqual([4, 2])
  const cuts = talk('en', '3 youth mediums and 4 adult mediums navy jerseys', 'drop one of the mediums')
  expect(openOf(cuts)).toEqual([['drop', '1', '2']])
  expect(Object.values(cuts.conversation.draft.tally).map(({ quantity }) => quantity)).toEqual([3, 4])
})

test('that nobody has the size is said and never taken for small talk', () => {
  const { replies } = talk('en', 'Navy jerseys\n4 Ana M\n5 Luz M', 'one of the smalls is out')
  expect(replies.map(({ code }) => code)).toContain('not-understood')
})

test.each([
  ['spaces', 'Smith, John 4 M\nDe la Cruz, Ana 5 L'],
  ['number first', '4 Smith, John M\n5 De la Cruz, Ana L'],
  ['semicolons', '4; Smith, John; M\n5; De la Cruz, Ana; L'],
  ['quoted cells', '4,"Smith, John",M\n5,"De la Cruz, Ana",L'],
  ['one heading for the name', 'number,name,size\n4,Smith, John,M\n5,De la Cruz, Ana,L'],
  ['quoted cells under a heading', 'number;name;size\n4; "Smith, John"; M\n5; "De la Cruz, Ana"; L'],
])('surname, given name by %s is turned', (_, roster) => {
  const after = talk('en', `Navy jerseys with names\n${roster}`)
  expect(listOf(after)).toEqual(['4 John Smith M', '5 Ana De la Cruz L'])
  expect(openOf(after)).toEqual([])
})

test('a suffix behind a comma stays behind', () => {
  expect(listOf(talk('en', 'Navy jerseys\n4; Smith, Jr.; M\n5; Doe, III; L'))).toEqual(['4 Smith Jr. M', '5 Doe III L'])
})

test('two cells of a name without a heading are asked about once for all lines, of those that are still there', () => {
  const roster = 'Navy jerseys with names\n4, Smith, John, M\n5, Doe, Jane, L\n6, Roe, Ann, S'
  const asked = talk('en', roster)
  expect(openOf(asked)).toEqual([['name-order', 'John Smith', 'Smith John', 'Smith', 'John']])
  expect(listOf(talk('en', roster, 'John Smith'))).toEqual(['4 John Smith M', '5 Jane Doe L', '6 Ann Roe S'])
  const fewer = talk('en', roster, 'drop 5').conversation
  const { conversation } = hear(fewer, { id: 'choice', kind: 'chose', value: 'Smith' }, { shop, now })
  expect(Object.values(conversation.draft.rows).map(({ name }) => name)).toEqual(['Smith', 'Roe'])
})
