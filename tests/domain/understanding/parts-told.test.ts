import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** What stands where, with its colour, and the colours of the cloth. */
const after = (language: 'en' | 'es', says: readonly string[]) => {
  const { composed, conversation } = play({ id: 'parts', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  expect(conversation.open).toEqual([])
  const print = composed.order.decorations.flatMap(({ place, layers }) => {
    const [first] = layers ?? []
    return [[place ?? '', first !== undefined && 'colour' in first ? first.colour : undefined] as const]
  })
  return { cloth: composed.order.garments.map(({ colour }) => colour), ...Object.fromEntries(print) }
}

const two = 'black hoodies, GULLS on the front and CREW on the left sleeve, both white'
const dos = 'sudaderas negras, GAVIOTAS adelante en blanco y EQUIPO en la manga izquierda en blanco'
const names = 'black hoodies, last names on the back in white and GULLS across the front in red'
const nombres = 'sudaderas negras, el apellido atrás en blanco y GAVIOTAS al frente en rojo'

test.each([
  [two, 'make the sleeve one yellow, front stays white'],
  [two, 'could the sleeve be in yellow please'],
  [two, 'the sleeve in yellow actually. The front stays as it is'],
  [two, 'please do the left sleeve yellow instead and keep the front white'],
  [two, 'we want the one on the sleeve yellow, white looks boring'],
  [two, 'change the sleeve to yellow and leave the front white'],
])('what stands at one place has the new colour, and nothing else: %s / %s', (...says) => {
  expect(after('en', says)).toEqual({ cloth: ['black'], 'full-front': 'white', 'left-sleeve': 'yellow' })
})

test.each([
  [dos, 'lo de la manga ponedlo en amarillo, lo de adelante se queda en blanco'],
  [dos, 'la manga mejor en amarillo'],
  [dos, 'en la manga que sea amarillo, el frente sigue blanco'],
  [dos, 'la de la manga en amarillo porfa, que en blanco se ve muy serio'],
  [dos, 'pueden poner lo de la manga en amarillo? lo de adelante queda en blanco'],
])('cada parte con su color: %s / %s', (...says) => {
  expect(after('es', says)).toEqual({ cloth: ['black'], 'full-front': 'white', 'left-sleeve': 'yellow' })
})

test.each([
  ['en', names, 'and the front in white too please, red on black is hard to read'],
  ['en', names, 'the front in white as well, red on black looks washed out'],
  ['en', names, 'front should be white, red gets lost on black'],
  ['es', nombres, 'y lo de adelante también en blanco, el rojo sobre negro no se lee'],
  ['es', nombres, 'el frente en blanco, que en rojo casi no se nota'],
] as const)('beside names a front takes its colour and no number is put there: %s: %s / %s', (language, ...says) => {
  expect(after(language, says)).toEqual({ cloth: ['black'], 'full-front': 'white', name: 'white' })
})

test.each([
  ['en', 'red jackets, GULLS on the left sleeve in white', 'the letters better in black than white'],
  ['en', 'red jackets, GULLS on the left sleeve in white', 'the letters in black rather than in white'],
  ['es', 'cortavientos rojos, GAVIOTAS en la manga izquierda en blanco', 'las letras mejor en negro que en blanco'],
  ['es', 'cortavientos rojos, GAVIOTAS en la manga izquierda en blanco', 'la manga mejor negra que blanca'],
] as const)('of two colours that are weighed the first is meant: %s: %s / %s', (language, ...says) => {
  expect(after(language, says)).toEqual({ cloth: ['red'], 'left-sleeve': 'black' })
})

test.each([
  ['en', two, 'is the sleeve white?', { 'full-front': 'white', 'left-sleeve': 'white' }],
  [
    'en',
    two,
    'add HELPER on the right sleeve in yellow',
    { 'full-front': 'white', 'left-sleeve': 'white', 'right-sleeve': 'yellow' },
  ],
  [
    'en',
    two,
    'navy hoodies instead, the front and the sleeve stay white',
    { cloth: ['navy'], 'full-front': 'white', 'left-sleeve': 'white' },
  ],
  ['es', dos, '¿la manga va en blanco?', { 'full-front': 'white', 'left-sleeve': 'white' }],
  [
    'es',
    dos,
    'y en la manga derecha STAFF en amarillo',
    { 'full-front': 'white', 'left-sleeve': 'white', 'right-sleeve': 'yellow' },
  ],
] as const)('nothing is coloured that was not told: %s: %s / %s', (language, first, next, expected) => {
  expect(after(language, [first, next])).toEqual({ cloth: ['black'], ...expected })
})
