import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['en', '3 white tees, red name on the back', 'Lily 2T\nMaya 3T\nZoe 5T'],
  ['en', '3 white toddler tees, red name on the back', 'Lily, Maya, Zoe'],
  ['en', '3 white tees for toddlers, sizes 2T-5T, red name on the back', 'Lily\nMaya\nZoe'],
  ['es', '3 playeras blancas, nombre rojo atrás', 'Luz 2T\nMaya 3T\nZoe 5T'],
] as const)('(%s) "%s", "%s": the tee that comes in their sizes', async (language, ...says) => {
  const { played } = await heard(language, says)
  expect(played.composed.order.garments.map(({ catalogue }) => catalogue)).toEqual(['toddler-tee'])
})

test.each([
  ['en', '3 white tees, red name on the back', '4 Lily M\n5 Maya L\n6 Zoe S'],
  ['en', '3 white tees, red name on the back', '4 Lily YM\n5 Maya 2T\n6 Zoe L'],
  ['es', '3 playeras blancas, nombre rojo atrás', '4 Luz M\n5 Maya G\n6 Zoe CH'],
] as const)('(%s) "%s", "%s": the usual one', async (language, ...says) => {
  const { played } = await heard(language, says)
  expect(played.composed.order.garments.map(({ catalogue }) => catalogue)).not.toEqual(['toddler-tee'])
})

test.each([
  ['en', '12 black tees, sizes S to XL, white numbers on the back'],
  ['en', '12 black tees in S, M and L with white numbers on the back'],
  ['en', '15 black tees for toddlers, 2T-5T, white numbers on the back'],
  ['es', '12 playeras negras de la S a la XL con números blancos atrás'],
  ['es', '12 playeras negras, tallas CH, M y G, números blancos atrás'],
] as const)('(%s) "%s": one of several sizes is not that of all', async (language, words) => {
  const { played } = await heard(language, [words])
  expect(played.conversation.draft.garments['tee']?.size).toBeUndefined()
})

test.each([
  ['en', '12 black tees, size XL, white numbers on the back', 'XL'],
  ['es', '8 playeras negras para bebés, talla 2T, con el nombre blanco atrás', '2T'],
] as const)('(%s) "%s": one size is', async (language, words, size) => {
  const { played } = await heard(language, [words])
  expect(played.conversation.draft.garments['tee']?.size).toBe(size)
})

test.each([
  ['en', '12 pink tees for 2 year olds with white numbers and rhinestones', 'under-3'],
  ['en', 'pink tees for 2-year-olds with rhinestones', 'under-3'],
  ['en', 'a pink tee for my two year old with rhinestones', 'mixed'],
  ['en', '12 pink tees for kids ages 2 to 4 with stones', 'mixed'],
  ['en', 'jerseys for ages 8-10', '3-12'],
  ['en', 'tees for the 10 year old boys', '3-12'],
  ['es', '12 playeras rosas para niñas de 2 años con piedras', 'under-3'],
  ['es', 'playera para mi niña de 2 añitos con piedras', 'mixed'],
  ['es', 'playeras para bebés de 18 meses con piedras', 'under-3'],
  ['es', 'playeras con piedras, edades de 2 a 4', 'mixed'],
] as const)('(%s) "%s": who wears them is so old', async (language, words, ages) => {
  const { played } = await heard(language, [words])
  expect(played.conversation.draft.ages).toBe(ages)
})

test.each([
  ['en', "we've been customers for 2 years, 12 navy jerseys"],
  ['en', '12 navy jerseys with 2 inch numbers'],
  ['es', 'hace 2 años nos hicieron 12 jerseys'],
] as const)('(%s) "%s" tells no ages', async (language, words) => {
  const { played } = await heard(language, [words])
  expect(played.conversation.draft.ages).toBeUndefined()
})
