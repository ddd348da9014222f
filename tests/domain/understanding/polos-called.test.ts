import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const cloth = (language: 'en' | 'es', said: string) => {
  const { composed } = play({ id: 'polo', now: '2026-11-20T10:00', language, says: [said], facts: [] }, shop)
  return composed.order.garments.map(({ id, colour }) => `${id} ${colour}`)
}

test.each([
  ['es', '20 camisas tipo polo blancas con VALE al frente en rojo', ['polo white']],
  ['es', '20 camisetas polo negras con VALE al frente en rojo', ['polo black']],
  ['es', 'una camisa polo roja con VALE al frente en blanco', ['polo red']],
  ['es', '20 camisetas tipo polo negras con VALE al frente', ['polo black']],
  ['es', '20 playeras tipo polo negras con VALE al frente', ['polo black']],
  ['en', '20 polo shirts, white, with VALE on the front in red', ['polo white']],
  ['en', '20 polo style shirts in black with VALE on the front in red', ['polo black']],
  ['en', '20 black golf shirts with VALE on the front in red', ['polo black']],
] as const)('(%s) %j is one garment', (language, said, found) => {
  expect(cloth(language, said)).toEqual(found)
})

test.each([
  ['es', '20 camisetas negras y 5 polos blancos con VALE al frente en rojo', ['tee black', 'polo white']],
  ['en', '20 black shirts and 5 white polos with VALE on the front in red', ['tee black', 'polo white']],
  ['es', '20 camisas negras con VALE al frente en rojo', ['tee black']],
  ['en', '20 black shirts with VALE on the front in red', ['tee black']],
] as const)('(%s) %j stays what it is', (language, said, found) => {
  expect(cloth(language, said)).toEqual(found)
})
