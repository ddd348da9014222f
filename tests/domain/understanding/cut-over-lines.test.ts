import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: ['softbol, jerseys azul rey con número atrás en blanco, y aparte 3 polos negras con COACH en el pecho en dorado'],
  en: ['softball, royal jerseys with white numbers on the back'],
}

test.each([
  ['es', 'las jugadoras, corte dama:\n1 Ximena M\n5 Daniela G', ['1 Ximena women M', '5 Daniela women L']],
  ['es', 'jugadoras (corte dama)\n1 Ximena M\n5 Daniela G', ['1 Ximena women M', '5 Daniela women L']],
  ['es', 'ahí van, en corte de mujer\n1 Ximena M\n5 Daniela G\ngracias!', ['1 Ximena women M', '5 Daniela women L']],
  ['es', 'las niñas (talla juvenil):\n1 Ximena M\ny las mamás, de dama:\n20 Rosa G', ['1 Ximena youth M', '20 Rosa women L']],
  ['es', 'jugadoras, tallas de mujer:\n1 Ximena M\n5 Daniela G', ['1 Ximena women M', '5 Daniela women L']],
  ['en', 'the girls, all womens:\n1 Ximena M\n5 Dani L', ['1 Ximena women M', '5 Dani women L']],
  ['en', 'kids (youth)\n1 Max M\nparents (adult):\n20 Rosa L', ['1 Max youth M', '20 Rosa men L']],
  [
    'es',
    'las jugadoras, corte dama:\n1 Ximena M\nlas polos son de caballero, 2 en XL y 1 en L',
    ['1 Ximena women M', 'men XL x2', 'men L'],
  ],
] as const)('%s: a line whose end is a cut heads the lines under it: %s', async (language, words, rows) => {
  expect((await heard(language, [...orders[language], words])).rows).toEqual(rows)
})

test.each([
  ['las letras de las polos en blanco y no en dorado', 'white', 'black'],
  ['las polos mejor con letras blancas', 'white', 'black'],
  ['en las polos el texto va en blanco', 'white', 'black'],
  ['el letrero de las polos en rojo', 'red', 'black'],
  ['las letras de los polos amarillas', 'yellow', 'black'],
  ['las polos blancas con letras negras', 'black', 'white'],
])('letters of one of several garments are recoloured there alone: %s', async (words, letters, cloth) => {
  const { order } = (await heard('es', [...orders.es, words])).played.composed
  const colours = order.decorations.map(({ on, layers = [] }) => [on?.join(), layers.map((layer) => layer.colour).join()])
  expect(colours).toContainEqual(['polo', letters])
  expect(colours).toContainEqual(['jersey', 'white'])
  expect(order.garments.map(({ id, colour }) => `${id} ${colour}`)).toEqual(['jersey royal', `polo ${cloth}`])
})
