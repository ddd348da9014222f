import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: ['orange jerseys, white number on the back, last names above it', '1 Ana M\n8 Bea L'],
  es: ['camisetas naranjas, número blanco atrás y el apellido arriba', '1 Ana M\n8 Bea L'],
}

test.each([
  ['es', 'la 8 lo deja, en su lugar viene una nueva con el 15 y talla S', ['1 Ana men M', '15 men S']],
  ['es', 'Bea nos deja, entra otra con el 15, talla S', ['1 Ana men M', '15 men S']],
  ['es', 'Bea se retira', ['1 Ana men M']],
  ['en', 'Bea quit, in her place a new girl, number 15, size S', ['1 Ana men M', '15 men S']],
  ['en', '8 quit. replaced by a new kid, 15, small', ['1 Ana men M', '15 men S']],
  ['en', 'Bea quit, in her place comes Dee, 15, S', ['1 Ana men M', '15 Dee men S']],
  ['es', 'Bea trae el lunes las medidas', ['1 Ana men M', '8 Bea men L']],
  ['es', 'la 8 nos deja, en su lugar va la 1', ['1 Ana men M']],
] as const)('(%s) somebody without a name in the place of one who leaves: %s', async (language, words, rows) => {
  expect((await heard(language, [...order[language], words])).rows).toEqual(rows)
})
