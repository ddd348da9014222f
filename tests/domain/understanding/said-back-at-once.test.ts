import { expect, test } from 'vitest'
import { showFor } from '../../../src/domain/shop/show.ts'
import { say } from '../../../templates/replies/say.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const lines = {
  en: [
    'We are the Copperline Owls, women’s soccer. Navy jerseys, white number on the back 8 in, no names.',
    '7 adult M\n10 adult S\n4 adult L',
  ],
  es: [
    'Somos las Lechuzas de Cobre, fútbol femenino. Camisetas azul marino, número blanco atrás de 20 cm, sin nombres.',
    '7 mujer M\n10 mujer S\n4 mujer L',
  ],
} as const

/** What is answered to a message after the garments and the list were told, on Tuesday, November 3. */
const answered = (language: 'en' | 'es', ...says: readonly string[]): readonly string[] => {
  const show = showFor(shop, language)
  const wish = { id: 'one', now: '2026-11-03T10:00', language, facts: [] } as const
  const before = play({ ...wish, says: lines[language] }, shop).replies.length
  const { replies } = play({ ...wish, says: [...lines[language], ...says] }, shop)
  return replies.slice(before).map((reply) => say(reply, language, show).text)
}

test.each([
  ['en', 'we need them Friday Dec 4 at 5pm', 'Noted. Needed: Friday, December 4, 5 pm.'],
  ['en', 'friday december 4', 'Noted. Needed: Friday, December 4 (hour still open).'],
  ['en', 'game is saturday dec 5, ready by friday dec 4 5pm', 'Game day: Saturday, December 5'],
  ['es', 'las necesitamos el viernes 4 de diciembre a las 17:00', 'Anotado. Se necesita: viernes 4 de diciembre, 5 p. m.'],
  ['es', 'el partido es el sábado 5 de diciembre', 'Día del partido: sábado 5 de diciembre'],
] as const)('(%s) %j: the day is said back as it was heard', (language, said, told) => {
  expect(answered(language, said).join('\n')).toContain(told)
})

test.each([
  ['en', 'all are 13 or older', 'Noted.'],
  ['es', 'todas tienen 13 o más', 'Anotado.'],
] as const)('(%s) %j: of the rest it is said that it was taken', (language, said, told) => {
  expect(answered(language, said).at(0)).toBe(told)
})

test('what nobody said is not said back as new', () => {
  const told = answered('en', 'we need them Friday Dec 4 at 5pm', 'all are 13 or older').slice(1).join('\n')
  expect(told).not.toContain('Needed')
  expect(told).not.toContain('Hand-over')
})
