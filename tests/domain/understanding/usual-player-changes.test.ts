import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** What is said of players while it is asked who orders: changes of the list, and chatter that changes nothing; common practice. */
const shop = await starterShop()

const lines = ['3 Ana Ortiz YM', '8 Bea Pryce YL', '14 Cleo Nuñez YL', '21 Dee McAdams AS', '30 Eve Stone AM', '44 Flo Green AL']
const bases = {
  en: 'navy mesh soccer jerseys for the Marsh Harriers, white numbers on the back, white names above, need them Dec 12 at 5pm',
  es: 'jerseys de futbol de malla azul marino para los Gavilanes de Anáhuac, numeros blancos atras, nombres blancos arriba, los necesito el 12 de diciembre a las 5 de la tarde',
} as const

const after = (language: 'en' | 'es', said: string) => {
  const says = [[bases[language], ...lines].join('\n'), language === 'en' ? 'all are 13 or older' : 'nadie es menor de 13', said]
  const { order } = play({ id: 'players', now: '2026-11-20T10:00', language, says, facts: [] }, shop).composed
  const rows = order.roster.map(({ number, name, fit, size }) => `${number} ${name} ${fit === 'youth' ? 'Y' : 'A'}${size}`)
  const gone = lines.filter((line) => !rows.includes(line)).map((line) => line.split(' ')[0])
  const fresh = rows.filter((row) => !lines.includes(row))
  return { gone, fresh, orders: order.people.orders, places: order.decorations.map(({ place }) => place) }
}

const places = ['back-number', 'name']

test.each([
  ['en', 'Ana isnt playing anymore', ['3'], []],
  ['en', 'Flo and Eve are out', ['30', '44'], []],
  ['en', 'Bea, Ana is out', ['3'], []],
  ['en', '44 cancelled', ['44'], []],
  ['en', 'Green quit', ['44'], []],
  ['es', 'Flo y Eve no van', ['30', '44'], []],
  ['en', 'its MacAdams not McAdams', ['21'], ['21 Dee MacAdams AS']],
  ['en', 'Flo goes by Florence', ['44'], ['44 Florence Green AL']],
  ['en', 'put Florence for Flo', ['44'], ['44 Florence Green AL']],
  ['en', '44 should say Florence Green', ['44'], ['44 Florence Green AL']],
  ['es', 'el apellido de Eve es Stohn', ['30'], ['30 Eve Stohn AM']],
  ['en', 'Ana is now Ana Ortiz-Vega, she got married', ['3'], ['3 Ana Ortiz-Vega YM']],
  ['en', 'Green is an adult XL', ['44'], ['44 Flo Green AXL']],
  ['en', 'Stone should be Stowne', ['30'], ['30 Eve Stowne AM']],
] as const)('%s: "%s" changes %s and nothing else', (language, said, gone, fresh) => {
  expect(after(language, said)).toEqual({ gone, fresh, orders: undefined, places })
})

test.each([
  ['en', 'no names for Ana'],
  ['en', 'leave Anas name off'],
  ['en', 'Ana wants two'],
  ['en', 'Ana needs an extra'],
  ['en', 'we won 8 to 3'],
  ['en', 'bus 14 leaves at 3'],
  ['en', 'Nunez without the accent'],
  ['en', 'sorry Stone is Stohn or so, I will look it up'],
  ['en', 'Eve says thanks'],
  ['es', 'ganamos 8 a 3'],
  ['es', 'Ana está muy emocionada'],
] as const)('%s: "%s" changes nothing by itself', (language, said) => {
  expect(after(language, said)).toEqual({ gone: [], fresh: [], orders: undefined, places })
})
