import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  en: ['3 navy jerseys with white numbers and names on the back', '2 Mia S\n5 Ana M\n9 Zoe M'],
  es: ['3 jerseys azul marino con números y nombres blancos atrás', '2 Mia CH\n5 Ana M\n9 Zoe M'],
}

test.each([
  ['en', 'Mia is 2, the others are 8 to 10'],
  ['en', 'Mia is 2 years old, the rest are 8-10'],
  ['en', 'Mia is 2 and the rest are 8 to 10'],
  ['es', 'Mia tiene 2, las demás tienen de 8 a 10'],
  ['es', 'Mia tiene 2 años, las otras de 8 a 10'],
] as const)('(%s) "%s": the one who is two is under three, the rest are children', async (language, words) => {
  const { played, rows } = await heard(language, [...orders[language], words])
  expect(played.composed.order.roster.map(({ age }) => age)).toEqual(['under-3', '3-12', '3-12'])
  expect(rows.map((row) => row.split(' ').slice(0, 2).join(' '))).toEqual(['2 Mia', '5 Ana', '9 Zoe'])
})

test.each([
  ['en', ['3 navy jerseys with white numbers and names on the back', 'Mia S\nAna M\nZoe M'], 'Mia is 2, the others are 8 to 10'],
  ['en', orders.en, 'Mia is #2'],
  ['en', orders.en, 'swap 2 and 5'],
  ['es', orders.es, 'Mia es la 2'],
] as const)('(%s) %j, "%s" tells no ages', async (language, says, words) => {
  const { played } = await heard(language, [...says, words])
  expect(played.composed.order.roster.map(({ age }) => age)).toEqual(['unknown', 'unknown', 'unknown'])
})
