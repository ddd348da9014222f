import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const counted = {
  en: '5 S, 6 M, 4 L gray tees with GO in white on the front',
  es: '5 CH, 6 M, 4 G playeras grises con VAMOS blanco al frente',
}
const list = {
  en: 'black tees, number on the back, names\n1 Ana M\n3 Bo S\n4 Cleo M',
  es: 'playeras negras, número atrás, nombres\n1 Ana M\n3 Bo CH\n4 Cleo M',
}

test.each([
  ['en', 'all the smalls are women the rest men', ['women S x5', 'men M x6', 'men L x4']],
  ['en', 'smalls are womens, everything else mens', ['women S x5', 'men M x6', 'men L x4']],
  ['en', "the S are women's", ['women S x5', 'men M x6', 'men L x4']],
  ['en', "the mediums and the larges are women's", ['men S x5', 'women M x6', 'women L x4']],
  ['es', 'las chicas son de mujer, las demás de hombre', ['women S x5', 'men M x6', 'men L x4']],
  ['es', 'las CH son corte de dama', ['women S x5', 'men M x6', 'men L x4']],
  ['es', 'las M y las G son de mujer', ['men S x5', 'women M x6', 'women L x4']],
] as const)('(%s) %j: the cut of these sizes alone', async (language, said, rows) => {
  expect((await heard(language, [counted[language], said])).rows).toEqual(rows)
})

test.each([
  ['en', '5 S, 6 M, 4 L. the smalls are women, the rest men', ['women S x5', 'men M x6', 'men L x4']],
  ['es', '5 CH, 6 M y 4 G. Las chicas son de mujer, el resto de hombre', ['women S x5', 'men M x6', 'men L x4']],
] as const)('(%s) %j: in the same message as the sizes', async (language, said, rows) => {
  const first = language === 'en' ? 'gray tees with GO in white on the front' : 'playeras grises con VAMOS blanco al frente'
  expect((await heard(language, [first, said])).rows).toEqual(rows)
})

test.each([
  ['en', 'the mediums are womens', ['1 Ana women M', '3 Bo men S', '4 Cleo women M']],
  ['en', 'those are womens', ['1 Ana women M', '3 Bo women S', '4 Cleo women M']],
  ['en', "these are all women's", ['1 Ana women M', '3 Bo women S', '4 Cleo women M']],
  ['es', 'esas son de mujer', ['1 Ana women M', '3 Bo women S', '4 Cleo women M']],
  ['es', 'las medianas son de mujer', ['1 Ana women M', '3 Bo men S', '4 Cleo women M']],
] as const)('(%s) %j: of a list too', async (language, said, rows) => {
  expect((await heard(language, [list[language], said])).rows).toEqual(rows)
})

test.each([
  ['en', 'the girls are small', ['1 Ana men M', '3 Bo men S', '4 Cleo men M']],
  ['en', 'those women are great', ['1 Ana men M', '3 Bo men S', '4 Cleo men M']],
  ['es', 'esas mujeres son grandes', ['1 Ana men M', '3 Bo men S', '4 Cleo men M']],
] as const)('(%s) %j tells of no cut', async (language, said, rows) => {
  expect((await heard(language, [list[language], said])).rows).toEqual(rows)
})
