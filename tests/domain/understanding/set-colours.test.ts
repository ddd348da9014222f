import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const sets = {
  es: 'Somos el club de volibol Lechuzas. Cada niña va a llevar los dos uniformes, el jersey de local blanco y el de visitante morado',
  en: 'We are the Owls volleyball club. Every girl gets both jerseys, white for home and purple for away',
}

/** Each set with the colours of what is on its back: "home white: purple". */
const setsAfter = async (language: 'en' | 'es', says: readonly string[]): Promise<readonly string[]> => {
  const { order } = (await heard(language, says)).played.composed
  return order.garments.map(({ id, colour }) => {
    const layers = order.decorations
      .filter(({ on, place }) => on?.includes(id) === true && place === 'back-number')
      .flatMap((one) => one.layers ?? [])
    return `${id} ${colour}: ${layers.map((layer) => layer?.colour).join(' ')}`
  })
}

test.each([
  ['es', 'Al blanco le van los números morados y al morado los números en blanco. Número adelante y atrás en los dos'],
  ['es', 'números morados en el blanco y blancos en el morado, adelante y atrás'],
  ['es', 'el de local con números morados, el de visita con números blancos, adelante y atrás'],
  ['es', 'El blanco con número morado y el morado con número blanco, adelante y atrás los dos'],
  ['es', 'en el blanco van morados los números y en el morado van blancos. adelante y atrás'],
  ['es', 'los números del blanco en morado, los del morado en blanco, adelante y atrás'],
  ['es', 'Número adelante y atrás. El blanco lleva números morados, el morado los lleva blancos'],
  ['es', 'Número atrás. al de local pónganle los números en morado y al de visitante en blanco'],
  ['es', 'números atrás y adelante, morados sobre el blanco, blancos sobre el morado'],
  ['en', 'White ones get purple numbers and the purple ones get white numbers, front and back'],
  ['en', 'purple numbers on the white, white numbers on the purple, front and back on both'],
  ['en', 'the white jersey has purple numbers, the purple one white numbers. front and back'],
  ['en', 'home numbers purple, away numbers white, front and back'],
  ['en', 'numbers front and back, purple on the white jersey and white on the purple jersey'],
  ['en', 'Numbers on the white ones are purple and on the purple ones white, front and back'],
  ['en', 'front and back numbers. on white they should be purple, on purple they should be white'],
] as const)('%s: numbers told apart by the colour of the cloth or by the set: %s', async (language, words) => {
  expect(await setsAfter(language, [sets[language], words])).toEqual(['home white: purple', 'away purple: white'])
})

test.each([
  [
    'es',
    'Dos jerseys por jugadora: blanco con números morados de local y morado con números blancos de visita, adelante y atrás',
  ],
  [
    'en',
    'Each player gets two jerseys, white with purple numbers for home and purple with white numbers for away, front and back',
  ],
] as const)('%s: cloth and numbers of both sets in one sentence: %s', async (language, words) => {
  expect(await setsAfter(language, [words])).toEqual(['home white: purple', 'away purple: white'])
})

test.each([
  ['es', 'números dorados al blanco y al morado blancos, atrás', ['home white: gold', 'away purple: white']],
  ['es', 'números dorados en los dos, atrás', ['home white: gold', 'away purple: gold']],
  ['es', 'números blancos con contorno morado en los dos, atrás', ['home white: purple white', 'away purple: purple white']],
  ['es', 'perdón, el de local es negro y el de visita blanco', ['home black: ', 'away white: ']],
  ['en', 'gold numbers on the white and white numbers on the purple, back only', ['home white: gold', 'away purple: white']],
  ['en', 'sorry home is black and away is white', ['home black: ', 'away white: ']],
] as const)('%s: %s', async (language, words, expected) => {
  expect(await setsAfter(language, [sets[language], words])).toEqual(expected)
})

test.each([
  ['es', 'Jersey blanco de local y negro de visita, números rojos en los dos, atrás y adelante'],
  ['en', 'Home jersey white, away jersey black, red numbers on both, front and back'],
] as const)('%s: what is said of both is of both: %s', async (language, words) => {
  expect(await setsAfter(language, [words])).toEqual(['home white: red', 'away black: red'])
})
