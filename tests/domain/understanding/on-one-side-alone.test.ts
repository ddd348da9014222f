import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: 'soccer, home and away. home is white with red numbers, away is red with white numbers',
  es: 'futbol, local azul marino con número blanco, visitante blanco con número rojo',
}

/** Where names and numbers are, as "name home". */
const worn = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'side', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const all = composed.order.decorations.flatMap(({ content, place, on = [] }) =>
    on.map((id) => `${content?.kind === 'name' ? 'name' : place} ${id}`),
  )
  return { names: all.filter((one) => one.startsWith('name')), numbers: all.filter((one) => !one.startsWith('name')).toSorted() }
}
const both = ['back-number away', 'back-number home', 'front-number away', 'front-number home']

test.each([
  ['en', 'names on the home only', 'home'],
  ['en', 'names only on the away', 'away'],
  ['en', 'only the home gets names', 'home'],
  ['en', 'names just on the home jerseys please', 'home'],
  ['en', 'names on the home, not on the away', 'home'],
  ['en', 'names on the back, but no names on the home', 'away'],
  ['en', 'names on the away only? no, names on the home only', 'home'],
  ['en', 'names on the away only? no — names on the home only', 'home'],
  ['en', 'no - names on the home only', 'home'],
  ['es', 'no, nombres solo en el local', 'home'],
  ['es', 'nombres solo en el local', 'home'],
  ['es', 'los nombres van nada más en el de visita', 'away'],
  ['es', 'nombres únicamente en la de local', 'home'],
  ['es', 'nombres en el local, en el de visita no', 'home'],
  ['es', 'solo la visitante lleva nombre', 'away'],
] as const)('(%s) %j: names on that side alone', (language, said, side) => {
  expect(worn(language, orders[language], said)).toEqual({ names: [`name ${side}`], numbers: both })
})

test.each([
  ['en', `${orders.en}. names only on the away`, 'away'],
  ['es', `${orders.es}. nombres solo en el local`, 'home'],
] as const)('(%s) %j: in the first message too', (language, said, side) => {
  expect(worn(language, said).names).toEqual([`name ${side}`])
})

test.each([
  ['en', 'names on both', 'no names on the away', 'home'],
  ['es', 'nombres en los dos', 'sin nombres en el de visita', 'home'],
] as const)('(%s) %j, then %j: off one side, the other keeps them', (language, first, said, side) => {
  expect(worn(language, orders[language], first, said)).toEqual({ names: [`name ${side}`], numbers: both })
})

test.each([
  ['en', 'front numbers just on the home', ['back-number away', 'back-number home', 'front-number home']],
  ['en', 'no front number on the away', ['back-number away', 'back-number home', 'front-number home']],
  ['es', 'número al frente solo en el local', ['back-number away', 'back-number home', 'front-number home']],
] as const)('(%s) %j: of one place, and the other place stays', (language, said, numbers) => {
  expect(worn(language, orders[language], said)).toEqual({ names: [], numbers })
})

test.each([
  ['en', 'names on both', ['name home', 'name away']],
  ['en', 'names on the back', ['name home', 'name away']],
  ['es', 'nombres en los dos', ['name home', 'name away']],
  ['es', 'nombres en local y visita', ['name home', 'name away']],
  ['en', 'no names on either', []],
] as const)('(%s) %j is of both sides', (language, said, names) => {
  expect(worn(language, orders[language], said)).toEqual({ names, numbers: both })
})
