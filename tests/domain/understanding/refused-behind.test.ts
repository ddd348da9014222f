import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const marksOf = async (language: 'en' | 'es', says: readonly string[]) =>
  ((await heard(language, says)).played.composed.order.decorations ?? []).map(({ place }) => place)

const order = {
  en: 'gold jersey, brown number front and back, last name above the back number',
  es: 'jersey dorado, número café atrás y adelante, y el apellido arriba del de atrás',
}

test.each([
  ['es', 'el de adelante siempre no', ['back-number', 'name']],
  ['es', 'el de adelante mejor no. lo demás igual', ['back-number', 'name']],
  ['es', 'adelante siempre no va número', ['back-number', 'name']],
  ['es', 'el número de atrás siempre no, lo demás sí', ['front-number', 'name']],
  ['en', 'the front one, never mind', ['back-number', 'name']],
  ['en', 'oh the front number, forget it', ['back-number', 'name']],
  ['en', 'on the front? no, on the back', ['back-number', 'front-number', 'name']],
  ['es', 'los de atrás súbanlos a 20 cm, los de adelante no', ['back-number', 'front-number', 'name']],
  ['en', 'make the back ones royal, the front ones no', ['back-number', 'front-number', 'name']],
  ['es', 'el de adelante no sé si rojo', ['back-number', 'front-number', 'name']],
  ['en', 'the front one, no wait, keep it', ['back-number', 'front-number', 'name']],
] as const)('(%s) what is refused behind its place: %s', async (language, words, places) => {
  expect((await marksOf(language, [order[language], words])).toSorted()).toEqual(places)
})

test.each([
  [
    'es',
    'playera negra, TACOS en el pecho izquierdo y EQUIPO en la espalda en blanco',
    'lo de la espalda siempre no',
    ['left-chest'],
  ],
  [
    'es',
    'playera negra, TACOS en el pecho izquierdo y EQUIPO en la espalda en blanco',
    'el del pecho izquierdo mejor no',
    ['yoke'],
  ],
  ['en', 'black tee, TACOS on the left chest and TEAM on the back in white', 'the back one, never mind', ['left-chest']],
] as const)('(%s) words too: %s, %s', async (language, wish, words, places) => {
  expect(await marksOf(language, [wish, words])).toEqual(places)
})
