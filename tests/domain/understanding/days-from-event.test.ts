import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Today is Friday, 20 November 2026; December 19 is a Saturday. Weeks begin on Monday (ISO 8601). */
const shop = await starterShop()

const daysOf = (language: 'en' | 'es', text: string) => {
  const { order } = play({ id: 'from-event', now: '2026-11-20T10:00', language, says: [text], facts: [] }, shop).composed
  return [order.needBy, order.gameDay]
}

test.each([
  ['en', 'home opener is sat dec 19, I want them two days before that, 6pm', '2026-12-17T18:00'],
  ['en', 'our match is Sat Dec 19, can I come two days earlier than that at 6 pm?', '2026-12-17T18:00'],
  ['en', 'the tournament is december 19 so we need them a week before, at noon', '2026-12-12T12:00'],
  ['en', 'game is dec 19, need them 3 days before by 5pm', '2026-12-16T17:00'],
  ['en', 'game is saturday december 19, day before is fine, 2 pm', '2026-12-18T14:00'],
  ['en', 'game is saturday december 19, we need them on the Tuesday of that week at 4pm', '2026-12-15T16:00'],
  ['es', 'el torneo es el sábado 19 de diciembre, las querría dos días antes, a las 18:00', '2026-12-17T18:00'],
  [
    'es',
    'la función es el sábado 19 de diciembre y las quiero tener una semana antes, a las 10 de la mañana',
    '2026-12-12T10:00',
  ],
  [
    'es',
    'el torneo es el sábado 19 de diciembre pero las ocupo desde el martes de esa semana, a la 1 de la tarde',
    '2026-12-15T13:00',
  ],
  [
    'es',
    'las fiestas empiezan el sábado 19 de diciembre, las quiero el lunes de esa semana a las 11 de la mañana',
    '2026-12-14T11:00',
  ],
] as const)('(%s) %j: counted from the day of the event', (language, text, at) => {
  expect(daysOf(language, text)).toEqual([at, '2026-12-19'])
})

test.each([
  ['en', 'we need them dec 18 at 5pm, that’s a friday', '2026-12-18T17:00'],
  ['en', 'need them december 18 by 5 pm, which is a Friday', '2026-12-18T17:00'],
  ['es', 'las necesito el 18 de diciembre a las 5 de la tarde, que es viernes', '2026-12-18T17:00'],
  ['es', 'para el 18 de diciembre a las 17:00, cae en viernes', '2026-12-18T17:00'],
] as const)('(%s) %j: the weekday of a day that is named is no other day', (language, text, at) => {
  expect(daysOf(language, text)[0]).toBe(at)
})

test.each([
  ['en', 'we need them in two weeks, friday at 5pm', undefined],
  ['es', 'los necesitamos el viernes 4 de diciembre a las 17:00, antes no', undefined],
] as const)('(%s) %j: nothing is counted back', (language, text, game) => {
  expect(daysOf(language, text)[1]).toBe(game)
})
