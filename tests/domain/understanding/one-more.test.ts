import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: [
    'playeras rosas que digan JULIETA adelante en plateado, sin número',
    '1 talla 2T\n2 talla 3T\n3 de dama M\n2 de hombre XG',
  ],
  en: ['pink tees that say JULIETA on the front in silver, no numbers', '1 2T\n2 3T\n3 womens M\n2 mens XL'],
}
const was = ['toddler 2T', 'toddler 3T x2', 'women M x3', 'men XL x2']

test.each([
  ['es', 'y agrégale una de hombre en XXL que también viene mi compadre', [...was, 'men 2XL']],
  ['es', 'súmale 2 de dama chica', [...was, 'women S x2']],
  ['es', 'otra de dama M porfa', was.with(2, 'women M x4')],
  ['es', 'agrega otra 3T', was.with(1, 'toddler 3T x3')],
  ['es', 'échale otra de dama L', [...was, 'women L']],
  ['es', 'se me olvidó una para mi suegra, dama XL', [...was, 'women XL']],
  ['es', 'quiero otra igual de hombre en 3XL', [...was, 'men 3XL']],
  ['es', 'ponle una más de hombre XG', was.with(3, 'men XL x3')],
  ['es', 'agréguenme 2 de hombre en M y una de dama en XL', [...was, 'men M x2', 'women XL']],
  ['en', 'and add one more mens in XXL', [...was, 'men 2XL']],
  ['en', 'we need another womens L', [...was, 'women L']],
  ['en', 'throw in an extra mens XL', was.with(3, 'men XL x3')],
  ['en', 'oh and one for my mother in law, womens XL', [...was, 'women XL']],
  ['en', 'plus one 2T', was.with(0, 'toddler 2T x2')],
  ['en', 'one more womens M please', was.with(2, 'women M x4')],
] as const)('%s: pieces put to a list of counts leave the others as they are: %s', async (language, words, rows) => {
  expect((await heard(language, [...orders[language], words])).rows).toEqual(rows)
})

test.each([
  ['es', '¿tienen otra en XL?'],
  ['es', 'otra talla no conozco'],
  ['en', 'do you have another in XL?'],
] as const)('%s: a question adds nothing: %s', async (language, words) => {
  expect((await heard(language, [...orders[language], words])).rows).toEqual(was)
})
