import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: ['jersey gris con números rojos atrás', '4 Ana M\n7 Beto L\n12 Diego S'],
  en: ['grey jerseys, red numbers on the back', '4 Ana M\n7 Beto L\n12 Ida S'],
}
const lists = { es: ['4 Ana M', '7 Beto L', '12 Diego S'], en: ['4 Ana M', '7 Beto L', '12 Ida S'] }

const plain = (row: string): string => row.replace(' men ', ' ')

test.each([
  ['es', 'Diego ocupa otra en G'],
  ['es', 'la 7 quiere 2, M y G'],
  ['es', 'el 12 necesita dos, una CH y una M'],
  ['es', 'Ana también quiere otra playera, talla G'],
  ['es', 'ponle dos a Diego, una chica y una mediana'],
  ['es', 'una más para Ana, en XL'],
  ['es', 'Beto va a querer 2 jerseys, M y XL'],
  ['es', 'otra para Diego en M porfa'],
  ['es', 'Diego lleva dos: una M y una XG'],
  ['en', 'Beto needs another one in medium'],
  ['en', '#4 wants two, M and XL'],
  ['en', 'Ida needs two, one M one L'],
  ['en', 'an extra L for Ana please'],
  ['en', 'give Ida two, a medium and a large'],
  ['en', 'Beto gets 2, one M, one XL'],
  ['en', 'add a second shirt for Ida, L'],
  ['en', 'Ana wants one more, size L'],
  ['en', 'the 12 needs a second one in L'],
] as const)('%s: "%s" changes no size and no number, and is said back', async (language, words) => {
  const { rows, played } = await heard(language, [...orders[language], words])
  expect(rows.map(plain)).toEqual(lists[language])
  expect(played.replies.map(({ code }) => code)).toContain('words-unheard')
})

test.each([
  ['es', 'Diego ocupa otra en G, y la 4 es XL', ['4 Ana XL', '7 Beto L', '12 Diego S']],
  ['en', 'Ida needs two, one M one L. Beto is now 17', ['4 Ana M', '17 Beto L', '12 Ida S']],
] as const)('%s: "%s" changes what is said beside it', async (language, words, rows) => {
  expect((await heard(language, [...orders[language], words])).rows.map(plain)).toEqual(rows)
})

test.each([
  ['es', 'Beto ocupa una más chica, M', '7 Beto M'],
  ['es', 'Beto quiere otra talla, la XL', '7 Beto XL'],
  ['es', 'Beto necesita otro número, el 17', '17 Beto L'],
  ['en', 'Beto wants another number, 17', '17 Beto L'],
  ['en', 'Beto wants number 2', '2 Beto L'],
  ['en', 'Beto gets 3', '3 Beto L'],
  ['en', 'make the 7 a 3XL', '7 Beto 3XL'],
  ['en', 'swap 4 and 7, Beto gets 4 and Ana gets 7', '4 Beto L'],
  ['en', 'Beto needs an XL', '7 Beto XL'],
] as const)('%s: "%s" is of the one piece he has', async (language, words, row) => {
  expect((await heard(language, [...orders[language], words])).rows.map(plain)).toContain(row)
})
