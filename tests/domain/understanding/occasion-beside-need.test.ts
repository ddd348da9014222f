import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Today is Sunday, 29 November 2026. The day of a show or a match is never later than the garments are needed because it was said last. */
const shop = await starterShop()

const daysOf = (language: 'en' | 'es', says: readonly string[]) => {
  const played = play({ id: 'beside', now: '2026-11-29T10:00', language, says, facts: [] }, shop)
  const { needBy, gameDay } = played.composed.order
  return [needBy ?? played.conversation.draft.day, gameDay]
}

test.each([
  ['en', ['first match sat 16 jan so friday at 5 would be perfect'], ['2027-01-15T17:00', '2027-01-16']],
  ['en', ['game is sat jan 16 so the friday at 5pm works'], ['2027-01-15T17:00', '2027-01-16']],
  ['es', ['el partido es el sábado 16 de enero así que el viernes a las 5 de la tarde'], ['2027-01-15T17:00', '2027-01-16']],
  ['es', ['jugamos el sábado 16 de enero así que viernes a las 5 de la tarde estaría bien'], ['2027-01-15T17:00', '2027-01-16']],
  ['en', ['tees for our dance recital 5 feb! need wed 3 feb by 3'], ['2027-02-03T15:00', '2027-02-05']],
  ['en', ['need wed 3 feb by 3, dance recital 5 feb!'], ['2027-02-03T15:00', '2027-02-05']],
  ['en', ['need wed 3 feb by 3pm', 'our dance recital is 5 feb'], ['2027-02-03T15:00', '2027-02-05']],
  [
    'es',
    ['las ocupo el miércoles 3 de febrero a las 3 pm, recital de danza el 5 de febrero'],
    ['2027-02-03T15:00', '2027-02-05'],
  ],
  // No other day is told, or the word of need stands with the occasion.
  ['en', ['tees for our dance recital 5 feb'], ['2027-02-05', undefined]],
  ['en', ['need them by wed 3 feb at 3pm for the recital'], ['2027-02-03T15:00', undefined]],
  ['en', ['the game was so much fun. need them friday dec 11 at 5pm'], ['2026-12-11T17:00', undefined]],
] as const)('%s: %j', (language, says, days) => {
  expect(daysOf(language, says)).toEqual(days)
})
