import { expect, test } from 'vitest'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const now = '2027-03-02T10:00'
const talk = (language: 'en' | 'es', ...says: readonly string[]) => play({ id: 'exchange', now, language, says, facts: [] }, shop)
const listOf = ({ conversation }: Pick<ReturnType<typeof talk>, 'conversation'>) =>
  Object.values(conversation.draft.rows).map(({ number, name, size }) => [number, name, size].filter((part) => part).join(' '))

const en = 'Navy jerseys, white numbers and names\n4 Ana M\n21 Ada L\n7 Bo S goalie'
const es = 'Playeras negras, números y nombres blancos\n4 Ana M\n21 Ada G\n7 Beto CH'

test.each([
  ['en', 'Ana and Bo need to trade numbers', ['7 Ana M', '21 Ada L', '4 Bo S']],
  ['en', '4 and 7 should be switched', ['7 Ana M', '21 Ada L', '4 Bo S']],
  ['en', 'swap sizes for Ana and Bo', ['4 Ana S', '21 Ada L', '7 Bo M']],
  ['en', 'I mixed up Ana and Ada, Ana is 21 and Ada is 4', ['21 Ana M', '4 Ada L', '7 Bo S']],
  ['en', 'Bo is 77 and a medium', ['4 Ana M', '21 Ada L', '77 Bo M']],
  ['en', 'number 7 changed to number 17, her name is Beau', ['4 Ana M', '21 Ada L', '17 Beau S']],
  ['en', 'take 7 off and give the 7 to Ada', ['4 Ana M', '7 Ada L']],
  ['en', 'change Ana to number 14 and Ada to Adah', ['14 Ana M', '21 Adah L', '7 Bo S']],
  ['en', 'rename 4 to Anna', ['4 Anna M', '21 Ada L', '7 Bo S']],
  ['en', 'everyone up a size except the goalie', ['4 Ana L', '21 Ada XL', '7 Bo S']],
  ['en', 'everybody one size bigger', ['4 Ana L', '21 Ada XL', '7 Bo M']],
  ['en', 'Ana needs one size up', ['4 Ana L', '21 Ada L', '7 Bo S']],
  ['en', 'all mediums become larges', ['4 Ana L', '21 Ada L', '7 Bo S']],
  ['en', 'change the larges to mediums', ['4 Ana M', '21 Ada M', '7 Bo S']],
  ['es', 'Ana y Ada tienen los números al revés', ['21 Ana M', '4 Ada L', '7 Beto S']],
  ['es', 'el 21 ahora lo usa Beto y Ada el 7', ['4 Ana M', '7 Ada L', '21 Beto S']],
  ['es', 'todos una talla más grande menos Beto', ['4 Ana L', '21 Ada XL', '7 Beto S']],
  ['es', 'las grandes pasan a medianas', ['4 Ana M', '21 Ada M', '7 Beto S']],
] as const)('%s: %s', (language, words, rows) => {
  expect(listOf(talk(language, language === 'en' ? en : es, words))).toEqual(rows)
})

test.each([
  ['en', en, 'no, 4 is Ada and 21 is Ana'],
  ['es', es, 'no, la 4 es Ada y la 21 es Ana'],
] as const)('%s: whether sizes go with the names or stay with the numbers is asked: %3$s', (language, roster, words) => {
  const { conversation } = talk(language, roster, words)
  expect(listOf({ conversation }).slice(0, 2)).toEqual(['4 Ana M', '21 Ada L'])
  const [open] = conversation.open
  expect(open?.readings.map(({ value }) => value)).toEqual(['4 Ada L · 21 Ana M', '4 Ada M · 21 Ana L'])
  const chosen = (value: string) => hear(conversation, { id: value, kind: 'chose', value }, { shop, now })
  expect(listOf(chosen('4 Ada L · 21 Ana M')).slice(0, 2).sort()).toEqual(['21 Ana M', '4 Ada L'])
  expect(listOf(chosen('4 Ada M · 21 Ana L')).slice(0, 2).sort()).toEqual(['21 Ana L', '4 Ada M'])
})

test('of sizes that are alike only the names change places, and nothing is asked', () => {
  const { conversation } = talk('en', 'Navy jerseys\n4 Ana M\n21 Ada M', '4 is Ada and 21 is Ana')
  expect(listOf({ conversation })).toEqual(['4 Ada M', '21 Ana M'])
  expect(conversation.open).toEqual([])
})

test('where the cut has no larger size it is asked for, and an exception nobody fits changes nothing', () => {
  const youth = talk('en', 'Navy jerseys\n4 Ana YXL\n21 Ada YM', 'everyone up a size')
  expect(listOf(youth)).toEqual(['4 Ana', '21 Ada L'])
  expect(listOf(talk('en', en, 'everyone up a size except the subs'))).toEqual(['4 Ana M', '21 Ada L', '7 Bo S'])
})

test('one of several in a size is asked for, and a list pasted twice is one list', () => {
  const asked = talk('en', 'Navy jerseys\n4 Ana M\n21 Ada M', 'make the medium a large')
  expect(asked.conversation.open.map(({ about }) => about)).toEqual(['drop'])
  expect(listOf(talk('en', 'Navy jerseys\n4 Ana M\n21 Ada L\n4 Ana M\n21 Ada L'))).toEqual(['4 Ana M', '21 Ada L'])
})

test('who is dropped is said beside who takes the number, and stones that go are said too', () => {
  const changes = ({ replies }: ReturnType<typeof talk>) =>
    replies.flatMap((reply) =>
      reply.code === 'changed' ? reply.facts.changes.map(({ path, was, now: is }) => [path, was, is]) : [],
    )
  expect(changes(talk('en', en, 'take 7 off and give the 7 to Ada'))).toEqual([
    ['/roster/row', '#7 Bo S', null],
    ['/roster/row/number', '21', '7'],
  ])
  expect(changes(talk('en', 'Navy jerseys, white numbers front and back with stones', 'no stones on the back'))).toEqual([
    ['/decorations/stones', 'SS10', null],
  ])
  const tees = 'Black cotton tees, STAFF across the front in red glitter'
  expect(changes(talk('en', tees, 'make the letters white with a red shadow'))).toEqual([
    ['/decorations/shadow', null, 'red'],
    ['/decorations/0/layers/1/colour', 'red', 'white'],
  ])
  expect(changes(talk('en', `${tees} with a navy shadow`, 'no shadow please'))).toEqual([['/decorations/shadow', 'navy', null]])
})
