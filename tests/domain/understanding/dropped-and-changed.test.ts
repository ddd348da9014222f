import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const players = '\n4 Abel M\n5 Cid L\n16 Dov S\n20 García M\n38 Vargas L'
const rows = ['4 Abel men M', '5 Cid men L', '16 Dov men S', '20 García men M', '38 Vargas men L']

/** The list without those numbers, and with other lines for some. */
const after = (gone: readonly string[], changed: Readonly<Record<string, string>>): readonly string[] =>
  rows
    .map((row) => [row.split(' ')[0] ?? '', row] as const)
    .filter(([number]) => !gone.includes(number))
    .map(([number, row]) => changed[number] ?? row)

const english: readonly (readonly [string, readonly string[], Readonly<Record<string, string>>])[] = [
  ['wait, can we drop #38 Vargas and make 20 García an XL?', ['38'], { 20: '20 García men XL' }],
  ['can we drop #5 Cid and make 4 Abel an XL?', ['5'], { 4: '4 Abel men XL' }],
  ['no wait 5 is XL not L and 16 quit the team', ['16'], { 5: '5 Cid men XL' }],
  ['make 4 Abel an XL and drop 5', ['5'], { 4: '4 Abel men XL' }],
  ['drop 5 and give 16 an XL', ['5'], { 16: '16 Dov men XL' }],
  ['remove Cid and change Abel to L', ['5'], { 4: '4 Abel men L' }],
  ['take Cid off and Abel should be 44', ['5'], { 4: '44 Abel men M' }],
  ['Cid quit and Dov wears 7 now', ['5'], { 16: '7 Dov men S' }],
  ['Dov quit and Abel is a large', ['16'], { 4: '4 Abel men L' }],
  ['scratch Vargas and García gets number 2', ['38'], { 20: '2 García men M' }],
  ['can you lose Cid and put Abel in an XL please', ['5'], { 4: '4 Abel men XL' }],
  ['drop Cid and rename Abel to Abe', ['5'], { 4: '4 Abe men M' }],
  ['Cid dropped out and Abel moves to XL', ['5'], { 4: '4 Abel men XL' }],
  ['drop 5 and 16', ['5', '16'], {}],
  ['drop Abel, Cid and Dov', ['4', '5', '16'], {}],
  ['Cid quit, and drop Dov too', ['5', '16'], {}],
]

test.each(english)('"%s" takes off whom it takes off, and nobody else', async (words, gone, changed) => {
  const { rows: found, open } = await heard('en', [
    `5 black mesh jerseys with white numbers on the back, soccer${players}`,
    words,
  ])
  expect(found).toEqual(after(gone, changed))
  expect(open).toEqual([])
})

const spanish: typeof english = [
  ['¿puedes quitar al 5 y hacer al 4 XG?', ['5'], { 4: '4 Abel men XL' }],
  ['Cid se salió y Dov ahora lleva el 7', ['5'], { 16: '7 Dov men S' }],
  ['el 5 ya no va y el 4 quiere XG', ['5'], { 4: '4 Abel men XL' }],
  ['saca a Vargas y cambia a García a XG', ['38'], { 20: '20 García men XL' }],
  ['saca a Vargas y cámbiale la talla a García a G', ['38'], { 20: '20 García men L' }],
  ['borra a Cid y a Abel ponle el 44', ['5'], { 4: '44 Abel men M' }],
  ['quita a Cid, a Abel dale una G', ['5'], { 4: '4 Abel men L' }],
  ['que Abel sea G y quita a Vargas', ['38'], { 4: '4 Abel men L' }],
  ['elimina el 16 y cambia el 4 por el 44', ['16'], { 4: '44 Abel men M' }],
  ['Cid ya no juega y el 4 es talla G', ['5'], { 4: '4 Abel men L' }],
  ['quita al 5 y al 16 por favor', ['5', '16'], {}],
  ['Cid se salió, y quita también a Dov', ['5', '16'], {}],
]

test.each(spanish)('"%s" quita a quien quita, y a nadie más', async (words, gone, changed) => {
  const first = `5 jerseys de malla negros con números blancos atrás, futbol${players.replaceAll(' L', ' G').replace(' S', ' CH')}`
  const { rows: found, open } = await heard('es', [first, words])
  expect(found).toEqual(after(gone, changed))
  expect(open).toEqual([])
})
