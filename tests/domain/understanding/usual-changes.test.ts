import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Changes as people say them of an order of one garment with numbers front and back and names above; common practice. */
const shop = await starterShop()

const bases = {
  en: '4 navy mesh soccer jerseys for the Marsh Harriers, white numbers front and back, white names on the back, need them Dec 12 at 5pm\n1 Ana YM\n2 Bea YM\n7 Dee AL\n12 Cleo YL',
  es: '4 jerseys de futbol de malla azul marino para los Gavilanes de Anáhuac, numeros blancos adelante y atras, nombres blancos atras, los necesito el 12 de diciembre a las 5 de la tarde\n1 Ana YM\n2 Bea YM\n7 Dee AL\n12 Cleo YL',
} as const

const orderAfter = (language: 'en' | 'es', ...said: readonly string[]) => {
  const says = [bases[language], language === 'en' ? 'all are 13 or older' : 'nadie es menor de 13', ...said]
  return play({ id: 'changes', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
}

const sizesOf = (language: 'en' | 'es', said: string) =>
  orderAfter(language, said).composed.order.roster.map(({ garment, number, size, quantity }) =>
    [garment, number ?? '', size, quantity].join(' '),
  )

const players = ['jersey 1 M 1', 'jersey 2 M 1', 'jersey 7 L 1', 'jersey 12 L 1']

test.each([
  ['en', 'add 2 coach polos in black, XL'],
  ['en', 'and 2 black polos for the coaches, size XL'],
  ['es', '2 polos negros para los entrenadores talla XG'],
] as const)('%s: "%s" counts pieces and resizes nobody', (language, said) => {
  expect(sizesOf(language, said)).toEqual([...players, 'polo  XL 2'])
})

test.each([
  ['en', 'make them hoodies', 'hoodie'],
  ['en', 'actually can we do hoodies instead', 'hoodie'],
  ['en', 'change to t-shirts', 'tee'],
  ['en', 'switch the jerseys to hoodies', 'hoodie'],
  ['en', 'hoodies instead of jerseys', 'hoodie'],
  ['es', 'mejor sudaderas', 'hoodie'],
  ['es', 'cámbienlos a sudaderas', 'hoodie'],
  ['es', 'que sean sudaderas en vez de jerseys', 'hoodie'],
] as const)('%s: "%s" makes another garment of all of them, in their colour', (language, said, id) => {
  const { garments, roster, decorations } = orderAfter(language, said).composed.order
  expect(garments.map((one) => [one.id, one.colour])).toEqual([[id, 'navy']])
  expect(roster.map(({ garment }) => garment)).toEqual([id, id, id, id])
  expect(decorations.flatMap(({ on }) => on)).toEqual([id, id, id])
})

test.each([
  ['en', 'we also want hoodies'],
  ['en', 'add hoodies in black'],
  ['es', 'también queremos sudaderas'],
] as const)('%s: "%s" is a garment more', (language, said) => {
  expect(orderAfter(language, said).composed.order.garments.map(({ id }) => id)).toEqual(['jersey', 'hoodie'])
})

const classesOf = (language: 'en' | 'es', said: string) =>
  orderAfter(language, said).composed.order.decorations.map(({ place, layers = [] }) =>
    [place, ...layers.flatMap((one) => (one.kind === 'vinyl' ? [one.class, one.colour] : []))].join(' '),
  )

test.each([
  ['en', 'glitter for the names', ['front-number standard white', 'back-number standard white', 'name glitter white']],
  ['en', 'use puff vinyl for the numbers', ['front-number puff white', 'back-number puff white', 'name standard white']],
  ['en', 'gold for the names and numbers', ['front-number standard gold', 'back-number standard gold', 'name standard gold']],
  ['en', 'gold for the names', ['front-number standard white', 'back-number standard white', 'name standard gold']],
  ['es', 'dorado para los nombres', ['front-number standard white', 'back-number standard white', 'name standard gold']],
  ['es', 'diamantina para los nombres', ['front-number standard white', 'back-number standard white', 'name glitter white']],
] as const)('%s: "%s" is of what is named behind it', (language, said, made) => {
  expect(classesOf(language, said)).toEqual(made)
})

test.each([
  ['en', 'names under the numbers'],
  ['es', 'los nombres abajo del número'],
] as const)('%s: "%s" moves the names, which stand once on the back', (language, said) => {
  const places = orderAfter(language, said).composed.order.decorations.map(({ place }) => place)
  expect(places).toEqual(['front-number', 'back-number', 'below-number'])
})

test.each(['bigger numbers', 'double the order', 'looks good'])('"%s" is nobody who orders', (said) => {
  expect(orderAfter('en', said).composed.order.people.orders).toBeUndefined()
})

test.each(['dana whitlow', 'Dana Whitlow', 'its Dana'])('"%s" is somebody who orders', (said) => {
  expect(orderAfter('en', said).composed.order.people.orders).toMatch(/dana/i)
})

test('a line of garments above a list is no player that could not be read', () => {
  const says = ['4 jerseys de futbol azul marino para los Gavilanes, numeros blancos atras\n1 Ana YM\n2 Bea YM']
  const { replies } = play({ id: 'line', now: '2026-11-20T10:00', language: 'es', says, facts: [] }, shop)
  expect(replies.map(({ code }) => code)).not.toContain('lines-unread')
})
