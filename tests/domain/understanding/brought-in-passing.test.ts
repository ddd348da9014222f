import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['en', "we got 7 windbreakers we'd bring you, navy, CAVERS on the right chest in white", 'customer'],
  ['en', "it's for 8 polos that we'll drop off, black, BAR on the left chest in white", 'customer'],
  ['en', 'BAR in white on the back of the 12 black tees I can bring you', 'customer'],
  ['es', 'son 10 polos que les llevamos, BAR en el pecho izquierdo en blanco', 'customer'],
  ['es', 'son 10 polos negros que les llevamos, BAR en el pecho izquierdo en blanco', 'customer'],
  ['es', 'ponerle BAR en la espalda a 6 sudaderas grises que os llevo', 'customer'],
  ['en', "8 black polos, BAR on the left chest in white. the list of polos I'll bring tomorrow", 'shop'],
  ['es', '8 polos negros, BAR en el pecho izquierdo en blanco. el anticipo que les llevo es de 500', 'shop'],
] as const)('(%s) %s: whose garments they are', async (language, words, from) => {
  const { garments } = (await heard(language, [words])).played.composed.order
  expect(garments.map((one) => one.from)).toEqual([from])
})

test.each([
  [
    'en',
    [
      'this is coach Hollis. red jerseys, white number on the back',
      '7 Drennan L\n8 Bo M',
      "Drennan's mom texted, it's Drennen, two e's",
    ],
    'Hollis',
  ],
  ['en', ["it's Marge. red jerseys, white number on the back", '7 Drennan L\n8 Bo M', "it's Boe, not Bo"], 'Marge'],
  ['es', ['soy Trini. camisetas rojas, número blanco atrás', '7 Vane L\n8 Asun M', 'Vane es con b, es Bane'], 'Trini'],
  ['en', ['red jerseys, white number on the back', '7 Drennan L\n8 Marge M', "it's Marge by the way, hi"], 'Marge'],
] as const)('(%s) %j: a name of the list that is spelt anew orders nothing', async (language, says, orders) => {
  expect((await heard(language, says)).played.composed.order.people?.orders).toBe(orders)
})
