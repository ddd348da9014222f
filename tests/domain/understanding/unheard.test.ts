import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Talia M\n12 Beto L']
const spanish = ['jerseys blancos con nombres y números en negro', '9 Josué S\n7 Ana M\n4 Diego L']

const unheard = async (language: 'en' | 'es', says: readonly string[]): Promise<readonly string[]> =>
  (await heard(language, says)).played.replies.flatMap((reply) => (reply.code === 'words-unheard' ? reply.facts.words : []))

test('a clause about somebody of the list that was used by nothing is said back', async () => {
  expect(await unheard('en', [...english, 'Josiah is 13, Talia squeezes wonderfully among XL folks'])).toEqual([
    'Talia squeezes wonderfully among XL folks',
  ])
  expect(await unheard('es', [...spanish, 'Josué es el 13 y Ana quizá quepa en XL'])).toEqual(['Ana quizá quepa en XL'])
})

test('so is one about a size that was counted', async () => {
  const counted = ['white tees, OTTERS on the front in navy. 4 womens M, 5 mens XL']
  expect(await unheard('en', [...counted, 'the womens M should be 6, but mens XL hopes wistfully for 3XL'])).toEqual([
    'but mens XL hopes wistfully for 3XL',
  ])
})

test.each([
  ['en', 'Josiah is 13 not 9 and Talia needs a large'],
  ['en', 'Josiah is 13, Talia stays M'],
  ['en', 'swap 9 and 7, Josiah gets 7 and Talia gets 9'],
  ['en', 'Josiah is 13. Talia says thanks'],
  ['es', 'Josué es el 13, no el 9, y Ana es G'],
  ['es', 'Ana es G, gracias'],
] as const)('%s: nothing of "%s" is left', async (language, words) => {
  expect(await unheard(language, [...(language === 'en' ? english : spanish), words])).toEqual([])
})
