import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = {
  en: '3 navy jerseys for the Marsh Harriers, white numbers on the back\n1 Ana M\n2 Bea L\n3 Cy S',
  es: '3 jerseys azul marino para los Gavilanes, números blancos atrás\n1 Ana M\n2 Bea L\n3 Cy S',
}
const changes = { en: ['make Ana an L', 'make Bea a S'], es: ['Ana en L', 'Bea en S'] }
const sizesOf = async (language: 'en' | 'es', says: readonly string[]) =>
  (await heard(language, [list[language], ...says])).played.composed.order.roster.map(({ size }) => size).join(' ')

test.each([
  ['en', 'undo both'],
  ['en', 'oops, undo both please'],
  ['en', 'undo the last two changes'],
  ['en', 'undo both of those'],
  ['en', 'revert the last 2'],
  ['es', 'deshaz los dos'],
  ['es', 'deshaz los dos últimos cambios'],
  ['es', 'deshaz ambos por favor'],
] as const)('%s: “%s” takes two changes back', async (language, words) => {
  expect(await sizesOf(language, [...changes[language], words])).toBe('M L S')
})

test.each([
  ['en', ['make Ana an XL', 'make Ana an L and Bea a S', 'undo both'], 'XL L S'],
  ['en', ['make Ana an L', 'undo both'], 'M L S'],
  ['en', [...changes.en, 'undo that'], 'L L S'],
  ['en', [...changes.en, 'make Cy a M', 'undo both'], 'L L S'],
  ['es', ['Ana en XL', 'Ana en L y Bea en S', 'deshaz los dos'], 'XL L S'],
  ['es', [...changes.es, 'deshaz eso'], 'L L S'],
] as const)('%s: after %j sizes are %s', async (language, says, sizes) => {
  expect(await sizesOf(language, says)).toBe(sizes)
})
