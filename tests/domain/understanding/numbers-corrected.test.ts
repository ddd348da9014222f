import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const first = {
  en: 'black jerseys, gold number on the back, names above',
  es: 'jersey negro, número dorado atrás y apellido arriba',
} as const
const list = '11 Ibarra M\n27 Hale XL\n4 Nkemelu L'
const before = ['11 Ibarra men M', '27 Hale men XL', '4 Nkemelu men L']
const withIbarra = (number: string) => [`${number} Ibarra men M`, ...before.slice(1)]
const withHale = (number: string) => ['11 Ibarra men M', `${number} Hale men XL`, '4 Nkemelu men L']

test.each([
  ['en', 'Ibarra is number twelve not eleven', withIbarra('12')],
  ['en', 'Ibarra is not 11, but 12', withIbarra('12')],
  ['en', 'Ibarra is not number eleven but twelve', withIbarra('12')],
  ['en', 'sorry, Hale wears thirty seven, not twenty seven', withHale('37')],
  ['es', 'Hale es la treinta y siete, no la veintisiete', withHale('37')],
  ['es', 'Ibarra ya no es 11 sino 24', withIbarra('24')],
  ['es', 'Ibarra no es el once, sino el doce', withIbarra('12')],
  // Nobody of the list has it, another has the new one, or pieces are counted.
  ['en', 'we need twelve, not eleven', before],
  ['en', 'Ibarra has two brothers, not three', before],
  ['es', 'son doce jerseys, no once', before],
] as const)('a number is put right in words, %s: %j', async (language, words, rows) => {
  expect((await heard(language, [first[language], list, words])).rows).toEqual(rows)
})

const withoutHale = ['11 Ibarra men M', '4 Nkemelu men L']

test.each([
  ['en', 'Hale is staying home, knee', withoutHale],
  [
    'en',
    'Hale stays home this time. Quill goes instead, he needs a 2XL',
    ['11 Ibarra men M', 'Quill men 2XL', '4 Nkemelu men L'],
  ],
  ['en', 'Hale broke her wrist and is out', withoutHale],
  [
    'en',
    'Hale broke her wrist and is out. Quill takes her spot, same number and same size',
    ['11 Ibarra men M', '27 Quill men XL', '4 Nkemelu men L'],
  ],
  ['es', 'Hale se queda en casa', withoutHale],
  ['es', 'Hale se lesionó y ya no juega', withoutHale],
  [
    'es',
    'Hale se queda en casa. Quispe va en su lugar, mismo número y misma talla',
    ['11 Ibarra men M', '27 Quispe men XL', '4 Nkemelu men L'],
  ],
  ['en', 'is Hale staying home?', before],
  ['en', 'Hale broke her wrist and is sad', before],
  ['es', 'Hale se lesionó pero juega', before],
] as const)('who stays behind leaves the list and the garments stay, %s: %j', async (language, words, rows) => {
  const { rows: told, played } = await heard(language, [first[language], list, words])
  expect(told).toEqual(rows)
  expect(played.composed.order.garments.length).toBe(1)
  expect(played.composed.order.decorations.length).toBe(2)
})

test.each([
  ['12 Huamaní varón M\n13 Quispe dama S', ['12 Huamaní men M', '13 Quispe women S']],
  ['12 Huamaní M varón\n13 Quispe S dama', ['12 Huamaní men M', '13 Quispe women S']],
  ['12 Varona M\n13 Damaris S', ['12 Varona men M', '13 Damaris men S']],
] as const)('the word of a cut behind a name is no surname: %j', async (rows, told) => {
  expect((await heard('es', [first.es, rows])).rows).toEqual(told)
})
