import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** The places that wear stones, with the colour of the stones, and those that are without. */
const after = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'stones', now: '2027-03-02T10:00', language, says, facts: [] }, shop)
  return Object.fromEntries(
    composed.order.decorations.map(({ place, layers }) => {
      const stones = (layers ?? []).find((layer) => layer.kind === 'stones')
      return [place, stones?.colour ?? 'none']
    }),
  )
}

const frontOnly = { 'front-number': 'crystal', 'back-number': 'none' }
const backOnly = { 'front-number': 'none', 'back-number': 'crystal' }
const both = { 'front-number': 'crystal', 'back-number': 'crystal' }
const none = { 'front-number': 'none', 'back-number': 'none' }
const en = 'Navy jerseys, white numbers front and back'
const es = 'Playeras negras, números dorados adelante y atrás'

test.each([
  ['en', [`${en}, stones only on the front, plain on back`], frontOnly],
  ['en', [`${en}. Crystals on the back only`], backOnly],
  ['en', [`${en}, front with stones, back without`], frontOnly],
  ['en', [`${en}, only the front gets stones`], frontOnly],
  ['en', [en, 'stones on the front, not the back'], frontOnly],
  ['en', [`${en} with stones`, 'no stones on the front'], backOnly],
  ['en', [`${en} with stones on the front only`, 'back numbers with stones too'], both],
  ['en', [`${en} with stones on the front only`, 'actually no stones at all'], none],
  ['en', ['Navy jerseys with white numbers, stones only on the front'], frontOnly],
  ['en', [`${en} with stones`], both],
  ['en', ['Navy jerseys, white numbers with stones on the front and back'], both],
  ['en', ['Navy jerseys, white numbers on the back with stones'], { 'back-number': 'crystal' }],
  ['es', [`${es}, piedras solo adelante, atrás sin piedras`], frontOnly],
  ['es', [`${es} con pedrería solo en el frente`], frontOnly],
  ['es', [`${es} con piedras`, 'quita las piedras de atrás'], frontOnly],
] as const)('%s: %j', (language, says, places) => {
  expect(after(language, ...says)).toEqual(places)
})

test('a colour said of the stones later does not bring them back where they are not wanted', () => {
  expect(after('en', `${en} with stones on the front only`, 'make the stones jet')).toEqual({
    ...frontOnly,
    'front-number': 'jet',
  })
})

test('where the front bears words and no number, its stones are those of the words', () => {
  const words = 'Navy jerseys, TIGERS across the front in white, white numbers on the back, SS10 jet stones only on the front'
  expect(after('en', words)).toEqual({ 'full-front': 'jet', 'back-number': 'none' })
})

test('stones named of the names are not the numbers’', () => {
  const names = { 'back-number': 'none', name: 'crystal' }
  expect(after('en', 'Navy jerseys, white numbers, stones on the name only')).toEqual(names)
  expect(after('es', 'Playeras negras, números blancos, piedras en los nombres')).toEqual(names)
  expect(after('en', `${en} with stones, no stones on the names`)).toEqual({ ...both, name: 'none' })
})
