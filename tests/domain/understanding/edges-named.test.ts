import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

/** What stands around each thing: colours of outlines and shadows by place. */
const edges = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'edges', now: '2027-03-02T10:00', language, says, facts: [] }, shop)
  return Object.fromEntries(
    composed.order.decorations.map(({ place, layers }) => {
      const around = (layers ?? []).filter((layer) => layer.kind === 'vinyl' && typeof layer.shape === 'object')
      return [place, around.map(({ colour }) => colour).join()]
    }),
  )
}

const onNumbers = (colour: string) => ({ 'front-number': colour, 'back-number': colour, name: '' })
const onNames = (colour: string) => ({ 'front-number': '', 'back-number': '', name: colour })
const all = (colour: string) => ({ 'front-number': colour, 'back-number': colour, name: colour })
const en = 'Teal jerseys with white numbers front and back and names above'
const es = 'Playeras negras, números blancos adelante y atrás y nombre arriba'

test.each([
  ['en', [`${en}, gold shadow on the numbers`], onNumbers('gold')],
  ['en', [`${en}. a black shadow on the numbers please`], onNumbers('black')],
  ['en', [`${en}, with a shadow in gold on the numbers`], onNumbers('gold')],
  ['en', [`${en}, gold shadow on the names`], onNames('gold')],
  ['en', [`${en}, red outline on the names only`], onNames('red')],
  ['en', [`${en}, red outline around the numbers`], onNumbers('red')],
  ['en', [`${en}, gold shadow on the numbers and names`], all('gold')],
  ['en', [`${en}, the numbers should have a black shadow`], onNumbers('black')],
  ['en', [en, 'put a gold shadow on the numbers'], onNumbers('gold')],
  ['en', [en, 'navy outline on the names'], onNames('navy')],
  ['en', [`${en}, gold shadow on the numbers and names`, 'no shadow on the names'], onNumbers('gold')],
  ['es', [`${es}, sombra dorada en los números`], onNumbers('gold')],
  ['es', [`${es}. Con sombra roja en el nombre`], onNames('red')],
  ['es', [`${es}, contorno rojo alrededor de los números`], onNumbers('red')],
  ['es', [`${es}, sombra dorada en los números y el nombre`], all('gold')],
  ['es', [es, 'le pone sombra dorada a los números'], onNumbers('gold')],
  ['es', [es, 'contorno dorado en los nombres nada más'], onNames('gold')],
  ['es', [`${es}, sombra dorada en los números y el nombre`, 'sin sombra en el nombre'], onNumbers('gold')],
] as const)('%s: %j', (language, says, wanted) => {
  expect(edges(language, ...says)).toEqual(wanted)
})
