import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = 'navy jerseys, white names and numbers on the back'
const spanish = 'jersey negro con número y apellido blanco atrás'

test.each([
  [
    'number twenty three is Okafor large. number oh seven is Baer spelled B A E R medium. number forty is Quill extra large',
    ['23 Okafor men L', '07 Baer men M', '40 Quill men XL'],
  ],
  [
    "jersey number nine is Castellano, he's a large, then number double zero is Petty, small, and number ninety nine is Wu, double extra large",
    ['9 Castellano men L', '00 Petty men S', '99 Wu men 2XL'],
  ],
  [
    'seventeen Ruiz medium comma eighteen Soto large comma forty-one Li youth small period',
    ['17 Ruiz men M', '18 Soto men L', '41 Li youth S'],
  ],
  ['Okafor is number twenty three, large. Baer is number oh seven, medium', ['23 Okafor men L', '07 Baer men M']],
  [
    "number one is Abbott medium, number eleven is Zed, that's spelled Z E D D, large full stop",
    ['1 Abbott men M', '11 Zedd men L'],
  ],
  [
    "number forty is Quill extra large and number four is Quill too his brother, that one's a youth extra large",
    ['40 Quill men XL', '4 Quill youth XL'],
  ],
])('a list spoken in English: %j', async (list, rows) => {
  expect((await heard('en', [english, list])).rows).toEqual(rows)
})

test.each([
  [
    'el veintidós es Ruiz chica de niño, el cinco es Soto mediana de niño, el cero nueve Lara grande de niño y el setenta y uno ese ya es Peña adulto mediana',
    ['22 Ruiz youth S', '5 Soto youth M', '09 Lara youth L', '71 Peña men M'],
  ],
  [
    'el treinta y tres es de Lalo coma talla grande punto el doble siete es de Beto mediana punto y el uno es Chema chica',
    ['33 Lalo men L', '77 Beto men M', '1 Chema men S'],
  ],
  [
    'número ocho Tadeo mediana, número diecisiete Renata chica de dama y número cero cero Ulises doble extra grande',
    ['8 Tadeo men M', '17 Renata women S', '00 Ulises men 2XL'],
  ],
  ['el 22 es chica de niño, el 5 es mediana de niño y el 09 grande de niño', ['22 youth S', '5 youth M', '09 youth L']],
])('a list spoken in Spanish: %j', async (list, rows) => {
  expect((await heard('es', [spanish, list])).rows).toEqual(rows)
})

test.each([
  ['23 Okafor large, 07 Baer medium, 40 Quill extra large and 4 Quill youth extra large', 4],
  ['23 is a large, 07 is a medium, 40 is an extra large and 4 is a youth extra large', 4],
  ['okay, number 8 Diaz small; number 80 Diaz, his dad, large; then 88 is Lowe, medium. thanks', 3],
])('nobody of a list told in one sentence is lost: %j', async (list, count) => {
  const { rows } = await heard('en', [english, list])
  expect(rows).toHaveLength(count)
  expect(rows.every((row) => /^\d+ /.test(row))).toBe(true)
})

test.each([
  ['en', 'navy tees, LYNX on the front in white', 'three small, four medium and two large', ['men S x3', 'men M x4', 'men L x2']],
  ['en', 'navy tees, LYNX on the front in white', "we're number one in the league! three mediums please", ['men M x3']],
  ['en', 'navy tees, LYNX on the front in white', 'twenty three larges and fifteen mediums', ['men L x23', 'men M x15']],
  [
    'es',
    'playeras negras con LINCES al frente',
    'son 4 de hombre M, 6 de hombre L y 2 de mujer M',
    ['men M x4', 'men L x6', 'women M x2'],
  ],
  ['es', 'playeras negras con LINCES al frente', 'treinta y dos playeras, todas M', ['men M x32']],
  ['es', 'playeras negras con LINCES al frente', 'dos doble extra grande y una triple XL', ['men 2XL x2', 'men 3XL']],
] as const)('amounts in words stay amounts: %s %s %s', async (language, first, list, rows) => {
  expect((await heard(language, [first, list])).rows).toEqual(rows)
})

test('numbers of the list are spoken of in words, too', async () => {
  const list = '4 Ann M\n7 Bo L'
  const changed = await heard('en', [english, list, 'number seven should be a medium and number four is out'])
  expect(changed.rows).toEqual(['7 Bo men M'])
  const larger = await heard('es', [spanish, '4 Ana M\n7 Beto L', 'perdón el siete no es grande es extra grande. punto'])
  expect(larger.rows).toEqual(['4 Ana men M', '7 Beto men XL'])
})

test('days, hours and words that are to be printed are no players', async () => {
  const { rows, played } = await heard('es', [
    'playeras negras con LINCES al frente, 4 medianas',
    'las recojo el cinco de enero a las tres de la tarde en punto',
  ])
  expect(rows).toEqual(['men M x4'])
  expect(played.conversation.draft).toMatchObject({ day: '2027-01-05', hour: '15:00' })
})
