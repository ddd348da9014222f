import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: 'Necesito 6 jerseys verde botella para mi equipo de softbol, Las Torcazas, numero atras en blanco',
  en: 'Need 6 forest green jerseys for my softball team the Doves, white number on the back',
}

test.each([
  [
    'es',
    'Y aparte dos polos negros talla L para los entrenadores que digan COACH en el pecho izq. en dorado',
    'polo left-chest COACH gold',
    'polo L x2',
  ],
  [
    'es',
    'Los coaches llevan polo negro, COACH en dorado en el pecho izquierdo, son 2 talla L',
    'polo left-chest COACH gold',
    'polo L x2',
  ],
  ['es', '2 polos negros L: COACH, pecho izq, dorado', 'polo left-chest COACH gold', 'polo L x2'],
  ['es', 'dos polos negros L con COACH en la manga der. en blanco', 'polo right-sleeve COACH white', 'polo L x2'],
  ['es', 'también 3 sudaderas grises que digan MAMÁ atrás en rosa, talla M', 'hoodie yoke MAMÁ pink', 'hoodie M x3'],
  [
    'en',
    'Also two black polos size L for the coaches that say COACH on the left chest in gold',
    'polo left-chest COACH gold',
    'polo L x2',
  ],
  ['en', 'coaches get black polos, COACH in gold on the lft chest, 2 of them size L', 'polo left-chest COACH gold', 'polo L x2'],
  ['en', 'also 3 gray hoodies that say MOM on the back in pink, size M', 'hoodie yoke MOM pink', 'hoodie M x3'],
] as const)('%s: a second garment with its own text, place, colour and size: %s', async (language, words, mark, row) => {
  const { order } = (await heard(language, [orders[language], words])).played.composed
  const marks = order.decorations.map(({ on, place, content, layers }) =>
    [on?.join('+'), place, content?.kind === 'text' ? content.text : content?.kind, layers?.[0]?.colour].join(' '),
  )
  expect(marks).toEqual(['jersey back-number number white', mark])
  expect(order.roster.map(({ garment, size, quantity }) => `${garment} ${size} x${quantity}`)).toEqual([row])
})
