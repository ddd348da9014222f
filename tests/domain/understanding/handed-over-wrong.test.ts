import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const told = (language: 'en' | 'es', says: readonly string[]) => {
  const { wants, composed } = play({ id: 'handed', now: '2027-06-08T10:00', language, says, facts: [] }, shop)
  const complaint = wants.flatMap((want) => (want.kind === 'complaint' ? [want.complaint] : [])).at(-1)
  return {
    kind: complaint?.kind,
    numbers: complaint?.numbers,
    garments: composed.order.garments.length,
    wants: wants.map(({ kind }) => kind),
  }
}

test.each([
  [
    'en',
    ['picked up the Ribamora Geese jerseys yesterday and there is a mistake', "the 12 says HERNADEZ but it's Hernandez"],
    ['12'],
  ],
  ['en', ['we received the polos and one has a typo. the 4 says SMTIH, it should be Smith'], ['4']],
  ['en', ['you delivered the hoodies today and you messed up a name', 'the 9 says Bo, it is Boe'], ['9']],
  [
    'es',
    [
      'recogí ayer las camisetas de los Gansos de Ribamora y hay un error',
      'la 12 dice HERNADEZ, le falta una N. la 7 salió bien, la 20 dice LOPES y es López',
    ],
    ['12', '20'],
  ],
  ['es', ['nos entregaron las playeras y vienen con errores', 'la 5 dice GOMES y es Gómez'], ['5']],
  ['es', ['recibimos los polos pero se equivocaron', 'el 3 dice ANA y era Anna'], ['3']],
] as const)('(%s) what was handed over with a mistake is a complaint, and no order: %j', (language, says, numbers) => {
  expect(told(language, says)).toMatchObject({ kind: 'wrong-name', numbers, garments: 0 })
})

test.each([
  ['en', "I got the list from our coach and there's a typo in it, it's Moe not Mo"],
  ['en', 'red jerseys, white number on the back. I picked up your list form, no mistakes this time I hope'],
  ['es', 'me dieron la lista y hay un error, es Moe'],
  ['es', 'camisetas rojas, número blanco atrás. el año pasado quedaron sin errores, gracias'],
] as const)('(%s) is none: %s', (language, text) => {
  expect(told(language, [text]).wants).not.toContain('complaint')
})

test.each([
  ['en', 'just checking in on the Kiln Street Kickers tees, we signed off last week'],
  ['en', 'hi! checking up on our softball jerseys'],
  ['es', '¿ya están las playeras de los Faroles?'],
] as const)('(%s) how it stands is asked, and nothing ordered: %s', (language, text) => {
  expect(told(language, [text])).toMatchObject({ garments: 0, wants: ['status'] })
})
