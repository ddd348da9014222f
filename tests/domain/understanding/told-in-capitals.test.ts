import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const textsAfter = async (language: 'en' | 'es', words: string) => {
  const { order } = (await heard(language, [words])).played.composed
  return order.decorations.map(({ content, layers }) => [
    content?.kind === 'text' ? content.text : '',
    ...(layers ?? []).map((layer) => `${layer?.kind} ${layer?.colour}`),
  ])
}

test.each([
  ['es', 'camisetas negras q digan LLANO GRANDE enfrente en blanco', ['LLANO GRANDE', 'vinyl white']],
  ['es', 'playeras negras con la leyenda SOMOS UNO en el pecho en rojo', ['SOMOS UNO', 'vinyl red']],
  ['es', 'sudaderas grises que digan GRANDE ES MI FE atrás en negro', ['GRANDE ES MI FE', 'vinyl black']],
  ['en', 'black tees that say TEAM ONE on the front in white', ['TEAM ONE', 'vinyl white']],
  ['en', 'black tees, they should say SMALL TOWN on the back in gold', ['SMALL TOWN', 'vinyl gold']],
  ['es', 'camisetas negras q digan LLANO GRANDE enfrente, en pura piedra sin vinil', ['LLANO GRANDE', 'stones crystal']],
  ['es', 'playeras negras q digan SANTA ANA en la espalda, puro cristal, sin vinil', ['SANTA ANA', 'stones crystal']],
  ['en', 'black tees that say RIO BRAVO on the front, all rhinestones, no vinyl', ['RIO BRAVO', 'stones crystal']],
] as const)('%s: capitals behind a word that tells what to write are written: %s', async (language, words, text) => {
  expect(await textsAfter(language, words)).toEqual([text])
})

test('a size in capitals behind what is written is no part of it', async () => {
  const { played } = await heard('es', ['playeras negras que digan LOBOS XL'])
  expect(played.conversation.draft.marks).toMatchObject({ 'full-front': { text: 'LOBOS' } })
})

const orders = { es: 'playeras negras que digan LOBOS atrás en blanco', en: 'black tees that say LOBOS on the back in white' }

test.each([
  ['es', '6 de dama en chica y 4 de dama en mediana', ['women S x6', 'women M x4']],
  ['es', '3 de hombre en grande, 2 de dama en chica y 1 de niño en mediana', ['men L x3', 'women S x2', 'youth M']],
  ['es', 'en chica 3 de dama, en grande 2 de hombre', ['women S x3', 'men L x2']],
  ['es', 'serían 5 chicas de mujer y 2 de hombre extra grande', ['women S x5', 'men XL x2']],
  ['es', 'de dama 3 chicas y 2 medianas, de hombre 4 grandes', ['women S x3', 'women M x2', 'men L x4']],
  ['en', '6 womens in small and 4 womens in medium', ['women S x6', 'women M x4']],
  ['en', '3 men in large, 2 women in small', ['men L x3', 'women S x2']],
  ['en', 'in small 3 womens, in large 2 mens', ['women S x3', 'men L x2']],
] as const)('%s: cut and size of what is counted in a message of its own: %s', async (language, words, rows) => {
  expect((await heard(language, [orders[language], words])).rows).toEqual(rows)
})
