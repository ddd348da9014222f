import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: 'white jerseys, navy number front and back, no names',
  es: 'jersey blanco, número azul marino adelante y atrás, sin nombres',
}

test.each([
  [
    'en',
    'the list is seven medium eleven small fourteen large and double zero extra small all womens',
    ['7 women M', '11 women S', '14 women L', '00 women XS'],
  ],
  ['en', '7 medium 11 small oh nine large', ['7 men M', '11 men S', '09 men L']],
  ['en', 'number 7 medium number 11 small number 14 large', ['7 men M', '11 men S', '14 men L']],
  [
    'es',
    'anote el siete mediana el doce chica el catorce grande y el doble cero extra chica todas de dama',
    ['7 women M', '12 women S', '14 women L', '00 women XS'],
  ],
  [
    'es',
    'el siete es chica, el cinco mediana, el cero nueve grande y el setenta y uno ese ya es extra grande',
    ['7 men S', '5 men M', '09 men L', '71 men XL'],
  ],
  ['es', 'el 7 M el 12 CH el 14 G', ['7 men M', '12 men S', '14 men L']],
  ['es', 'la 3 chica, la 8 grande y la 10 mediana, todas de dama', ['3 women S', '8 women L', '10 women M']],
] as const)('(%s) numbers and sizes dictated in turn: %s', async (language, words, rows) => {
  expect((await heard(language, [order[language], words])).rows).toEqual(rows)
})

test.each([
  ['en', 'seven medium eleven small fourteen large, all womens'],
  ['es', 'siete medianas once chicas y catorce grandes'],
] as const)('(%s) without a nought or an article such figures are no numbers for sure: %s', async (language, words) => {
  const { rows } = await heard(language, [order[language], words])
  expect(rows.some((row) => /^(?:7|11|14) /.test(row))).toBe(false)
})

const list = { en: '#7 M\n#11 S\n#14 L', es: '#7 M\n#11 CH\n#14 G' }

test.each([
  ['en', 'sorry not eleven, twelve', ['7 men M', '12 men S', '14 men L']],
  ['en', 'oops, not 11, 12', ['7 men M', '12 men S', '14 men L']],
  ['en', 'not fourteen, forty', ['7 men M', '11 men S', '40 men L']],
  ['es', 'no el once, el doce', ['7 men M', '12 men S', '14 men L']],
  ['es', 'perdón, no el 14, el 15', ['7 men M', '11 men S', '15 men L']],
  ['en', 'I did not order 11, 12 or 13 jackets', ['7 men M', '11 men S', '14 men L']],
  ['en', 'not 11, 14', ['7 men M', '11 men S', '14 men L']],
] as const)('(%s) a number told anew behind a comma: %s', async (language, words, rows) => {
  expect((await heard(language, [order[language], list[language], words])).rows).toEqual(rows)
})
