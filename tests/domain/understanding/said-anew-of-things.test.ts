import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const draftAfter = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'anew', now: '2027-03-02T10:00', language, says, facts: [] }, shop).conversation.draft

test('a shadow said anew is that of what has one', () => {
  const first = 'maroon jerseys. numbers on the back, white with a black shadow. front number 4 inch, only white, no shadow there'
  const { marks, styles } = draftAfter('en', first, 'make the shadow silver instead')
  expect(marks['back-number']?.style?.shadow).toEqual({ colour: 'silver' })
  expect(marks['front-number']?.style?.shadow).toBe(false)
  expect(styles).toEqual({})
})

test('stones said anew are those of what has some', () => {
  const first = 'black tees, HAWKS on the front in white with crystal stones around, SS10. names on the back in pink'
  const { marks } = draftAfter('en', first, 'ss16 for the stones, not ss10')
  expect(marks['full-front']?.style?.stones).toMatchObject({ size: 'SS16', colour: 'crystal', style: 'outline' })
  expect(Object.keys(marks)).toEqual(['full-front', 'name'])
})

test.each([
  ['en', 'jerseys in navy, white numbers', 'can the shirts be black instead'],
  ['es', 'jerseys azul marino, números blancos', 'las playeras mejor negras'],
] as const)('%s: jerseys that are called shirts are the same: %s', (language, first, then) => {
  expect(draftAfter(language, first, then).garments).toEqual({ jersey: { kind: 'jersey', colour: 'black' } })
})

test('shirts of another colour that are counted are garments of their own', () => {
  const { garments } = draftAfter('en', 'jerseys in navy, white numbers', 'and 2 black shirts for the coaches')
  expect(garments).toMatchObject({ jersey: { colour: 'navy' }, tee: { colour: 'black', count: 2 } })
})

test('a blend said anew without signs', () => {
  const draft = draftAfter('en', 'our own hoodies, black, 80% cotton 20% polyester', "It's 70 cotton / 30 polyester")
  expect(draft.garments['hoodie']?.fibres).toMatchObject([{ percent: 70 }, { percent: 30 }])
})

test('the colour that was there is only spoken of', () => {
  const first = 'playeras negras que digan CENTELLAS en el pecho con brillo dorado'
  const { marks } = draftAfter('es', first, 'Mejor en brillo plateado, el dorado no combina con los pompones')
  expect(marks['full-front']?.style).toMatchObject({ class: 'glitter', colour: 'silver' })
})

test('nobody wants a number or a name', () => {
  const { marks } = draftAfter('en', 'navy tees, FERRIGAN on the front in white', 'Nobody needs a number or a name on theirs')
  expect(Object.values(marks).filter(({ wanted }) => wanted !== false)).toHaveLength(1)
})

test('the day of the match and the day of need, in one breath', () => {
  const { day, gameDay } = draftAfter('en', 'First match is Saturday March 20th and I need the jerseys by Thursday the 18th')
  expect({ day, gameDay }).toEqual({ day: '2027-03-18', gameDay: '2027-03-20' })
})

test('of stones that are not wanted in one size the other is taken', () => {
  const first = 'leotardos negros, al frente que diga PANTERAS en diamantina rosa con piedritas SS10 cristal por todo el contorno'
  const { marks } = draftAfter('es', first, 'siempre no las piedras SS10, mejor SS16')
  expect(marks['full-front']?.style?.stones).toMatchObject({ wanted: true, size: 'SS16', colour: 'crystal' })
})

test('a team that writes "here" is nobody, and its name no colour', () => {
  const { team, orders, garments } = draftAfter(
    'en',
    'hi! Copper Ridge Cicadas here, softball. need game jerseys, purple, w/ white numbers',
  )
  expect({ team, orders, colour: garments['jersey']?.colour }).toEqual({
    team: 'Copper Ridge Cicadas',
    orders: undefined,
    colour: 'purple',
  })
})
