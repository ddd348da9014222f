import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = ['6 green tees, white number on the back', '2 Ana M\n5 Bo L']
const whenOf = async (...says: readonly string[]) => {
  const { played } = await heard('en', [...order, ...says])
  const { needBy, gameDay } = played.composed.order
  return [needBy, gameDay].map((one) => one ?? '-').join(' ')
}

test.each([
  'needed saturday 5 december by 8 in the morning',
  'needed saturday 5 december by 8 in the morning at the very latest, gates open at 9',
  'need them saturday 5 december, 8 in the morning, doors open at 9',
  'needed by 8am on saturday 5 december, kick off is at 10',
  'we need them saturday dec 5 by 8 in the morning latest. the gates open at 9',
  'must have them saturday 5 december at 8am. warm up starts at 9',
  'saturday 5 december 8am please, the bus goes at 9',
])('%s: of two hours the one they are needed at', async (words) => {
  expect((await whenOf(words)).split(' ')[0]).toBe('2026-12-05T08:00')
})

test.each([
  'need them march 12 2027 by 6pm, first game is the 13th',
  'need them march 12 2027 by 6pm, we play on the 13th',
  'first game is march 13 2027, need them the 12th by 6pm',
  'by 6pm on march 12 2027 please. opener is the 13th',
  'march 12 2027 6pm, tournament starts the 13th',
])('%s: a bare day is of the month beside it', async (words) => {
  expect(await whenOf(words)).toBe('2027-03-12T18:00 2027-03-13')
})

test.each([
  'We are playing on 5 December and need them the Thursday before, 3 December, 7pm latest',
  "we're playing on December 5, need them Thursday December 3 at 7pm",
  'playing on 5 December, need them by 7pm on 3 December',
  'our first fixture is 5 December, need them 3 December at 7pm',
  'the cup tie is on 5 December and we need them 3 December by 7pm',
  'race day is 5 December, need them 3 December 7pm',
  'the derby is December 5th. need them on the 3rd by 7pm',
  'kickoff is Saturday December 5, could we have them Thursday December 3 at 7pm',
  'we face the Otters on December 5, need them by December 3 at 7pm',
  'gala is on december 5 and need them december 3 7pm',
])('%s: the day of the game and the day they are needed', async (words) => {
  expect(await whenOf(words)).toBe('2026-12-03T19:00 2026-12-05')
})
