import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = [
  'maroon softball jerseys, gold numbers and names on the back',
  '2 Abbott S\n18 Vega 2XL\n44 Quill L\n35 Mercer S\n50 Tran M',
]
const named = (rows: readonly string[]) => rows.map((row) => row.split(' ')[1])

test.each([
  'scrub the 44 shes moved away',
  'scrub 44',
  'bin the 44, she went to another club',
  'can you axe 44 please',
  'nix Quill',
  'ditch number 44',
  'cut Quill from the list',
  'cross off Quill',
  'cross Quill off please',
  'cross 44 out',
  'chuck out the 44',
  'kick Quill off the roster',
  'knock 44 off the list',
  'pull Quill, she hurt her knee',
  'pull the 44 off please',
  'leave Quill out',
  'leave out the 44',
  'take out Quill, she transferred',
  'get rid of 44',
  'forget 44, she is not coming back',
  'forget about Quill, shes out for the season',
  'no more Quill, she moved',
  'Quill is no longer on the team',
  "Quill won't be with us this season",
  'Quill has transferred schools so she can come off',
  'Quill needs to come off the list',
  'turns out Quill is not coming',
  'we lost Quill to the tennis team, take her off',
  'you can erase Quill',
  'Quill got cut',
  'Quill bailed on us',
  "44 isn't needed anymore",
  "we don't need 44",
  'minus Quill please',
])('%s: Quill leaves the list and nobody else', async (words) => {
  expect(named((await heard('en', [...list, words])).rows)).toEqual(['Abbott', 'Vega', 'Mercer', 'Tran'])
})

test.each([
  ['scrub the 44 shes moved away :( put in a 27 instead, womens XL', '27 women XL'],
  ['bin 44, add 27 Osei womens XL', '27 Osei women XL'],
  ['ditch Quill and add 27 Osei XL', '27 Osei men XL'],
])('%s: one leaves and one comes', async (words, fresh) => {
  const { rows } = await heard('en', [...list, words])
  expect(rows.some((row) => row.includes('Quill'))).toBe(false)
  expect(rows).toContain(fresh)
  expect(rows).toHaveLength(5)
})

test.each(['yeet 44', 'vamoose the 44 please', 'please zap Quill'])('%s: a deed nobody knows is said back', async (words) => {
  const { rows, played } = await heard('en', [...list, words])
  expect(rows).toHaveLength(5)
  expect(played.replies.some(({ code }) => code === 'words-unheard' || code === 'not-understood')).toBe(true)
})

test.each([
  'forget the outline on 44',
  "44 isn't the captain anymore",
  'cut Quill is fine with a medium',
  'pull the number up a bit on 44',
  'leave 44 as is',
  "we don't need 44 to have a name",
  'cut the S from Abbotts, it is Abbott',
])('%s: nobody leaves', async (words) => {
  expect((await heard('en', [...list, words])).rows).toHaveLength(5)
})

test.each([
  'drop the outline on 44',
  'remove the name from 44',
  'lose the shadow on Quill',
  'drop the front number for 44',
  'delete the sleeve stripe on 44 only',
  'drop the gold on 44',
  'drop the glitter for Quill',
  'take the name off 44',
])('%s: what is on a jersey leaves, not who wears it', async (words) => {
  const styled = [...list, 'black outline on all the numbers, numbers on the front too']
  expect((await heard('en', [...styled, words])).rows).toHaveLength(5)
})
