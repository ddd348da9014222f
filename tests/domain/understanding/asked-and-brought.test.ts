import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const after = (language: 'en' | 'es', says: readonly string[]) =>
  play({ id: 'asked', now: '2026-11-20T10:00', language, says, facts: [] }, shop)

test.each([
  ['en', 'Good morning, are the hoodies for the Ashgrove debate club ready yet? You told me it would be this week'],
  ['en', 'hi, are our navy jerseys for the spring league done already?'],
  ['en', 'is the order of black tees for Marsh Lane finished?'],
  ['es', 'buenas, ¿ya están listas las sudaderas del club de debate?'],
] as const)('a question of how an order stands orders nothing, whatever it names: %s: %s', (language, words) => {
  const { wants, composed } = after(language, [words])
  expect(wants.map(({ kind }) => kind)).toEqual(['status'])
  expect(composed.order.garments).toEqual([])
})

test.each([
  ['en', 'are the hoodies pre-shrunk? we need 12 in navy'],
  ['en', '12 navy hoodies, are the white numbers ok on them?'],
] as const)('other questions ask for something else: %s: %s', (language, words) => {
  expect(after(language, [words]).wants.map(({ kind }) => kind)).not.toContain('status')
})

test.each([
  ['en', 'Our Tanyard Lane Swifts jerseys, the red ones. The white on 7, 19 and 31 has turned pink', ['7', '19', '31']],
  ['en', 'the gold on 4 and 22 is peeling off', ['4', '22']],
  ['es', 'el blanco de la 7, la 19 y la 31 se puso rosa', ['7', '19', '31']],
  ['es', 'se está despegando en la 4 y la 22', ['4', '22']],
] as const)('pieces that went wrong are told as a list: %s: %s', (language, words, numbers) => {
  const [want] = after(language, [words]).wants
  expect(want?.kind === 'complaint' ? want.complaint.numbers : want?.kind).toEqual(numbers)
})

test.each([
  ['en', 'our jerseys are peeling, they were washed on 2 occasions', undefined],
  ['es', 'se despegó el número en 2 lavadas', undefined],
] as const)('what is counted is no piece: %s: %s', (language, words, numbers) => {
  const [want] = after(language, [words]).wants
  expect(want?.kind === 'complaint' ? want.complaint.numbers : want?.kind).toEqual(numbers)
})

test.each([
  [
    'es',
    'Tenemos 10 cortavientos rojos nuestros, 100% poliéster, y os los llevaríamos nosotros. LINCES en la manga izquierda en blanco',
    'customer',
  ],
  ['es', '10 chaquetas rojas, os las llevamos la semana que viene. LINCES en la manga izquierda en blanco', 'customer'],
  ['es', '10 sudaderas rojas, las llevamos nosotras. LINCES al frente en blanco', 'customer'],
  ['en', "10 red windbreakers, we'll bring them. LYNX on the left sleeve in white", 'customer'],
  ['es', '10 sudaderas rojas de las vuestras. LINCES al frente en blanco', 'shop'],
] as const)('whose garments they are: %s: %s', (language, words, from) => {
  expect(after(language, [words]).composed.order.garments.map((one) => one.from)).toEqual([from])
})

test('a place that is compared with keeps what stands there, and who stays home has no second set', () => {
  const says = ['black shirts with LYNX on the front in white', 'put RUN on the nape, reflective silver like the front']
  const [front, nape] = after('en', says).composed.order.decorations
  expect([front?.layers?.[0], nape?.layers?.[0]]).toMatchObject([{ colour: 'white' }, { class: 'reflective', colour: 'silver' }])
  const home = after('en', [
    'black hoodies, LYNX on the front in white\nVoss L\nPoole M\nall mens',
    'Poole is staying home with the twins',
  ])
  expect(home.composed.order.garments.map(({ id }) => id)).toEqual(['hoodie'])
})
