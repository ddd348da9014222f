import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const complaintIn = (words: string) => {
  const { wants } = play({ id: 'worst', now: '2026-11-20T10:00', language: 'es', says: [words], facts: [] }, shop)
  const complaint = wants.flatMap((want) => (want.kind === 'complaint' ? [want.complaint] : [])).at(-1)
  return { kind: complaint?.kind, numbers: complaint?.numbers, washes: complaint?.washes }
}

test.each([
  ['Se despegan los números de los Halcones después de 2 lavadas, el 21 es el peor', 'lift', ['21'], 2],
  ['Se despegaron los números de los jerseys de las Nutrias, sobre todo el 8', 'lift', ['8'], undefined],
  ['Los números de los Topos se están pelando, el 5 y el 17 son los peores', 'lift', ['5', '17'], undefined],
  ['se le cayó el 7 al jersey de mi hijo, equipo Topos', 'lift', ['7'], undefined],
  ['al 21 se le despegó el nombre, somos los Topos', 'lift', ['21'], undefined],
  ['se agrietaron los números de los Topos tras 3 lavadas, el más feo es el 10', 'crack', ['10'], 3],
  ['los números de los Topos se despegan. El peor es el 21', 'lift', ['21'], undefined],
  ['la número 9 y la 11 salieron con el nombre despegado, Topos', 'lift', ['9', '11'], undefined],
  ['se están despegando, en especial la 4 y la 6', 'lift', ['4', '6'], undefined],
  ['se despegaron los números, el 3 y el 30 están peores', 'lift', ['3', '30'], undefined],
])('"%s" tells which of them', (words, kind, numbers, washes) => {
  expect(complaintIn(words)).toEqual({ kind, numbers, washes })
})

test.each([
  'se despegaron letras en las playeras de los Topos después de 2 lavadas',
  'se despegó el estampado de los Topos, lavé el 12 de mayo',
  'hola, el 12 es el partido, se despegaron los números de los Topos',
])('"%s" tells no number of a player', (words) => {
  expect(complaintIn(words).numbers).toBeUndefined()
})
