import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: "Hi, I'm Marigold. red jerseys, white number on the back, last names above it in white",
  es: 'hola, soy Trini. camisetas rojas, número blanco atrás y el apellido arriba en blanco',
}

test.each([
  [
    'en',
    "Vickers youth L with 7, Drennan same size with 19, Peters youth M and he's number 2, and then Lowry, 8, YL",
    ['7 Vickers youth L', '19 Drennan youth L', '2 Peters youth M', '8 Lowry youth L'],
  ],
  ['en', 'Quill wears 4 in a M, Abbot wears 11 in a L', ['4 Quill men M', '11 Abbot men L']],
  ['en', 'list: Quill L, number 4. Abbot, 11, XL', ['4 Quill men L', '11 Abbot men XL']],
  [
    'es',
    'Marval L con el 5, Ruza la misma talla con el 17, Peraza 2XL y usa el 44, Lugo M, el 9',
    ['5 Marval men L', '17 Ruza men L', '44 Peraza men 2XL', '9 Lugo men M'],
  ],
  ['es', 'Solís lleva el 3 y es CH, Ugarte lleva el 8 y es G', ['3 Solís men S', '8 Ugarte men L']],
  ['es', 'Solís, el 3, talla M y luego Ugarte, el 8, la misma talla', ['3 Solís men M', '8 Ugarte men M']],
] as const)('(%s) told one after the other in a sentence: %s', async (language, words, rows) => {
  expect((await heard(language, [order[language], words])).rows).toEqual(rows)
})

const named = {
  en: "Hi, I'm Marigold. red tees, each first name on the back in white",
  es: 'hola, soy Trini. playeras rojas con el nombre de cada quien atrás en blanco',
}

test.each([
  ['en', 'Jo M, Priyanka S, Bex XL, me L', ['Jo men M', 'Priyanka men S', 'Bex men XL', 'Marigold men L']],
  [
    'en',
    "Beckett 3T, Junie 2T and big cousin Talia who's a youth small",
    ['Beckett toddler 3T', 'Junie toddler 2T', 'Talia youth S'],
  ],
  ['en', 'gma Tilly S, uncle Bo 3XL, me (Corinne) M, my husband XL', ['Tilly men S', 'Bo men 3XL', 'Corinne men M', 'men XL']],
  ['es', 'Asun M, Pepi L, Vane S y yo XL', ['Asun men M', 'Pepi men L', 'Vane men S', 'Trini men XL']],
  ['es', 'tía Chabe L, tío Beto 3XL, mi esposo XL y la abuela Tila CH', ['Chabe men L', 'Beto men 3XL', 'men XL', 'Tila men S']],
] as const)('(%s) told by name and size, and who it is: %s', async (language, words, rows) => {
  expect((await heard(language, [named[language], words])).rows).toEqual(rows)
})

test.each([
  ['en', 'Jo said M, but Priyanka asked me for an L maybe'],
  ['en', 'is Jo an M, Bex an XL and me an L?'],
  ['es', 'Asun cree que M, Pepi duda entre M y L'],
] as const)('(%s) no list: %s', async (language, words) => {
  expect((await heard(language, [named[language], words])).rows.length).toBeLessThan(3)
})
