import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const clothOf = async (language: 'en' | 'es', words: string) => {
  const { composed, conversation } = (await heard(language, [words])).played
  const cloth = composed.order.garments.map(({ colour, from }) => `${colour} ${from}`)
  return { cloth, day: conversation.draft.day ?? null }
}

test.each([
  ['en', 'I’ve got 20 white cotton tees already at home, can you put GO STORM on the front in red?', 'white'],
  ['en', "we've already bought 12 navy hoodies, just need the names on the back in white", 'navy'],
  ['en', "I'll bring 8 grey hoodies on Tuesday. Name on the back in navy", 'grey'],
  ['en', 'can we drop off 10 black tees Friday morning? HAWKS in gold on the front', 'black'],
  ['en', 'We will supply the jerseys, 12 red ones, white number on the back', 'red'],
  ['en', 'can I drop them off Tuesday? 10 black tees with HAWKS in gold on the front', 'black'],
  ['es', 'les llevo el martes 10 sudaderas negras para poner TIGRES al frente en dorado', 'black'],
  ['es', 'ya tenemos 12 playeras rojas de algodón, falta el número blanco atrás', 'red'],
  ['es', 'os dejo el lunes 8 polos grises, con ROBLE en el pecho izquierdo en negro', 'grey'],
  ['es', '¿las puedo dejar el lunes? Son 12 sudaderas rojas, nombre atrás en blanco', 'red'],
  ['es', 'los llevo el martes, son 8 polos grises con ROBLE en el pecho izquierdo en negro', 'grey'],
  ['es', 'voy a llevar 6 sudaderas azul marino el viernes, nombre atrás en blanco', 'navy'],
] as const)(
  '(%s) %j: the garments are the customer’s, and the day they come in is none of need',
  async (language, words, colour) => {
    expect(await clothOf(language, words)).toEqual({ cloth: [`${colour} customer`], day: null })
  },
)

test.each([
  ['en', 'we have 14 players and want navy jerseys, white number on the back', 'navy shop'],
  ['en', 'I have an order of 12 red hoodies to make, name on the back in white', 'red shop'],
  ['en', "12 red hoodies, name on the back in white. I'll bring the deposit on Friday", 'red shop'],
  ['en', "12 red hoodies, name on the back in white. We'll bring a check by Tuesday", 'red shop'],
  ['es', 'tenemos 14 jugadoras y queremos playeras rojas con número blanco atrás', 'red shop'],
  ['es', 'playeras rojas con número blanco atrás, el anticipo lo llevo el lunes', 'red shop'],
] as const)('(%s) %j: they are the shop’s', async (language, words, cloth) => {
  expect((await clothOf(language, words)).cloth).toEqual([cloth])
})

test('the day of need stands beside the day of bringing', async () => {
  const words = "we'll drop off 12 navy jerseys on Friday and need them back by Dec 12 5pm, white numbers on the back"
  expect(await clothOf('en', words)).toEqual({ cloth: ['navy customer'], day: '2026-12-12' })
})
