import { expect, test } from 'vitest'
import { openOf, play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Today is Friday, 20 November 2026. */
const shop = await starterShop()

const needBy = (language: 'en' | 'es', ...says: readonly string[]) => {
  const played = play({ id: 'then', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return { at: played.composed.order.needBy, open: openOf(played).find(({ about }) => about === 'needBy')?.readings }
}

test.each([
  ['es', 'el camión sale el jueves 10 de diciembre a las 6 de la mañana, los necesitamos para esa hora', '2026-12-10T06:00'],
  ['es', 'salimos en camion el 3 de diciembre a las 5 de la tarde asi que las ocupo para entonces', '2026-12-03T17:00'],
  ['es', 'entrenamos el lunes 30 a las 4 de la tarde y los necesito para ese entrenamiento', '2026-11-30T16:00'],
  [
    'es',
    'el partido es el sábado 5 de diciembre pero el camión sale el viernes 4 a las 3 de la tarde, los necesito antes de eso',
    '2026-12-04T15:00',
  ],
  ['es', 'el torneo es el 12 de diciembre a las 9 de la mañana, los ocupamos para esa hora', '2026-12-12T09:00'],
  [
    'es',
    'el juego es el domingo 13 de diciembre, entrenamos el martes 8 a las 6 de la tarde y para esa hora las queremos',
    '2026-12-08T18:00',
  ],
  ['en', 'the bus leaves Thursday December 10 at 6am, we need them by then', '2026-12-10T06:00'],
  ['en', 'our bus leaves Dec 3 at 5pm so I need them before that', '2026-12-03T17:00'],
  ['en', 'last practice is Monday Nov 30 at 4pm and we want them by then', '2026-11-30T16:00'],
  ['en', 'game is Saturday Dec 5 but the bus leaves Friday Dec 4 at 3pm, need them by that time', '2026-12-04T15:00'],
  ['en', 'The tournament is December 12 at 9am, we need the shirts by then', '2026-12-12T09:00'],
] as const)('%s: %s', (language, text, at) => {
  expect(needBy(language, text)).toEqual({ at, open: undefined })
})

test.each([
  ['es', 'el camión sale el viernes 4 de diciembre a las 3 de la tarde'],
  ['es', 'entrenamos el lunes 30 a las 4 de la tarde, para entonces ya hará frío'],
  ['es', 'ayer lavamos los otros, para ese dia ya estaban feos'],
  ['en', 'the bus leaves Friday Dec 4 at 3pm'],
  ['en', 'practice is Monday Nov 30 at 4pm, it will be cold by then'],
] as const)('%s: "%s" says no day', (language, text) => {
  expect(needBy(language, text)).toEqual({ at: undefined, open: undefined })
})

test('a day said for itself stays beside one that is pointed at', () => {
  const words = 'el camión sale el viernes 4 a las 3 de la tarde, los necesito el jueves 3 a las 6 de la tarde'
  expect(needBy('es', words).at).toBe('2026-12-03T18:00')
})

test.each([
  ['es', 'los necesito el jueves 24 a las 5 de la tarde', '2026-12-24T17:00'],
  ['es', 'las ocupo el martes 22 a las 4 de la tarde', '2026-12-22T16:00'],
  ['es', 'las ocupamos el miércoles 25 a mediodía', '2026-11-25T12:00'],
  ['es', 'los queremos el sábado 28 a las 10 de la mañana', '2026-11-28T10:00'],
  ['es', 'los queremos el lunes 28 a las 10 de la mañana', '2026-12-28T10:00'],
  ['en', 'need them Friday the 25th by 5pm', '2026-12-25T17:00'],
  ['en', 'we need them Monday the 28th at noon', '2026-12-28T12:00'],
  ['en', 'we need them Saturday the 28th at noon', '2026-11-28T12:00'],
  ['en', 'need these by Thursday the 26th, 4pm', '2026-11-26T16:00'],
  ['en', 'need these Thursday the 10th at 4pm', '2026-12-10T16:00'],
] as const)('%s: a day of the month on the weekday that is said beside it: %s', (language, text, at) => {
  expect(needBy(language, text)).toEqual({ at, open: undefined })
})
