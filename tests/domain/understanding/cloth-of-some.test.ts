import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const list = '4 Zoe Ruiz M\n7 Abel Luna L\n12 Eli Sanz M'
const orders = {
  en: ['3 royal jerseys, gold numbers on the back, names above the number in gold. For Rivera High volleyball', list],
  es: ['3 jerseys negros, números dorados atrás, nombres arriba del número en dorado. Para Halcones volibol', list],
}

const after = (language: 'en' | 'es', words: string) => {
  const played = play({ id: 'cloth', now: '2026-11-20T10:00', language, says: [...orders[language], words], facts: [] }, shop)
  const { garments, roster, decorations } = played.composed.order
  return {
    cloth: roster.map(({ garment }) => garments.find(({ id }) => id === garment)?.colour),
    marks: decorations.map(({ layers }) => layers?.[0]?.colour),
    numbered: roster.every(({ garment }) =>
      decorations.some(({ content, on }) => content?.kind === 'number' && on?.includes(garment ?? '')),
    ),
    replies: played.replies.map(({ code }) => code),
  }
}

test.each([
  ['en', 'two of the jerseys should be white'],
  ['en', 'make one of the jerseys red'],
  ['en', 'can 2 of them be white instead'],
  ['en', 'half of the shirts in black please'],
  ['en', 'a couple of the jerseys need to be white'],
  ['en', 'two jerseys should be white'],
  ['en', 'two of the numbers should be white'],
  ['es', 'dos de los jerseys deben ser blancos'],
  ['es', 'la mitad de las playeras en blanco'],
  ['es', 'una de las playeras que sea roja'],
  ['es', 'dos jerseys que sean blancos'],
] as const)('(%s) "%s": it is asked whose, and nothing is changed', (language, words) => {
  const { cloth, marks, replies } = after(language, words)
  const was = language === 'en' ? 'royal' : 'black'
  expect(cloth).toEqual([was, was, was])
  expect(new Set(marks)).toEqual(new Set(['gold']))
  expect(replies).toContain('which-of-them')
})

test.each([
  ['en', '4 and 12 in white', ['white', 'royal', 'white']],
  ['en', "Zoe and Eli's jerseys should be white", ['white', 'royal', 'white']],
  ['en', 'Abel wears red', ['royal', 'red', 'royal']],
  ['en', '#7 in red please', ['royal', 'red', 'royal']],
  ['es', 'el 4 y el 12 en blanco', ['white', 'black', 'white']],
  ['es', 'Abel de rojo', ['black', 'red', 'black']],
  ['es', 'la playera de Eli en blanco', ['black', 'black', 'white']],
] as const)('(%s) "%s": theirs alone', (language, words, colours) => {
  const { cloth, numbered, replies } = after(language, words)
  expect(cloth).toEqual(colours)
  expect(numbered).toBe(true)
  expect(replies).not.toContain('which-of-them')
})

test.each([
  ['en', 'all of the jerseys should be white'],
  ['en', 'make the jerseys white'],
  ['es', 'todos los jerseys en blanco'],
] as const)('(%s) "%s" is of all', (language, words) => {
  expect(after(language, words).cloth).toEqual(['white', 'white', 'white'])
})

test.each([
  ['en', 'two of the players are sisters'],
  ['en', "Abel's number in red"],
  ['es', 'dos de las niñas son hermanas'],
] as const)('(%s) "%s" gives nobody another cloth', (language, words) => {
  const { cloth, replies } = after(language, words)
  expect(new Set(cloth).size).toBe(1)
  expect(replies).not.toContain('which-of-them')
})
