import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['black jerseys, gold names and numbers on the back', '9 Cruz L\n12 Mack M\n7 Ida XL\n4 Sam S']
const spanish = ['jerseys negros, nombres y números dorados atrás', '9 Cruz L\n12 Mack M\n7 Ida XL\n4 Sam S']

/** Whose name or number stays off, and the colours of all: "12 name | gold gold". */
const printed = async (language: 'en' | 'es', words: string): Promise<string> => {
  const { rows, played } = await heard(language, [...(language === 'en' ? english : spanish), words])
  expect(rows).toEqual(['9 Cruz men L', '12 Mack men M', '7 Ida men XL', '4 Sam men S'])
  const { roster, decorations } = played.composed.order
  const without = roster.flatMap(({ number, without: ids = [] }) => (ids.length === 0 ? [] : [`${number} ${ids.join('+')}`]))
  const colours = decorations.flatMap(({ layers = [] }) =>
    layers.flatMap((layer) => (layer.kind === 'vinyl' ? [layer.colour] : [])),
  )
  return `${without.join(', ')} | ${colours.join(' ')}`
}

test.each([
  ["no name on 12's", '12 name'],
  ['9 and 12 without names', '9 name, 12 name'],
  ["leave the name off Ida's", '7 name'],
  ['no name for Sam', '4 name'],
  ['skip the names on 9 and 4', '9 name, 4 name'],
  ["take the name off 12's jersey", '12 name'],
  ["12 doesn't want a name on the back", '12 name'],
  ['7 no name please', '7 name'],
  ['everyone gets names except 12', '12 name'],
  ["don't put a name on Mack's", '12 name'],
  ['only Sam has no name', '4 name'],
  ["no number on Sam's", '4 back-number'],
  ['no names on 9, 12 and 4', '9 name, 12 name, 4 name'],
])('a name or number that stays off some stays on the others: %s', async (words, without) => {
  expect(await printed('en', words)).toBe(`${without} | gold gold`)
})

test.each([
  ['el 9 y el 12 sin nombre', '9 name, 12 name'],
  ['sin nombre el 12', '12 name'],
  ['al 7 no le pongan nombre', '7 name'],
  ['todos con nombre menos el 4', '4 name'],
])('lo que no lleva uno lo llevan los demás: %s', async (words, without) => {
  expect(await printed('es', words)).toBe(`${without} | gold gold`)
})

test.each([
  ["12's name in white please"],
  ["Ida's number in silver"],
  ['make the number on 4 white'],
  ['number 9 in white instead of gold'],
  ['Sam wants her name in white'],
])('another colour for one of them is said back and is nobody’s: %s', async (words) => {
  expect(await printed('en', words)).toBe(' | gold gold')
  const { played } = await heard('en', [...english, words])
  expect(played.replies.map(({ code }) => code)).toContain('words-unheard')
})

test.each([
  ['remove Sam and the name on 9 is Cruse', ['9 Cruse men L', '12 Mack men M', '7 Ida men XL']],
  ["9's name should be Green", ['9 Green men L', '12 Mack men M', '7 Ida men XL', '4 Sam men S']],
  ['the name on 9 should be Cruse not Cruz', ['9 Cruse men L', '12 Mack men M', '7 Ida men XL', '4 Sam men S']],
])('a name that is told of one of them is no refusal and no colour: %s', async (words, rows) => {
  const { rows: after, played } = await heard('en', [...english, words])
  expect(after).toEqual(rows)
  expect(played.composed.order.roster.every(({ without }) => without === undefined)).toBe(true)
})

test.each([["drop the accent in Ida's name"], ['no last name for Sam']])(
  'what is said of the letters of a name takes no name off: %s',
  async (words) => {
    const { rows, played } = await heard('en', [...english, words])
    expect(rows.map((row) => row.split(' ')[0])).toEqual(['9', '12', '7', '4'])
    expect(played.composed.order.roster.every(({ without }) => without === undefined)).toBe(true)
  },
)

test('what was taken off is told, and can be put back', async () => {
  const { played } = await heard('en', [...english, "no name on 12's"])
  const changed = played.replies.find(({ code }) => code === 'changed')
  expect(changed?.facts).toMatchObject({ changes: [{ path: '/roster/without', now: 'name', row: { number: '12' } }] })
  const back = await heard('en', [...english, "no name on 12's", 'put the name back on 12'])
  expect(back.played.composed.order.roster.every(({ without }) => without === undefined)).toBe(true)
})

test.each([
  ['names in white please', 'white gold'],
  ['numbers in white, 4 inches tall', 'gold white'],
  ['no names', 'gold'],
])('what is said of all is done to all: %s', async (words, colours) => {
  expect(await printed('en', words)).toBe(` | ${colours}`)
})
