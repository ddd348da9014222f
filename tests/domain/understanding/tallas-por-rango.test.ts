import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = ['rugby, camisetas negras, números atrás en blanco', 'los números van del 1 al 6']

test.each([
  ['las tallas: del 1 al 3 XL, del 4 al 5 L y el resto M', ['1 XL', '2 XL', '3 XL', '4 L', '5 L', '6 M']],
  ['tallas del 1 al 3 XL y del 4 al 6 M', ['1 XL', '2 XL', '3 XL', '4 M', '5 M', '6 M']],
  ['del 1 al 3 son XL y los demás M', ['1 XL', '2 XL', '3 XL', '4 M', '5 M', '6 M']],
  ['del 1 al 6 todos en L', ['1 L', '2 L', '3 L', '4 L', '5 L', '6 L']],
])('sizes from one number to another renumber nobody: %s', async (words, rows) => {
  expect((await heard('es', [...order, words])).rows.map((row) => row.replace(' men', ''))).toEqual(rows)
})

test('from one number to another is a new number where no size follows', async () => {
  const list = ['rugby, camisetas negras, números atrás en blanco', '1 Ana M\n2 Bea L', 'cambien a Ana del 1 al 5']
  expect((await heard('es', list)).rows).toEqual(['5 Ana men M', '2 Bea men L'])
})

test.each(['Roca se ha dado de baja. En su sitio viene Pons, S', 'Roca ha dejado el equipo, en su puesto entra Pons, talla S'])(
  'who comes in the place of another is not the other in another size: %s',
  async (words) => {
    const list = ['camisetas negras con el nombre atrás', 'Ferrer M, Soler S, Roca M', words]
    expect((await heard('es', list)).rows).toEqual(['Ferrer men M', 'Soler men S', 'Pons men S'])
  },
)

test('a line of a table whose first cell is empty keeps its player', async () => {
  const table = 'talla\tnombre\tnumero\nYM\tAldo\t07\nYL\tBastián\t00\n\tEfrén\t5\nYXL\tDemian\t23'
  expect((await heard('es', ['básquet, jerseys blancos, número atrás', table])).rows.map((row) => row.split(' ')[1])).toEqual([
    'Aldo',
    'Bastián',
    'Efrén',
    'Demian',
  ])
})
