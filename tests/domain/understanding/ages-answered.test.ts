import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Answers to "is anyone 12 or younger, under 3?", said as people say them; children's products end at 12 (CPSIA, 15 U.S.C. 2052). */
const shop = await starterShop()

const bases = {
  en: '3 navy soccer jerseys for the Marsh Harriers, white numbers on the back, need them Dec 12 at 5pm, Dana Whitlow ordering\n1 Ana YM\n2 Bea YM\n12 Cleo YL',
  es: '3 jerseys de futbol azul marino para los Gavilanes de Anáhuac, numeros blancos atras, los necesito el 12 de diciembre a las 5 de la tarde, soy Dana Ortiz\n1 Ana YM\n2 Bea YM\n12 Cleo YL',
} as const

const agesAfter = (language: 'en' | 'es', answer: string): readonly (string | undefined)[] => {
  const says = [bases[language], answer]
  const { conversation } = play({ id: 'ages', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const rows = Object.values(conversation.draft.rows).map(({ age }) => age)
  return [conversation.draft.ages, ...rows]
}

const everybody = {
  en: [
    ['they are all 12 and up', 'mixed'],
    ['12 and up', 'mixed'],
    ['all of them are 12 and up', 'mixed'],
    ['everyone is 14 and up', '13-up'],
    ['14 and older', '13-up'],
    ['14+', '13-up'],
    ['all 13+', '13-up'],
    ['they are 14-15', '13-up'],
    ['all 15 or 16', '13-up'],
    ['they are 12 to 14', 'mixed'],
    ['they are all 10', '3-12'],
    ['10 and 11 year olds', '3-12'],
    ['9-11', '3-12'],
    ['U12', '3-12'],
    ['12U', '3-12'],
    ['12 and under', '3-12'],
    ['nobody', '13-up'],
    ['no', '13-up'],
    ['nobody is under 13', '13-up'],
    ['nobody is over 12', '3-12'],
    ['no one is older than 10', '3-12'],
    ['nope all teens', '13-up'],
    ['all high schoolers', '13-up'],
    ['freshmen', '13-up'],
    ['middle school', 'mixed'],
    ['6th graders', '3-12'],
    ['8th grade', '13-up'],
    ['yes all of them', '3-12'],
    ['yes', 'mixed'],
    ['some are 12', 'mixed'],
    ['everybody is over 13', '13-up'],
    ['all 8 year olds', '3-12'],
    ['they are all 2 years old', 'under-3'],
    ['all under 3', 'under-3'],
    ['2 and under', 'under-3'],
    ['nobody is under 3', 'mixed'],
    ['no one is younger than 2', 'mixed'],
  ],
  es: [
    ['todas tienen 12 o más', 'mixed'],
    ['de 14 para arriba', '13-up'],
    ['todas mayores de 14', '13-up'],
    ['14 en adelante', '13-up'],
    ['tienen 14 y 15', '13-up'],
    ['todas de 10', '3-12'],
    ['tienen entre 9 y 11', '3-12'],
    ['sub 12', '3-12'],
    ['nadie', '13-up'],
    ['no, todas son grandes', '13-up'],
    ['nadie es mayor de 12', '3-12'],
    ['ninguna pasa de 11', '3-12'],
    ['nadie es menor de 13', '13-up'],
    ['nadie es menor de 3', 'mixed'],
    ['todas menores de 3', 'under-3'],
    ['son de prepa', '13-up'],
    ['son de secundaria', 'mixed'],
    ['sí, todas', '3-12'],
    ['sí', 'mixed'],
    ['algunas tienen 12', 'mixed'],
    ['son niñas de 8 años', '3-12'],
    ['ya todas cumplieron 13', '13-up'],
  ],
} as const

test.each(everybody.en)('%s: %s', (answer, age) => {
  expect(agesAfter('en', answer)[0]).toBe(age)
})

test.each(everybody.es)('%s: %s', (answer, age) => {
  expect(agesAfter('es', answer)[0]).toBe(age)
})

test.each([
  ['en', 'just Ana', ['13-up', '3-12', undefined, undefined]],
  ['en', 'Ana and Bea are 12', ['mixed', '3-12', '3-12', undefined]],
  ['en', 'Bea is 11, the others are 13', ['13-up', undefined, '3-12', undefined]],
  ['en', 'Bea is 11 and the rest are 14', ['13-up', undefined, '3-12', undefined]],
  ['es', 'nomás Ana', ['13-up', '3-12', undefined, undefined]],
  ['es', 'Bea tiene 11, las demás 13', ['13-up', undefined, '3-12', undefined]],
] as const)('%s: %s tells of players by name, and renumbers nobody', (language, answer, ages) => {
  expect(agesAfter(language, answer)).toEqual(ages)
})

test.each([
  ['en', 'make Bea #11'],
  ['en', 'Ana is a youth L'],
  ['en', '14 Dee YM'],
  ['es', 'Bea lleva el 11'],
] as const)('%s: %s is no answer', (language, answer) => {
  expect(agesAfter(language, answer)[0]).toBeUndefined()
})
