import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = { en: '6 black polos, white text CREW on the back', es: '6 polos negros con CREW blanco atrás' }

const after = (language: 'en' | 'es', said: string) => {
  const { composed, replies } = play(
    { id: 'some', now: '2026-11-20T10:00', language, says: [orders[language], said], facts: [] },
    shop,
  )
  const texts = composed.order.decorations.flatMap(({ content }) => (content?.kind === 'text' ? [content.text] : []))
  return { texts, which: replies.some(({ code }) => code === 'which-of-them') }
}

test.each([
  ['en', '3 of them say CREW, the other 3 say BOSS'],
  ['en', 'half say BOSS instead'],
  ['en', 'two of them should say BOSS'],
  ['en', 'the rest say BOSS'],
  ['es', '3 dicen CREW y los otros 3 dicen JEFE'],
  ['es', 'la mitad que digan JEFE'],
  ['es', 'dos de ellos dicen JEFE'],
] as const)('(%s) %j: another word on some is nobody’s yet, and whose is asked', (language, said) => {
  expect(after(language, said)).toEqual({ texts: ['CREW'], which: true })
})

test.each([
  ['en', 'make it say BOSS', 'BOSS'],
  ['en', 'all of them say BOSS', 'BOSS'],
  ['en', 'all 6 should say BOSS', 'BOSS'],
  ['es', 'mejor que digan JEFE', 'JEFE'],
  ['es', 'todos que digan JEFE', 'JEFE'],
] as const)('(%s) %j is of all', (language, said, text) => {
  expect(after(language, said)).toEqual({ texts: [text], which: false })
})
