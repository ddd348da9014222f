import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = [
  '6 green tees, white number on the back. Dana Whitlow ordering',
  'Coach Babatunde Alder signs off the proof. Our caretaker Ronnie Pugh collects. Otis Lane pays.',
]
const peopleOf = async (words: string) => {
  const { played } = await heard('en', [...order, words])
  const { orders, collects, signsOff, pays } = played.composed.order.people
  expect(orders).toBe('Dana Whitlow')
  return [collects, signsOff, pays].join('; ')
}

test.each([
  'Sorry, Ronnie is off that week, it will be Sheila Croft from reception who collects',
  'Ronnie is away, Sheila Croft will collect instead',
  "Ronnie can't make it, Sheila Croft is picking up",
  'Sheila Croft collects, not Ronnie',
  'not Ronnie, Sheila Croft collects',
  "it's Sheila Croft who collects now",
  'change of plan, Sheila Croft will come for them instead of Ronnie',
  'Sheila Croft is collecting rather than Ronnie Pugh',
  'actually Sheila Croft from the office picks them up',
  'Ronnie is on holiday so Sheila Croft will fetch them',
  'Sheila Croft will be the one collecting',
  'the one who collects is Sheila Croft',
  "it'll be Sheila Croft collecting them",
  'collection will be by Sheila Croft',
])('%s: another collects', async (words) => {
  expect(await peopleOf(words)).toBe('Sheila Croft; Babatunde Alder; Otis Lane')
})

test.each([
  'Babatunde is off, Nora Quist will sign off the proof',
  "it's Nora Quist who signs off now",
  'Nora Quist approves the proof instead of Babatunde',
  'it will be Nora Quist who approves it',
])('%s: another signs off', async (words) => {
  expect(await peopleOf(words)).toBe('Ronnie Pugh; Nora Quist; Otis Lane')
})

test.each([
  "Otis isn't paying, Nora Quist is",
  'Nora Quist pays, not Otis',
  'it will be Nora Quist who pays',
  'the bill goes to Nora Quist instead of Otis',
])('%s: another pays', async (words) => {
  expect(await peopleOf(words)).toBe('Ronnie Pugh; Babatunde Alder; Nora Quist')
})
