import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const after = (language: 'en' | 'es', says: readonly string[]) => {
  const { garments, decorations, roster } = play({ id: 'doubted', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
    .composed.order
  const hues = decorations.map(({ layers }) => (layers?.[0]?.kind === 'vinyl' ? layers[0].colour : undefined))
  return { cloth: garments[0]?.colour, hues, lines: roster.length }
}

const spanish = ['playeras grises que digan LA COMADRE al frente en vinil liso amarillo', 'son 3 CH, 5 M y 4 G']
const spanishNames = ['12 jerseys azul marino con número blanco atrás y el nombre en dorado']
const english = ['grey tees with TIDE CREW on the front in yellow', '3 small, 5 medium, 4 large']

test.each([
  ['uy no, amarillo no se va a ver. Mejor blanco', 'white'],
  ['el amarillo no se va a distinguir, mejor en blanco', 'white'],
  ['no, el amarillo se pierde en el gris. Pónganlo blanco', 'white'],
  ['creo que el amarillo no va a resaltar, que sea blanco', 'white'],
  ['pensándolo bien el amarillo no combina. Mejor negro', 'black'],
  ['amarillo se ve muy chillón, mejor blanco', 'white'],
  ['ay no, amarillo no. Blanco', 'white'],
  ['no me convence el amarillo, prefiero blanco', 'white'],
  ['ya no quiero amarillo, quiero blanco', 'white'],
  ['amarillo no me gusta, blanco mejor', 'white'],
  ['mmm amarillo sobre gris no se va a leer, háganlo blanco', 'white'],
  ['siempre no amarillo, mejor negro', 'black'],
  ['el amarillo casi no se ve, cámbienlo a blanco', 'white'],
  ['mi esposa dice que amarillo no, que blanco', 'white'],
  ['no, amarillo se va a ver feo. Blanco por favor', 'white'],
  ['el amarillo no se va a ver en lo gris. Mejor rojo', 'red'],
])('"%s" puts a better colour where the doubted one was', (words, hue) => {
  expect(after('es', [...spanish, words])).toEqual({ cloth: 'grey', hues: [hue], lines: 3 })
})

test.each([
  ['ay no, dorado no se va a ver. Mejor plateado', 'navy', ['white', 'silver']],
  ['el azul marino no me gusta, mejor rojo', 'red', ['white', 'gold']],
  ['el blanco no resalta, mejor amarillo', 'navy', ['yellow', 'gold']],
  ['el dorado se pierde, pónganlo rojo', 'navy', ['white', 'red']],
])('"%s" changes what had that colour alone', (words, cloth, hues) => {
  expect(after('es', [...spanishNames, words])).toMatchObject({ cloth, hues })
})

test.each([
  ["yellow won't show. White instead", 'white'],
  ['hmm yellow is too hard to see on grey, make it white', 'white'],
  ["yellow will get lost on the grey. Let's go with white", 'white'],
  ["I don't like the yellow, black would be better", 'black'],
  ['not sure about yellow, rather white', 'white'],
  ["yellow isn't going to work. White please", 'white'],
])('"%s" is heard in English as well', (words, hue) => {
  expect(after('en', [...english, words])).toEqual({ cloth: 'grey', hues: [hue], lines: 3 })
})

test.each([
  '¿el amarillo sí se va a ver?',
  'el amarillo se ve muy bien',
  'uy, ¿amarillo no se va a ver mal?',
  'uy no, amarillo no se va a ver',
  '¿no sería mejor blanco que amarillo?',
])('"%s" changes no colour', (words) => {
  expect(after('es', [...spanish, words])).toEqual({ cloth: 'grey', hues: ['yellow'], lines: 3 })
})
