import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

/** It is Friday, November 20, ten o'clock. */
const told = async (language: 'en' | 'es', words: string) => {
  const { played } = await heard(language, [language === 'en' ? 'navy tees' : 'playeras negras', words])
  const { day, hour } = played.conversation.draft
  return [day, hour].filter((part) => part !== undefined).join('T')
}

test.each([
  ["i'd come for them two weeks from tomorrow at 4pm", '2026-12-05T16:00'],
  ['pickup a week from today at 3pm', '2026-11-27T15:00'],
  ['three weeks from Monday at noon works', '2026-12-14T12:00'],
  ['can we get them ten days from now at 10am', '2026-11-30T10:00'],
  ['a fortnight from tomorrow, noon', '2026-12-05T12:00'],
  ['need them in two weeks, by 5pm', '2026-12-04T17:00'],
  ['we need them one month from today at 2pm', '2026-12-20T14:00'],
])('a day counted from another in English: %j', async (words, moment) => {
  expect(await told('en', words)).toBe(moment)
})

test.each([
  ['las recojo yo de hoy en dos semanas, a las 12 del mediodía', '2026-12-04T12:00'],
  ['las ocupo de mañana en ocho días a las 4 de la tarde', '2026-11-28T16:00'],
  ['de hoy en ocho a las 5 de la tarde', '2026-11-27T17:00'],
  ['paso del lunes en quince a mediodía', '2026-12-07T12:00'],
  ['dos semanas a partir de mañana, a las 6 pm', '2026-12-05T18:00'],
  ['dentro de tres semanas a las 10 de la mañana', '2026-12-11T10:00'],
])('a day counted from another in Spanish: %j', async (words, moment) => {
  expect(await told('es', words)).toBe(moment)
})

test.each([
  ['en', 'the deadline is noon on the nineteenth of january', '2027-01-19T12:00'],
  ['en', 'pick up on the 19th of January at noon', '2027-01-19T12:00'],
  ['en', 'we need them by the twenty-second at four in the afternoon', '2026-11-22T16:00'],
  ['en', 'pick up december tenth at five pm', '2026-12-10T17:00'],
  ['es', 'las ocupamos el veintitrés de diciembre a las doce del día', '2026-12-23T12:00'],
  ['es', 'el martes veinticuatro a las tres de la tarde', '2026-11-24T15:00'],
] as const)('a day in words, %s: %j', async (language, words, moment) => {
  expect(await told(language, words)).toBe(moment)
})

test.each([
  ['en', 'we washed them three times from the start'],
  ['en', 'they are from the second grade'],
  ['en', 'we took the third place from tomorrow river'],
  ['es', 'son del cinco veces campeón'],
  ['es', 'somos de primero de primaria'],
] as const)('no day is counted, %s: %j', async (language, words) => {
  expect(await told(language, words)).not.toMatch(/^2026-(?:11-2[2-9]|12)/)
})
