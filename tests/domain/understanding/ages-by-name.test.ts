import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const agesOf = async (language: 'en' | 'es', says: readonly string[]) => {
  const { roster } = (await heard(language, says)).played.composed.order
  return roster.map(({ name, number, age }) => `${name ?? ''}${number ?? ''} ${age}`)
}

const list = {
  en: [
    'red toddler tees, ROAR on the front in yellow, each first name on the back in yellow',
    'Beckett 3T\nJunie 2T\nOzzie 4T\nTalia youth S',
  ],
  es: [
    'playeritas rojas, SOL al frente en blanco y el nombre de cada quien atrás en blanco',
    'Beto 3T\nJuana 2T\nOlmo 4T\nTala CH de niña',
  ],
}

test.each([
  [
    'en',
    "Junie is 2, Beckett turns 3 that day (so still 2 now!), Ozzie's 4 and Talia's 7",
    ['Beckett under-3', 'Junie under-3', 'Ozzie 3-12', 'Talia 3-12'],
  ],
  [
    'en',
    'Junie and Beckett are 2, Ozzie is 4, Talia just turned 13',
    ['Beckett under-3', 'Junie under-3', 'Ozzie 3-12', 'Talia 13-up'],
  ],
  ['en', 'Junie is 2, Ozzie is 4. Need them Dec 20 at 4pm', ['Beckett unknown', 'Junie under-3', 'Ozzie 3-12', 'Talia unknown']],
  [
    'es',
    'Juana y Beto tienen 2 años, Olmo apenas cumple 3 en agosto y Tala tiene 6',
    ['Beto under-3', 'Juana under-3', 'Olmo under-3', 'Tala 3-12'],
  ],
  ['es', 'Juana tiene 2, Beto 3, Olmo 4 y Tala 7', ['Beto 3-12', 'Juana under-3', 'Olmo 3-12', 'Tala 3-12']],
  ['es', 'Olmo es 5T y Tala es M', ['Beto unknown', 'Juana unknown', 'Olmo unknown', 'Tala unknown']],
  ['en', 'Ozzie is a 5T and Talia is a medium', ['Beckett unknown', 'Junie unknown', 'Ozzie unknown', 'Talia unknown']],
] as const)('(%s) years by name where nobody wears a number: %s', async (language, words, ages) => {
  expect(await agesOf(language, [...list[language], words])).toEqual(ages)
})

test.each([
  [
    'en',
    ['red jerseys, white number on the back', 'Beckett YS\nJunie YM'],
    'Beckett is 2, Junie is 7',
    ['Beckett2 unknown', 'Junie7 unknown'],
  ],
  [
    'es',
    ['camisetas rojas, número blanco atrás', 'Beto CH de niño\nJuana M de niña'],
    'Beto es el 2 y Juana el 7',
    ['Beto2 unknown', 'Juana7 unknown'],
  ],
] as const)('(%s) where numbers are worn such figures are numbers', async (language, order, words, ages) => {
  expect(await agesOf(language, [...order, words])).toEqual(ages)
})

const counted = {
  en: ['red tees, ROAR on the front in yellow', 'youth: 2 S, 3 M'],
  es: ['playeras rojas, SOL al frente en blanco', 'de niño: 2 CH y 3 M'],
}

test.each([
  ['en', 'youngest is 6, oldest 8', '3-12'],
  ['en', 'the littlest one is 5 and the rest are 8 to 10', '3-12'],
  ['en', 'our oldest is 17, the youngest is 14', '13-up'],
  ['es', 'la más chiquita tiene 5 y las demás de 8 a 10', '3-12'],
  ['es', 'el menor tiene 13 y el mayor 17', '13-up'],
  ['es', 'el más chico tiene 2 y el más grande 11', 'unknown'],
  ['en', 'the youngest is 2, the oldest is 6', 'unknown'],
  ['es', 'la más chica es la 5 y la más grande la 8', 'unknown'],
] as const)('(%s) from the youngest to the oldest: %s', async (language, words, age) => {
  const ages = (await heard(language, [...counted[language], words])).played.composed.order.roster.map((row) => row.age)
  expect(new Set(ages)).toEqual(new Set([age]))
})
