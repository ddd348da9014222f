import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Today is Monday, 8 March 2027. */
const shop = await starterShop()

const daysOf = (language: 'en' | 'es', text: string) => {
  const { order } = play({ id: 'of-month', now: '2027-03-08T10:00', language, says: [text], facts: [] }, shop).composed
  return [order.needBy, order.gameDay]
}

test.each([
  ['en', 'we need them the last friday of march at noon', '2027-03-26T12:00'],
  ['en', 'can you have these by the first monday in april, 4pm', '2027-04-05T16:00'],
  ['en', 'pick up the third Wednesday of the month at 3 pm', '2027-03-17T15:00'],
  ['en', 'need it on the first monday of march at 5pm', '2028-03-06T17:00'],
  ['es', 'las ocupo el último viernes de marzo a mediodía', '2027-03-26T12:00'],
  ['es', 'para el segundo sábado de abril a las 10 de la mañana', '2027-04-10T10:00'],
  ['es', 'las quiero el primer lunes de mayo a las 4 de la tarde', '2027-05-03T16:00'],
  ['en', 'last friday I dropped off the shirts, need them march 19 at 4pm', '2027-03-19T16:00'],
  ['es', 'el viernes pasado les dejé las playeras, las ocupo el 19 de marzo a las 4 pm', '2027-03-19T16:00'],
] as const)('(%s) %j: a weekday counted within its month', (language, text, at) => {
  expect(daysOf(language, text)).toEqual([at, undefined])
})

test.each([
  ['es', 'para el viernes en ocho, a las 4 pm', '2027-03-19T16:00'],
  ['es', 'las ocupo este jueves en quince a las 4 de la tarde', '2027-03-25T16:00'],
  ['es', 'del martes en ocho, a las 3 de la tarde', '2027-03-16T15:00'],
  ['es', 'las paso a traer el miércoles en ocho días a las 5 pm', '2027-03-17T17:00'],
  ['en', 'a week from friday at 4pm', '2027-03-19T16:00'],
  ['es', 'el viernes en 8 a las 4 pm', '2027-03-19T16:00'],
  ['es', 'para el viernes en la tarde, a las 4', '2027-03-12T16:00'],
] as const)('(%s) %j: whole weeks behind a weekday', (language, text, at) => {
  expect(daysOf(language, text)[0]).toBe(at)
})

test.each([
  ['es', 'las necesito el 19 de marzo a las cuatro menos cuarto de la tarde', '2027-03-19T15:45'],
  ['es', 'el 19 de marzo a la una menos cuarto', '2027-03-19T12:45'],
  ['es', 'para el 19 de marzo a las 5 menos cuarto', '2027-03-19T16:45'],
  ['es', 'el viernes 19 de marzo 17 hs', '2027-03-19T17:00'],
  ['es', 'el viernes 19 de marzo, 16 hs por favor', '2027-03-19T16:00'],
  ['en', 'march 19, quarter to 5', '2027-03-19T16:45'],
  ['es', 'el 19 de marzo a las 5, menos las dos de niño', '2027-03-19T17:00'],
] as const)('(%s) %j: an hour less a quarter, and hours in short', (language, text, at) => {
  expect(daysOf(language, text)[0]).toBe(at)
})

test.each([
  ['en', "concert is friday march 19, I'd want them the day before after last bell, 3:45", '2027-03-18T15:45'],
  ['en', 'game is march 19, I need them the day before after last period, 3pm', '2027-03-18T15:00'],
  ['en', 'the meet is march 19 so the day before that, after our last class, at 4pm', '2027-03-18T16:00'],
  ['en', 'the parade is march 19, can I come the day before before my last shift at 2pm', '2027-03-18T14:00'],
  ['es', 'el concierto es el 19 de marzo, las quiero un día antes, después de la última clase, a las 4 pm', '2027-03-18T16:00'],
  ['es', 'el partido es el 19 de marzo, las paso a traer un día antes saliendo del último turno, 5 pm', '2027-03-18T17:00'],
] as const)('(%s) %j: what ends the day before is no day gone by', (language, text, at) => {
  expect(daysOf(language, text)).toEqual([at, '2027-03-19'])
})

test('what was had last is still no day of this order', () => {
  expect(daysOf('en', 'the last order was on march 19 and went fine')).toEqual([undefined, undefined])
  expect(daysOf('en', 'we got shirts last march, these are for april 2 at 4pm')).toEqual(['2027-04-02T16:00', undefined])
})
