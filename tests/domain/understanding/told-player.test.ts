import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const lost = "we're the Larkspur Lancers. One of our players left hers on the bus. Can we reorder just that one?"
const perdido = 'Una jugadora perdió el suyo, somos las Lanceras, podemos pedir nada más ese otra vez?'
const list = ['white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Ana Ruiz M\n12 Beto L']
const lista = ['jerseys blancos, nombres y números en negro atrás', '9 Josué S\n7 Ana Ruiz M\n12 Beto G']

test.each([
  "14, Ortega, women's M. need it Wed Jan 20 at 10 in the morning",
  "it's number 14, Ortega, womens M",
  'her number is 14, name Ortega, size womens M',
  "number 14 Ortega in a women's M. thanks!",
  'the jersey is #14, last name Ortega, womens medium',
  'Name is Ortega, number 14, womens M',
  'size womens M, number 14, name on back Ortega',
  "She's number 14, wears a womens M, name's Ortega",
  'Sure: 14 - Ortega - womens M - needed Jan 20',
  'Ortega, she wears 14, womens M',
  'It says Ortega with a 14, womens medium',
  'yes its #14 and the size is womens M, name Ortega',
])('one jersey again, told in prose: %s', async (words) => {
  expect((await heard('en', [lost, words])).rows).toEqual(['14 Ortega women M'])
  expect((await heard('en', [lost, words, 'make it a womens L'])).rows).toEqual(['14 Ortega women L'])
})

test.each([
  '14, Ortega, M de dama. lo ocupo el 20 de enero',
  'es el 14, Ortega, M de dama',
  'el número es 14, el nombre Ortega y la talla M de dama',
  'dice Ortega con el 14, M de dama',
  'es número 14, apellido Ortega, mediana de dama',
  'talla M de dama, número 14, nombre Ortega',
])('un jersey otra vez, dicho en prosa: %s', async (words) => {
  expect((await heard('es', [perdido, words])).rows).toEqual(['14 Ortega women M'])
})

test.each([
  'my brother Ulises was left out, XL, number 8',
  'you forgot Ulises, number 8 XL',
  "Ulises isn't on there, he's 8 and wears XL",
  'one more: 8, Ulises, XL',
  'plus Ulises, number 8, XL',
  'we also have Ulises in XL, number 8',
  'somehow left off Ulises (8, XL)',
])('somebody who was left out: %s', async (words) => {
  expect((await heard('en', [...list, words])).rows).toEqual([
    '9 Josiah men S',
    '7 Ana Ruiz men M',
    '12 Beto men L',
    '8 Ulises men XL',
  ])
})

test.each([
  'se me pasó mi hermano Ulises, XG, número 8',
  'faltó Ulises, número 8, XG',
  'se les olvidó Ulises, el 8, XG',
  'me faltó uno: Ulises 8 XG',
  'mi hermano Ulises no aparece, es el 8, XG',
])('alguien que faltaba: %s', async (words) => {
  const { rows, played } = await heard('es', [...lista, words])
  expect(rows[3]).toBe('8 Ulises men XL')
  expect(played.conversation.draft.day).toBeUndefined()
})

test('who was left out without a number is on the list, and the number is asked', async () => {
  const { rows, played } = await heard('en', [
    ...list,
    'need them Jan 20 at 10 in the morning',
    'my brother Ulises was left out, XL',
  ])
  expect(rows[3]).toBe('Ulises men XL')
  expect(played.replies.at(-1)?.code).toBe('ask-numbers')
})

test.each([
  'is Ulises 8 an XL?',
  "if Ulises joins he'd be 8 in XL",
  'maybe add Ulises 8 XL later',
  'also Josia should be XL',
  'Coach Dana said size L runs small on 3 kids',
  'call Dana Boone at 3, she has the L samples',
])('nobody is put on the list by: %s', async (words) => {
  expect((await heard('en', [...list, words])).rows).toHaveLength(3)
})

test('pieces that are counted for somebody are nobody’s number', async () => {
  expect((await heard('en', ['Hi its Rosa, 3 M tees please'])).rows).toEqual(['men M x3'])
  expect((await heard('en', ['For the Lancers, 12 youth M, red'])).rows).toEqual(['youth M x12'])
})
