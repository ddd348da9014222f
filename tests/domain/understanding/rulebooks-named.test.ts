import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = (language: 'en' | 'es', sport: string): string =>
  language === 'en'
    ? `2 black mesh ${sport} jerseys with white numbers on the back\n4 Abel M\n5 Cid L`
    : `2 jerseys de malla negros de ${sport} con números blancos atrás\n4 Abel M\n5 Cid G`

test.each([
  ['en', 'soccer', 'use the NFHS rule book', 'nfhs-soccer'],
  ['en', 'soccer', 'NFHS rules', 'nfhs-soccer'],
  ['en', 'soccer', 'we play NFHS soccer', 'nfhs-soccer'],
  ['en', 'soccer', 'FIFA rules please', 'fifa-soccer'],
  ['en', 'soccer', 'rules of the UEFA', 'uefa-soccer'],
  ['en', 'basketball', 'it has to be NCAA legal', 'ncaa-basketball'],
  ['en', 'basketball', 'we play under NFHS rules', 'nfhs-basketball'],
  ['en', 'basketball', 'FIBA regulations', 'fiba-basketball-current'],
  ['en', 'volleyball', 'the rule book is NFHS', 'nfhs-volleyball'],
  ['es', 'futbol', 'jugamos con reglas FIFA', 'fifa-soccer'],
  ['es', 'futbol', 'las reglas de la FIFA', 'fifa-soccer'],
  ['es', 'futbol', 'con el reglamento UEFA', 'uefa-soccer'],
  ['es', 'basquetbol', 'según el reglamento de la FIBA', 'fiba-basketball-current'],
  ['es', 'voleibol', 'jugamos FIVB', 'fivb-volleyball'],
  ['en', 'basketball', 'our league goes by NFHS', 'nfhs-basketball'],
  ['en', 'basketball', 'the tournament follows the NCAA', 'ncaa-basketball'],
  ['es', 'futbol', 'la liga se rige por la FIFA', 'fifa-soccer'],
] as const)('%s, %s: "%s" chooses a rule book and prints nothing', async (language, sport, words, book) => {
  const before = (await heard(language, [order(language, sport)])).played.composed.order
  const after = (await heard(language, [order(language, sport), words])).played.composed.order
  expect(after.rulebook).toBe(book)
  expect(after.decorations).toEqual(before.decorations)
})

test.each([
  ['en', 'NCAA rules'],
  ['en', 'we play under ABCD rules'],
  ['es', 'con el reglamento NCAA'],
  ['es', 'jugamos con reglas de la LXM'],
] as const)('%s: "%s" is no rule book of the shop for soccer, and it is said who looks at it', async (language, words) => {
  const sport = language === 'en' ? 'soccer' : 'futbol'
  const before = (await heard(language, [order(language, sport)])).played.composed.order
  const { played } = await heard(language, [order(language, sport), words])
  expect(played.composed.order).toEqual(before)
  expect(played.replies.map(({ code }) => code)).toContain('rulebook-unknown')
})

test.each([
  ['en', 'my son goes by JAX'],
  ['es', 'en casa usamos LED'],
] as const)('%s: "%s" names no rule book', async (language, words) => {
  const { played } = await heard(language, [order(language, language === 'en' ? 'soccer' : 'futbol'), words])
  expect(played.composed.order.rulebook).toBeUndefined()
  expect(played.replies.map(({ code }) => code)).not.toContain('rulebook-unknown')
})

test.each(['LARKS across the front', 'write NFHS on the front'])('"%s" is printed', async (words) => {
  const { order: found } = (await heard('en', [order('en', 'soccer'), words])).played.composed
  expect(found.rulebook).toBeUndefined()
  expect(found.decorations.some(({ place }) => place === 'full-front')).toBe(true)
})
