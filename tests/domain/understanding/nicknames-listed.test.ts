import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: 'navy polos, nicknames on the back in yellow, THIMBLE on the left chest in yellow',
  es: 'polos azul marino, el mote en la espalda en amarillo y BOLICHES en el pecho izquierdo en amarillo',
}

test.each([
  ['en', 'Dave "The Hammer" L\nSully "Pints" XL\nNige "No Score" M', ['The Hammer men L', 'Pints men XL', 'No Score men M']],
  ['en', '9 Dave “Hammer” L\n4 Sully “Pints” womens M', ['9 Hammer men L', '4 Pints women M']],
  ['en', 'Dave "Hammer" L, Sully "Pints" XL, Nige "Noscore" M', ['Hammer men L', 'Pints men XL', 'Noscore men M']],
  ['es', 'Paco «Zurdo» L\nChus «Jefa» S de mujer', ['Zurdo men L', 'Jefa women S']],
  ['es', 'Paco "el Zurdo" - L\nManolo "Boina" - XL', ['el Zurdo men L', 'Boina men XL']],
  ['en', 'Dave "Hammer" Smith L\nSully "Pints" Jones XL', ['Dave "Hammer" Smith men L', 'Sully "Pints" Jones men XL']],
  ['es', 'Paco Zurdo L\nManolo Boina XL', ['Paco Zurdo men L', 'Manolo Boina men XL']],
] as const)('(%s) %j', async (language, words, rows) => {
  const { rows: found, played } = await heard(language, [order[language], words])
  expect(found).toEqual(rows)
  const texts = Object.values(played.conversation.draft.marks).flatMap(({ text }) => text ?? [])
  expect(texts).toEqual([language === 'en' ? 'THIMBLE' : 'BOLICHES'])
})

test.each([
  [
    'en',
    'Dave "The Hammer" L\nSully "Pints" XL\nTam "Rocket" S',
    'just the nicknames on the shirts, not the real names',
    ['The Hammer', 'Pints', 'Rocket'],
  ],
  ['en', 'Dave "Hammer" L\nSully "Pints" XL', 'only nicknames please, no first names', ['Hammer', 'Pints']],
  ['es', 'Paco «Zurdo» L\nManolo «Boina» XL', 'en el polo va solo el mote, el nombre no', ['Zurdo', 'Boina']],
  ['es', 'Paco «Zurdo» L\nManolo «Boina» XL', 'solo los apodos, sin nombres de pila', ['Zurdo', 'Boina']],
] as const)('(%s) the nicknames stay where the other names are refused: %j, %s', async (language, list, words, names) => {
  const { played } = await heard(language, [order[language], list, words])
  expect(played.composed.order.roster.map(({ name }) => name)).toEqual(names)
  expect(played.composed.order.decorations.some(({ place }) => place === 'name')).toBe(true)
})

test.each([
  ['en', 'no names on the polos after all'],
  ['es', 'sin nombres en los polos, mejor'],
] as const)('(%s) names that are refused alone are taken off: %s', async (language, words) => {
  const { played } = await heard(language, [order[language], words])
  expect(played.composed.order.decorations.some(({ place }) => place === 'name')).toBe(false)
})
