import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const garments = async (...says: readonly string[]) =>
  (await heard('es', says)).played.composed.order.garments.map(({ id, colour }) => `${id} ${colour}`)

test.each([
  'balonmano. dos camisetas por jugadora: la de casa roja con número negro y la de fuera blanca con número rojo',
  'primera equipación roja con dorsal blanco, segunda equipación blanca con dorsal verde',
  'camiseta de casa roja, camiseta de fuera blanca, el número en la espalda en negro en las dos',
  'equipación de casa: roja, dorsal blanco. equipación de fuera: blanca, dorsal rojo',
  'la de casa es roja y la de fuera blanca, con el número negro atrás las dos',
  'las de casa rojas, las de fuera blancas, dorsales en amarillo',
  'dos equipaciones: la de local roja con números negros y la de visitante blanca con números rojos',
])('home and away as they are called in Spain: %s', async (words) => {
  expect(await garments(words)).toEqual(['home red', 'away white'])
})

test.each([
  ['la de fuera al final en azul marino', ['home red', 'away navy']],
  ['la de casa mejor negra', ['home black', 'away white']],
])('one of the two is changed: %s', async (words, found) => {
  expect(await garments('camiseta de casa roja, camiseta de fuera blanca, dorsal negro', words)).toEqual(found)
})

test.each([
  ['que onda, cómo van las playeras de los Coralillos? ya merito o todavía les falta', true],
  ['cómo van nuestras camisetas?', true],
  ['ya están mis uniformes?', true],
  ['las camisetas las llevamos nosotros, ya están compradas. LOBOS en el pecho, lado del corazón, en blanco', false],
  ['camisetas rojas, los números así como van las de local', false],
  ['ya están todas pagadas. son camisetas rojas', false],
])('whether it is asked how far the order is: %s', async (words, asked) => {
  const { wants } = (await heard('es', [words])).played
  expect(wants.some(({ kind }) => kind === 'status')).toBe(asked)
})
