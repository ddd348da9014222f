import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: ['Navy jerseys, white number on the back and last names above it\n7 Urdaneta L\n13 Ochoa XL\n34 Bracho L'],
  es: ['Camisetas azul marino, número blanco atrás y apellido arriba\n7 Urdaneta L\n13 Ochoa XL\n34 Bracho L'],
} as const

const listed = async (language: 'en' | 'es', words: string) => {
  const { played } = await heard(language, [...first[language], words])
  return played.composed.order.roster.map(({ number, name, size }) => [number, name, size].join(' '))
}

test.each([
  ['en', 'Bracho just quit on us'],
  ['en', 'Bracho has left the team'],
  ['en', 'Bracho moved to another team'],
  ['es', 'Bracho se nos va del país'],
  ['es', 'Bracho nos deja'],
  ['es', 'Bracho se cambió de escuela'],
] as const)('(%s) %j: who leaves is off the list', async (language, words) => {
  expect(await listed(language, words)).toEqual(['7 Urdaneta L', '13 Ochoa XL'])
})

test.each([
  ['en', 'Bracho just quit on us, in his place comes Villasmil, same number, size M'],
  ['es', 'Bracho se nos va del país, en su lugar entra Villasmil, mismo número pero talla M'],
  ['es', 'Bracho se cambió de escuela y entra Villasmil con el mismo número, talla M'],
] as const)('(%s) %j: who comes has the number', async (language, words) => {
  expect(await listed(language, words)).toEqual(['7 Urdaneta L', '13 Ochoa XL', '34 Villasmil M'])
})

test.each([
  ['en', 'we are running out of time, please hurry'],
  ['es', 'se nos va el tiempo, apúrenle por favor'],
] as const)('(%s) %j: nobody leaves', async (language, words) => {
  expect(await listed(language, words)).toHaveLength(3)
})
