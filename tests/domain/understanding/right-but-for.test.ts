import { expect, test } from 'vitest'
import { completeOrders } from './complete-orders.ts'
import { heard } from './rows-of.ts'

const named: Readonly<Record<'en' | 'es', readonly (readonly [string, string])[]>> = {
  en: [
    ['Looks good except Ana', 'Ana'],
    ['all good except 2', '2'],
    ['everything is right except for Ana and Bea', 'Ana and Bea'],
    ['approved except Cleo', 'Cleo'],
    ['perfect but not 12', 'not 12'],
    ['looks great other than the 2', 'the 2'],
    ['all good apart from Bea', 'Bea'],
    ['sounds good, minus 12', '12'],
    ['looks good except the font is ugly', 'the font is ugly'],
  ],
  es: [
    ['va todo bien menos el 2', 'el 2'],
    ['todo bien excepto Ana', 'Ana'],
    ['todo perfecto menos el 12', 'el 12'],
    ['se ve bien salvo Bea', 'Bea'],
    ['está bien menos la 1 y la 2', 'la 1 y la 2'],
    ['todo correcto quitando el 2', 'el 2'],
    ['lo apruebo menos Cleo', 'Cleo'],
    ['todo bien pero el 2 no', 'el 2 no'],
    ['perfecto, nomás Ana no', 'Ana no'],
  ],
}

for (const language of ['en', 'es'] as const)
  test.each(named[language])(`${language}: "%s" moves no day, signs nothing and is asked for again`, async (words, rest) => {
    const before = await heard(language, completeOrders[language])
    const { played, rows } = await heard(language, [...completeOrders[language], words])
    expect(played.composed.order.needBy).toBe(before.played.composed.order.needBy)
    expect(rows).toEqual(before.rows)
    expect(played.conversation.signed).toBeNull()
    expect(played.replies).toContainEqual({ code: 'words-unheard', facts: { words: [rest] } })
  })

test.each([
  ['en', 'all good except Ana should be YL', '1 Ana youth L'],
  ['en', 'looks great but 1 is YL', '1 Ana youth L'],
  ['es', 'todo bien menos Ana, es YL', '1 Ana youth L'],
  ['es', 'va todo bien pero el 1 es YL', '1 Ana youth L'],
] as const)('%s: "%s" changes what it tells', async (language, words, row) => {
  const { played, rows } = await heard(language, [...completeOrders[language], words])
  expect(rows[0]).toBe(row)
  expect(played.conversation.signed).toBeNull()
})
