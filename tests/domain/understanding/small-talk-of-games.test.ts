import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const base = {
  en: '3 navy jerseys for the Marsh Harriers, white numbers on the back',
  es: '3 jerseys azules para los Gavilanes, números blancos atrás',
}

test.each([
  ['en', 'thanks! who do you like in the game saturday?'],
  ['en', "who's winning the match sunday lol"],
  ['en', 'are you guys watching the final on sunday'],
  ['en', 'did you see the game friday night?'],
  ['en', 'cool. you gonna watch the playoff game saturday'],
  ['en', "who's gonna win the championship sunday"],
  ['es', '¿a quién le vas en el partido del domingo?'],
  ['es', '¿quién crees que gane la final del sábado?'],
  ['es', 'oye ¿vas a ver el partido el domingo?'],
  ['es', '¿viste el juego del viernes?'],
] as const)('%s: “%s” is about no game of theirs', async (language, words) => {
  const { played } = await heard(language, [base[language], words])
  expect(played.conversation.draft.gameDay).toBeUndefined()
  expect(played.conversation.draft.day).toBeUndefined()
})

test.each([
  ['en', 'our game is sunday', '2026-11-22'],
  ['en', 'will you have them for the game on saturday?', '2026-11-21'],
  ['en', 'we need to win the game on saturday', '2026-11-21'],
  ['es', 'el partido es el domingo', '2026-11-22'],
  ['es', 'jugamos la final el sábado', '2026-11-21'],
] as const)('%s: “%s” is about their own: %s', async (language, words, day) => {
  const { played } = await heard(language, [base[language], words])
  expect([played.conversation.draft.gameDay, played.conversation.draft.day]).toContain(day)
})
