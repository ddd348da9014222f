import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: 'navy jerseys, white names and numbers on the back',
  es: 'jersey negro con número y nombre blanco atrás',
} as const
const list = { en: '4 Ann YM\n7 Bo YL\n9 Cy YS', es: '4 Ann M de niño\n7 Bo G de niño\n9 Cy CH de niño' } as const
const three = ['4 Ann youth M', '7 Bo youth L', '9 Cy youth S']
const after = async (language: 'en' | 'es', words: string) =>
  (await heard(language, [first[language], list[language], words])).rows

test.each([
  ['en', 'Cy is in Bos size these days, not the S'],
  ['en', "Cy is in Bo's size now"],
  ['en', 'Cy now wears the same size as Bo'],
  ['en', '9 should be whatever size 7 is'],
  ['es', 'Cy ya usa la misma talla que Bo'],
  ['es', 'Cy que sea de la talla de Bo'],
  ['es', 'la 9 ponla igual que la 7 de talla'],
] as const)('a size told by that of another, %s: %j', async (language, words) => {
  expect(await after(language, words)).toEqual([...three.slice(0, 2), '9 Cy youth L'])
})

test.each([
  ['en', 'is Cy the same size as Bo?'],
  ['en', 'Cy is not the same size as Bo'],
  ['en', "if Cy were in Bo's size I would tell you"],
  ['es', '¿Cy es de la misma talla que Bo?'],
] as const)('a question or a refusal changes no size, %s: %j', async (language, words) => {
  expect(await after(language, words)).toEqual(three)
})

test.each([
  ['en', 'no jersey for Bo. Dee takes the spot, same size'],
  ['en', 'replace Bo with Dee, same size'],
  ['en', 'Dee instead of Bo please, same size as Bo'],
  ['en', "Bo is leaving us, so no jersey for Bo. Instead it's Dee, same size as Bo"],
  ['es', 'sin jersey para Bo. En su lugar Dee, la misma talla que Bo'],
  ['es', 'cambien a Bo por Dee, misma talla'],
] as const)('somebody comes for another in their size, %s: %j', async (language, words) => {
  const { rows, played } = await heard(language, [first[language], list[language], words])
  expect(rows).toEqual(['4 Ann youth M', 'Dee youth L', '9 Cy youth S'])
  expect(played.composed.order.garments).toHaveLength(1)
})

test.each([
  ['en', 'Bo quit, swap in Dee, same number and size as Bo'],
  ['es', 'Bo se salió, entra Dee con el mismo número y la misma talla'],
] as const)('number and size are taken over where it is said, %s: %j', async (language, words) => {
  expect(await after(language, words)).toEqual(['4 Ann youth M', '7 Dee youth L', '9 Cy youth S'])
})

test('colours are instead of each other, and a name that was misspelled is no newcomer', async () => {
  const { rows } = await heard('en', [
    first.en,
    '4 Jon M\n7 Bo L',
    'white numbers instead of navy. and it is John instead of Jon',
  ])
  expect(rows).toHaveLength(2)
  expect(rows[1]).toBe('7 Bo men L')
})
