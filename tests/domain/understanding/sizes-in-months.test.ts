import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const en = '3 black cotton tees with white numbers and names on the back'
const es = '3 playeras negras de algodón con números y nombres blancos atrás'

/** Sizes in months are those of small children (common practice: 24 months is 2T); never the grown-ups' M. */
test.each([
  ['en', en, '4 Abel M\n9 Joy 24M\n5 Cid L', '4 Abel men M, 9 Joy toddler 2T, 5 Cid men L'],
  ['en', en, '4 Abel M\n9 Joy 36M\n5 Cid L', '4 Abel men M, 9 Joy toddler 3T, 5 Cid men L'],
  ['en', en, '4 Abel M, 9 Joy 24M, 5 Cid L', '4 Abel men M, 9 Joy toddler 2T, 5 Cid men L'],
  ['en', en, 'num,name,size\n4,Abel,M\n9,Joy,24M\n5,Cid,L', '4 Abel men M, 9 Joy toddler 2T, 5 Cid men L'],
  ['es', es, '4 Abel M\n9 Luz 24M\n5 Cid G', '4 Abel men M, 9 Luz toddler 2T, 5 Cid men L'],
  ['es', es, '4 Abel M\n9 Luz 36M\n5 Cid G', '4 Abel men M, 9 Luz toddler 3T, 5 Cid men L'],
  // What is a number with its size stays one.
  ['en', en, '4M Abel\n24M Joy\n5L Cid', '4 Abel men M, 24 Joy men M, 5 Cid men L'],
  ['en', en, 'Abel 4M\nJoy 24M\nCid 5L', '4 Abel men M, 24 Joy men M, 5 Cid men L'],
] as const)('months behind a numbered name are a size of small children: %s, %s %s', async (language, wish, list, rows) => {
  expect((await heard(language, [wish, list])).rows.join(', ')).toBe(rows)
})

test.each([
  ['en', en, '4 Abel M\n6 Noa 18M\n5 Cid L', '6 Noa'],
  ['en', en, '4 Abel M\n6 Noa 12M\n5 Cid L', '6 Noa'],
  ['es', es, '4 Abel M\n6 Noa 18M\n5 Cid G', '6 Noa'],
] as const)(
  'months that are no size of the shop are never taken for the grown-ups’ M: %s, %s',
  async (language, wish, list, who) => {
    const { rows } = await heard(language, [wish, list])
    expect(rows.filter((row) => row.startsWith(who)).join()).not.toMatch(/ (?:men|women|youth)? ?M$/)
  },
)
