import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const order = 'Nosotros ponemos las playeras, son 100% poliéster, pónganles el nombre de cada quien atrás en negro'

const lines = (list: string) =>
  play({ id: 'beside', now: '2026-11-20T10:00', language: 'es', says: [order, list], facts: [] }, shop).composed.order.roster.map(
    ({ number, name, size, fit, note }) => [number, name, fit === 'men' ? undefined : fit, size, note].filter(Boolean).join(' '),
  )

test.each([
  ['Olga Treviño, M de dama, manga larga\nChuy Elizondo, G', ['Olga Treviño women M manga larga', 'Chuy Elizondo L']],
  ['Olga Treviño M dama manga larga\nChuy Elizondo G', ['Olga Treviño women M manga larga', 'Chuy Elizondo L']],
  ['Olga, M de dama, de manga larga\nPatricio, XG, manga corta', ['Olga women M de manga larga', 'Patricio XL manga corta']],
  ['Olga M (manga larga)\nChuy G', ['Olga M manga larga', 'Chuy L']],
  ['Olga M\nChuy G, la manga larga', ['Olga M', 'Chuy L la manga larga']],
  ['Olga M\nNoemí Sierra M, con manga larga', ['Olga M', 'Noemí Sierra M con manga larga']],
  ['2 Rocha M\n11 Espino M manga larga y capitana', ['2 Rocha M', '11 Espino M manga larga y capitana']],
  ['2 Rocha M de dama, capitana\n6 Luján CH', ['2 Rocha women M capitana', '6 Luján S']],
])('"%s" keeps what is beside a player out of the name', (list, found) => {
  expect(lines(list)).toEqual(found)
})

test.each([
  'la talla te la paso luego',
  'talla pendiente',
  'luego te digo la talla',
  'después le paso la talla',
  'falta la talla',
  'aún no sé su talla',
  'todavía no tengo la talla',
  'mañana te mando la talla',
  'la talla se la debo',
  'me falta su talla',
  'talla luego',
])('"Noemí Galaz, %s" is a player whose size comes later', (words) => {
  expect(lines(`Olga M\nChuy G\nNoemí Galaz, ${words}`)).toEqual(['Olga M', 'Chuy L', 'Noemí Galaz later'])
})

test.each([
  'la talla de Noemí te la paso luego',
  'me falta la talla de Noemí',
  'falta una talla',
  'las tallas te las paso luego',
])('"%s" is a sentence, not a player', (words) => {
  expect(lines(`Olga M\nChuy G\n${words}`)).toEqual(['Olga M', 'Chuy L'])
})
