import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: '3 kids jerseys in gold with black numbers on the back, plus royal hoodies for the coaches saying COACH on the front in gold',
  es: '3 jerseys de niño dorados con número negro atrás, y sudaderas azul rey para los entrenadores que digan COACH enfrente en dorado',
} as const
const players = { en: '1 YS\n2 YXS\n3 YS', es: '1 YS\n2 YXS\n3 YS' } as const
const kids = ['1 youth S', '2 youth XS', '3 youth S']
const coaches = ['men L x2', 'men XL', 'men 2XL']

test.each([
  ['en', 'hoodies are mens, 2 in L, 1 in XL, 1 in 2XL'],
  ['en', 'for the hoodies: 2 in L, 1 in XL and 1 in 2XL'],
  ['en', 'hoodies 2 L, 1 XL, 1 2XL'],
  ['es', 'las sudaderas son 2 en G, 1 en XG y 1 en 2XL'],
  ['es', 'sudaderas: 2 G, 1 XG, 1 2XL'],
] as const)("amounts of another garment are nobody's numbers, %s: %j", async (language, words) => {
  expect((await heard(language, [first[language], players[language], words])).rows).toEqual([...kids, ...coaches])
})

test.each([
  ['en', '2 in L and 1 in M', ['1 youth M', '2 youth L', '3 youth S']],
  ['es', 'la 2 en G y la 1 en M', ['1 youth M', '2 youth L', '3 youth S']],
] as const)('where no garment is named they are the players of the list, %s: %j', async (language, words, rows) => {
  const jerseys =
    language === 'en'
      ? 'gold jerseys with black numbers on the back and names'
      : 'jerseys dorados con número negro y nombre atrás'
  expect((await heard(language, [jerseys, players[language], words])).rows).toEqual(rows)
})

test.each([
  ['en', 'hoodies are mens, 2 in L, 1 in XL', 'scrap the hoodies'],
  ['es', 'las sudaderas son 2 en G, 1 en XG', 'quiten las sudaderas'],
] as const)('what was counted of a garment goes with it, %s: %j %j', async (language, counted, gone) => {
  expect((await heard(language, [first[language], players[language], counted, gone])).rows).toEqual(kids)
})

test.each([
  ['en', "add a 2T for the coach's baby, no number"],
  ['es', 'agreguen una 2T para el bebé, sin número'],
] as const)('one piece without a number leaves the others theirs, %s: %j', async (language, words) => {
  const jerseys = language === 'en' ? 'gold jerseys with black numbers on the back' : 'jerseys dorados con número negro atrás'
  const { played } = await heard(language, [jerseys, '4 Ann YS\n7 Bo YM', words])
  expect(played.composed.order.decorations.map(({ place }) => place)).toContain('back-number')
})
