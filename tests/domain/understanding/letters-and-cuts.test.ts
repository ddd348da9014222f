import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['hockey, white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Talia M\n12 Beto L\n4 Ray XL']
const spanish = ['jerseys blancos con nombres y números en negro', '9 Josué S\n7 Ana M\n12 Beto G\n4 Rey XG']

/** Who wears a letter, as "7 C". */
const letters = async (language: 'en' | 'es', says: readonly string[]): Promise<readonly string[]> =>
  (await heard(language, says)).played.composed.order.roster.flatMap(({ number, extras }) =>
    (extras ?? []).flatMap(({ content }) => (content?.kind === 'text' ? [`${number} ${content.text}`] : [])),
  )

test.each([
  ['captain is 7, alternates 4 and 12', ['7 C', '12 A', '4 A']],
  ['Talia is captain and wears a C', ['7 C']],
])('"%s" gives letters', async (words, worn) => {
  expect(await letters('en', [...english, words])).toEqual(worn)
})

test.each([
  ['el capitán es el 12, va con su C', ['12 C']],
  ['capitana la 7, subcapitanas la 4 y la 12', ['7 C', '12 A', '4 A']],
])('"%s" gives letters', async (words, worn) => {
  expect(await letters('es', [...spanish, words])).toEqual(worn)
})

test('a letter that somebody gives up is worn by the other who is named', async () => {
  const first = [...english, 'captain is 7, alternates 4 and 12']
  expect(await letters('en', [...first, '4 gave up the A, put it on 9 instead'])).toEqual(['9 A', '7 C', '12 A'])
  expect(await letters('en', [...first, 'Ray no longer wears the A'])).toEqual(['7 C', '12 A'])
  const primero = [...spanish, 'capitana la 7, subcapitanas la 4 y la 12']
  expect(await letters('es', [...primero, 'el 4 ya no lleva la A, pónganla al 9'])).toEqual(['9 A', '7 C', '12 A'])
})

test.each([
  ['en', 'white jerseys, navy names and numbers on the back. All sizes are womens', '9 Ana M\n7 Bea L', 'women'],
  ['en', 'white jerseys, navy names and numbers on the back', '9 Ana M\n7 Bea L\nall womens', 'women'],
  ['es', 'jerseys blancos con nombres y números en negro. Todas las tallas son de niño', '9 Ana M\n7 Bea G', 'youth'],
  ['es', 'jerseys blancos con nombres y números en negro, las tallas todas de dama', '9 Ana M\n7 Bea G', 'women'],
] as const)('%s: "%s" holds for bare sizes', async (language, order, list, fit) => {
  expect((await heard(language, [order, list])).rows).toEqual([`9 Ana ${fit} M`, `7 Bea ${fit} L`])
})

test('who is put on the list by name and size alone', async () => {
  const named = ['black tees, first names on the back in gold', 'Milo S\nGreta M']
  expect((await heard('en', [...named, 'add Nia, small'])).rows.at(-1)).toBe('Nia men S')
  const list = ['playeras negras con el nombre en la espalda en blanco', 'Lía CH\nHugo G']
  expect((await heard('es', [...list, 'agrega a Noel M'])).rows.at(-1)).toBe('Noel men M')
  expect((await heard('es', [...list, 'agrega a Violeta YL'])).rows.at(-1)).toBe('Violeta youth L')
})

test('a colour said right before "de local" or "de visita" is of that jersey', async () => {
  for (const words of [
    'Son dos jerseys por niño: blanco de local y azul marino de visita',
    'jersey blanco de local y azul marino de visita',
  ]) {
    const { garments } = (await heard('es', [words])).played.composed.order
    expect(garments.map(({ id, colour }) => `${id} ${colour}`)).toEqual(['home white', 'away navy'])
  }
})

test('capitals inside a name are written as they were said', async () => {
  const list = ['jerseys blancos con nombres y números en negro', '27 Mcintyre G\n8 Ochoa M']
  expect((await heard('es', [...list, 'y el 27 se escribe McIntyre con I mayuscula'])).rows[0]).toBe('27 McIntyre men L')
})

test('a list of players behind the description, in the same line', async () => {
  const told = 'red jerseys with black numbers on the back and names under the number. 9 Big Tony XL, 7 Ines M, 10 Kay L'
  expect((await heard('en', [told])).rows).toEqual(['9 Big Tony men XL', '7 Ines men M', '10 Kay men L'])
  const dicho = 'jerseys rojos con número y nombre atrás en negro: 9 Toño XG, 7 Inés M, 10 Cata G'
  expect((await heard('es', [dicho])).rows).toEqual(['9 Toño men XL', '7 Inés men M', '10 Cata men L'])
  expect((await heard('en', ['tees with OTTERS on the front. 5 Black L, 4 White M'])).rows.join()).not.toMatch(/Black|White/)
})
