import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = ['white volleyball jerseys, purple numbers and names on the back', '6 Ba M\n9 Oyelowo L\n14 Kaur M\n20 Sousa XL']
const noted = async (says: readonly string[]) => {
  const { played } = await heard('en', [...list, ...says])
  return played.composed.order.roster.map(({ number, size, note }) => [number, size, note].filter(Boolean).join(' '))
}

test.each([
  'undo that for 20, she will have short like the others',
  'take that back for 20',
  'undo that for Sousa please',
  'leave 20 as it was',
  'keep 20 as she was',
  'put 20 back how it was',
])('%s: of two who were changed together one is as before', async (words) => {
  expect(await noted(['make 9 and 20 a medium', words])).toEqual(['6 M', '9 M', '14 M', '20 XL'])
})

test.each([
  'undo that for 20, shell have short like the others. only the 9 long',
  'scratch that for 20',
  'nevermind that for Sousa',
])('%s: long sleeves that were told of two stay with one', async (words) => {
  expect(await noted(['long sleeves for 9 and 20 please, rest short', words])).toEqual([
    '6 M',
    '9 L long sleeves',
    '14 M',
    '20 XL',
  ])
})

test.each([
  'leave 14 as is',
  'keep Kaur as is',
  'leave 14 alone',
  'keep 14 the same',
  'leave Kaur the way it is',
  '14 stays as is',
])('%s: nobody is changed and no list taken back', async (words) => {
  expect(await noted([words])).toEqual(['6 M', '9 L', '14 M', '20 XL'])
  expect(await noted(['make 9 a small', words])).toEqual(['6 M', '9 S', '14 M', '20 XL'])
})

test.each(['undo that', 'undo that, 20 is fine with what she had', 'take that back please'])(
  '%s: all of the last change is taken back',
  async (words) => {
    expect(await noted(['make 9 and 20 a medium', words])).toEqual(['6 M', '9 L', '14 M', '20 XL'])
  },
)
