import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const marks = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'nothing', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.decorations.map(({ place, content, layers }) =>
    [place, content?.kind === 'text' ? content.text : content?.kind, layers?.[0]?.colour].join(' '),
  )
}

test.each([
  ['en', ['8 white tees. front: BLUE CREW in royal blue. back: nothing'], ['full-front BLUE CREW royal']],
  ['en', ['8 white tees. back: BLUE CREW in royal blue, front: none'], ['yoke BLUE CREW royal']],
  ['en', ['8 white tees with BLUE CREW on the front in royal blue', 'back: nothing'], ['full-front BLUE CREW royal']],
  ['en', ['8 white tees\nfront - BLUE CREW in royal\nback - blank'], ['full-front BLUE CREW royal']],
  ['en', ['8 white tees with BLUE CREW on the back in royal. Front: no'], ['yoke BLUE CREW royal']],
  ['es', ['8 playeras blancas. frente: BANDA AZUL en azul rey. espalda: nada'], ['full-front BANDA AZUL royal']],
  ['es', ['8 playeras blancas, BANDA AZUL al frente en azul rey', 'espalda: ninguno'], ['full-front BANDA AZUL royal']],
  ['es', ['8 playeras blancas. Espalda: BANDA en azul rey. Frente: vacío'], ['yoke BANDA royal']],
] as const)('(%s) %j: a place with nothing stays free', (language, says, found) => {
  expect(marks(language, ...says)).toEqual(found)
})

test.each([
  [
    'en',
    ['8 white tees. front: BLUE CREW in royal blue. back: number in red'],
    ['full-front BLUE CREW royal', 'back-number number red'],
  ],
  ['en', ['8 white tees. front: BLUE CREW in royal blue. back: GO in red'], ['full-front BLUE CREW royal', 'yoke GO red']],
  [
    'es',
    ['8 playeras blancas. frente: BANDA en azul rey. espalda: número rojo'],
    ['full-front BANDA royal', 'back-number number red'],
  ],
  ['es', ['8 playeras blancas. frente: BANDA en azul rey. espalda: VAMOS en rojo'], ['full-front BANDA royal', 'yoke VAMOS red']],
] as const)('(%s) %j: a place with something does not', (language, says, found) => {
  expect(marks(language, ...says)).toEqual(found)
})
