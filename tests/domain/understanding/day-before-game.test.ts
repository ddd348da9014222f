import { expect, test } from 'vitest'
import { openOf, play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Today is Friday, 20 November 2026. A weekday said beside the day of the game is the last one before it; common practice. */
const shop = await starterShop()

const needBy = (language: 'en' | 'es', says: readonly string[]) => {
  const played = play({ id: 'before', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return { at: played.composed.order.needBy, open: openOf(played).find(({ about }) => about === 'needBy')?.readings }
}

test.each([
  ['en', 'game is sat dec 19 at 9am so fri by 6 would be great', '2026-12-18T18:00'],
  ['en', 'need them friday by 6, our game is sat dec 19', '2026-12-18T18:00'],
  ['en', 'need them wednesday 5pm. first game dec 19', '2026-12-16T17:00'],
  ['en', 'game is 12/19, thursday at noon works', '2026-12-17T12:00'],
  ['en', 'Our tournament is the 12th, can we get them Thursday by 4pm?', '2026-12-10T16:00'],
  ['es', 'el partido es el sábado 19 de diciembre, los necesitamos el viernes a las 6 de la tarde', '2026-12-18T18:00'],
  ['es', 'los ocupo el jueves a las 5 de la tarde, el juego es el 12 de diciembre', '2026-12-10T17:00'],
  // Said with its own date, or of a game that has none, the weekday is what it says.
  ['en', 'need them Friday Dec 11 by 5, game is the 19th', '2026-12-11T17:00'],
  ['en', 'need them Thursday at 4pm, game is Saturday', '2026-11-26T16:00'],
  ['en', 'Need them by Thursday 4pm for a game on Saturday', '2026-11-26T16:00'],
  ['en', 'need these Wednesday at noon for the game on Saturday', '2026-11-25T12:00'],
  ['en', 'for our game on Saturday we need them by Thursday 4pm', '2026-11-26T16:00'],
  ['en', 'need them for the game on Saturday at 9am', '2026-11-21T09:00'],
  ['es', 'los necesito el jueves a las 4 de la tarde para el partido del sábado', '2026-11-26T16:00'],
  ['en', 'need them this Thursday at 4pm, game is dec 19', '2026-11-26T16:00'],
  ['en', 'need them Tuesday at 4pm, game is Wednesday Nov 25', '2026-11-24T16:00'],
] as const)('%s: %s', (language, text, at) => {
  expect(needBy(language, [text])).toEqual({ at, open: undefined })
})

test.each([
  ['en', ['our game is Dec 19', 'need them thursday by 6pm']],
  ['es', ['el partido es el 19 de diciembre', 'los necesitamos el jueves a las 6 de la tarde']],
] as const)('%s: %s is asked', (language, says) => {
  expect(needBy(language, says).open).toEqual(['2026-11-26T18:00', '2026-12-17T18:00'])
})
