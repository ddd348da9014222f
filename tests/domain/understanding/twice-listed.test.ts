import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order =
  'jersey azul rey con número al frente en blanco. 6 Barraza G, 16 Monsiváis M, 21 Ledesma CH, 16 Monsiváis M, 3 Urías G'
const once = ['6 Barraza men L', '16 Monsiváis men M', '21 Ledesma men S', '3 Urías men L']

test.each([
  'ay puse dos veces al Monsiváis, es uno nomas',
  'Monsiváis está repetido',
  'el 16 está dos veces, quita uno',
  'repetí al 16',
  'el 16 se repite, va uno solo',
  'hay dos Monsiváis, es uno solo',
  'quita al Monsiváis repetido',
  'está repetido el 16',
  'el 16 está duplicado',
  'anoté dos veces al 16',
])('"%s" leaves one of two lines that are alike', async (words) => {
  expect((await heard('es', [order, words])).rows).toEqual(once)
})

test.each(['el 16 está bien dos veces', 'sí, son dos Monsiváis', 'el 16 no está repetido', '¿puse dos veces al 16?'])(
  '"%s" takes no line away',
  async (words) => {
    expect((await heard('es', [order, words])).rows).toHaveLength(5)
  },
)

test('of lines that differ it is asked which is too many', async () => {
  const said = [
    'jersey azul con número y nombre',
    '6 Barraza G\n16 Monsiváis M\n16 Monsiváis L',
    'puse dos veces al Monsiváis, es uno nomás',
  ]
  const { rows, open } = await heard('es', said)
  expect(rows).toHaveLength(3)
  expect(open).toContain('drop')
})
