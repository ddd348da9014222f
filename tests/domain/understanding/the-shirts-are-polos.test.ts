import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const garmentsOf = async (language: 'en' | 'es', says: readonly string[]) => {
  const { garments, decorations } = (await heard(language, says)).played.composed.order
  return [garments.map(({ id }) => id).join(), decorations.map(({ place, on }) => `${place} ${(on ?? []).join()}`).sort()]
}
const polos = {
  en: 'navy polos, PUB on the left chest in yellow',
  es: 'polos azul marino, PUB en el pecho izquierdo en amarillo',
}
const chest = 'left-chest polo'

test.each([
  ['en', 'and put BAR on the back of the shirts in white', [chest, 'yoke polo']],
  ['en', 'names on the shirts too, in yellow', [chest, 'name polo']],
  ['en', 'no number on the shirts', [chest]],
  ['en', 'those shirts should have names on the back in yellow', [chest, 'name polo']],
  ['es', 'el nombre va en la espalda de las camisetas, en amarillo', [chest, 'name polo']],
  ['es', 'a las playeras pónganles BAR atrás en blanco', [chest, 'yoke polo']],
] as const)('(%s) the only garment by a word for any top: %s', async (language, words, marks) => {
  expect(await garmentsOf(language, [polos[language], words])).toEqual(['polo', marks])
})

test.each([
  ['en', 'and 10 shirts in black'],
  ['en', 'plus black tees for the kitchen'],
  ['es', 'y unas playeras rojas con lo mismo'],
  ['es', 'más 10 camisetas negras'],
] as const)('(%s) another garment: %s', async (language, words) => {
  expect((await garmentsOf(language, [polos[language], words]))[0]).toContain(',')
})
