import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** Where something stands, with its vinyl and its stones in short. */
const after = (language: 'en' | 'es', says: readonly string[]) => {
  const { composed } = play({ id: 'stones', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.decorations.map(({ place, layers = [] }) =>
    [
      place,
      ...layers.map((layer) => {
        if (layer.kind !== 'stones') return layer.colour
        const { layout } = layer
        return `${layer.size} ${layer.colour} ${layout?.style === 'outline' ? `${layout.rows} ${layout.contours}` : ''}`.trim()
      }),
    ].join(', '),
  )
}

const english =
  'black tops, BLAZE on the front in white glitter with one row of SS10 crystal stones around the letters, outside edge only'
const spanish = 'playeras negras, LUNA al frente en blanco con piedras SS16 cristal AB en una hilera de contorno, solo por fuera'

test.each([
  ['stones should be rose instead of crystal, and go down to SS6. still just the one row', 'SS6 rose 1 outer'],
  ['the stones in gold instead of crystal, and SS6', 'SS6 gold 1 outer'],
  ['stones smaller, SS6, and rose', 'SS6 rose 1 outer'],
  ['hmm crystal will vanish on black. Jet instead please', 'SS10 jet 1 outer'],
])('what is said of the stones alone is theirs: %s', (words, stones) => {
  expect(after('en', [english, words])).toEqual([`full-front, white, ${stones}`])
})

test.each([
  ['las piedras más chiquitas, SS10, y que sean doradas en vez de AB. La hilera sigue siendo una', 'SS10 gold 1 outer'],
  ['las piedras mejor rosas, y de SS10', 'SS10 rose 1 outer'],
  ['piedras doradas por favor, no AB', 'SS16 gold 1 outer'],
])('lo que se dice de las piedras es de ellas: %s', (words, stones) => {
  expect(after('es', [spanish, words])).toEqual([`full-front, white, ${stones}`])
})

test.each([
  [
    english,
    'leave the stones off completely, just the glitter',
    'stones back on please, but gold ones. otherwise as it was',
    'SS10 gold 1 outer',
  ],
  [english, 'no stones after all', 'put the stones back please', 'SS10 crystal 1 outer'],
  [english, 'take the stones off', 'ok we want the stones back, in jet', 'SS10 jet 1 outer'],
])('stones that come back have the make that they had: %s / %s / %s', (base, off, back, stones) => {
  expect(after('en', [base, off])).toEqual(['full-front, white'])
  expect(after('en', [base, off, back])).toEqual([`full-front, white, ${stones}`])
})

test.each([
  ['en', english, "one mom is asking for two rows, she isn't paying so no, it stays at one"],
  ['en', english, 'someone asked about stones on the back, no, only what I told you'],
  ['en', english, 'my sister wanted gold letters, I told her no, white it is'],
  ['es', spanish, 'una compañera preguntó por piedras en la espalda, no, ahí no lleva'],
  ['es', spanish, 'alguien pidió dos hileras, pero no, se queda una'],
] as const)('what somebody else asks for and does not get changes nothing: %s: %s / %s', (language, ...says) => {
  expect(after(language, says)).toEqual(after(language, says.slice(0, 1)))
})

test('who orders and asks is heard, and so is what somebody else gets', () => {
  expect(after('en', [english, 'we wanted two rows'])).toEqual(['full-front, white, SS10 crystal 2 outer'])
  expect(after('en', [english, 'one mom is asking for two rows, so please do two rows'])).toEqual([
    'full-front, white, SS10 crystal 2 outer',
  ])
  expect(after('es', [spanish, 'una mamá pidió dos hileras, así que sean dos hileras'])).toEqual([
    'full-front, white, SS16 clear-ab 2 outer',
  ])
})

test('letters in hotfix stones have no vinyl under them', () => {
  expect(
    after('en', ['black bodysuits with MARABOU on the front in hotfix stones. crystal, the SS20 size, one row outline']),
  ).toEqual(['full-front, SS20 crystal 1 both'])
})
