import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = { en: 'red jerseys, white number on the back', es: 'camisetas rojas, número blanco atrás' }

test.each([
  ['en', 'Toomey 14 L, Greer 6 S, both womens', ['14 Toomey women L', '6 Greer women S']],
  ['en', '1 Okonjo L\n5 Fairbanks M\n9 Rusk S\nwomens', ['1 Okonjo women L', '5 Fairbanks women M', '9 Rusk women S']],
  [
    'en',
    '1 Okonjo L\n5 Fairbanks youth M\n9 Rusk 2XL\nwomens sizes',
    ['1 Okonjo women L', '5 Fairbanks youth M', '9 Rusk women 2XL'],
  ],
  ['es', 'entran Belmonte 14 G y Osuna 6 CH, las dos de dama', ['14 Belmonte women L', '6 Osuna women S']],
  ['es', '1 Ocampo G\n5 Farfán M\nde dama', ['1 Ocampo women L', '5 Farfán women M']],
  ['es', '1 Ocampo G, 5 Farfán M, 9 Rosado CH, las tres de niña', ['1 Ocampo youth L', '5 Farfán youth M', '9 Rosado youth S']],
  ['en', '1 Okonjo L\n5 Fairbanks M\n9 Guy S', ['1 Okonjo men L', '5 Fairbanks men M', '9 Guy men S']],
  ['en', 'Womens\n1 Okonjo L\n5 Fairbanks M\nMens\n9 Guy S', ['1 Okonjo women L', '5 Fairbanks women M', '9 Guy men S']],
  ['es', '1 Ocampo G\n5 Farfán M\n9 Damián CH', ['1 Ocampo men L', '5 Farfán men M', '9 Damián men S']],
] as const)('(%s) a cut behind a list is of its players, and nobody: %s', async (language, words, rows) => {
  expect((await heard(language, [order[language], words])).rows).toEqual(rows)
})

test.each([
  ['en', 'mens: 1 Okonjo L, 5 Fairbanks M', 'add Toomey 14 L, Greer 6 S, both womens', ['men', 'men', 'women', 'women']],
  [
    'es',
    '1 Ocampo hombre G\n5 Farfán hombre M',
    'agrega a Belmonte 14 G y a Osuna 6 CH, las dos de dama',
    ['men', 'men', 'women', 'women'],
  ],
] as const)('(%s) whoever stood on the list before keeps their cut: %s, %s', async (language, list, words, fits) => {
  const { roster } = (await heard(language, [order[language], list, words])).played.composed.order
  expect(roster.map(({ fit }) => fit)).toEqual(fits)
})
