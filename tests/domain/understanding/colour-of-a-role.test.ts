import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: 'soccer, 10 red jerseys with white numbers on the back',
  es: 'futbol, 10 jerseys rojos con número blanco atrás',
}

const after = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed, replies } = play({ id: 'role', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const { garments, decorations } = composed.order
  return {
    cloth: garments.map(({ catalogue, colour }) => `${colour} ${catalogue}`),
    marks: [...new Set(decorations.map(({ layers }) => layers?.[0]?.colour))],
    which: replies.some(({ code }) => code === 'which-of-them'),
  }
}

test.each([
  ['en', "can the goalie's be orange?"],
  ['en', 'goalie orange please'],
  ['en', "make the keeper's shirt orange"],
  ['en', 'the goalkeeper should be orange'],
  ['en', 'can we do orange for the goalie'],
  ['es', 'la del portero que sea naranja'],
  ['es', '¿la del portero puede ser naranja?'],
  ['es', 'la playera de la portera va naranja'],
  ['es', 'el del arquero en naranja'],
  ['es', 'naranja para el portero porfa'],
] as const)('(%s) %j: the one who keeps the goal wears another colour, and the others keep theirs', (language, said) => {
  expect(after(language, orders[language], said)).toEqual({
    cloth: ['red mesh-jersey', 'orange mesh-jersey'],
    marks: ['white'],
    which: false,
  })
})

test.each([
  ['en', "can i get the coaches' in gray instead"],
  ['en', "the captain's in orange"],
  ['en', 'coaches should be gray'],
  ['en', "make the captain's shirt navy"],
  ['en', "captain's number in gold please"],
  ['es', 'los de los entrenadores en negro'],
  ['es', 'el del capitán que sea negro'],
  ['es', 'el número del capitán en dorado'],
  ['es', 'la playera de la maestra en negro'],
] as const)('(%s) %j: whose it is is asked, and nothing changes', (language, said) => {
  expect(after(language, orders[language], said)).toEqual({ cloth: ['red mesh-jersey'], marks: ['white'], which: true })
})

test.each([
  ['en', '10 red tees with white numbers on the back', 'goalie in orange'],
  ['es', '10 playeras rojas con número blanco atrás', 'la del portero en naranja'],
] as const)('(%s) %j, then %j: theirs is a garment of the same kind', (language, first, said) => {
  expect(after(language, first, said).cloth).toEqual(['red cotton-tee', 'orange cotton-tee'])
})

test.each([
  ['en', 'the coach wants navy jerseys', 'navy mesh-jersey'],
  ['en', 'coach says navy jerseys', 'navy mesh-jersey'],
  ['en', 'make the jerseys navy', 'navy mesh-jersey'],
  ['es', 'que los jerseys sean negros, dice el entrenador', 'black mesh-jersey'],
  ['es', 'los jerseys en negro', 'black mesh-jersey'],
] as const)('(%s) %j is of all', (language, said, colour) => {
  expect(after(language, orders[language], said)).toEqual({ cloth: [colour], marks: ['white'], which: false })
})

test.each([
  ['en', 'I need 3 black hoodies for the coaches with COACH on the back in white', ['black fleece-hoodie']],
  ['es', 'ocupo 3 sudaderas negras para los maestros con STAFF atrás en blanco', ['black fleece-hoodie']],
] as const)('(%s) %j begins an order', (language, said, cloth) => {
  expect(after(language, said)).toEqual({ cloth, marks: ['white'], which: false })
})
