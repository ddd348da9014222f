import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  es: ['jersey gris con números rojos atrás y el nombre arriba del número', '4 Ana Ruiz M\n7 Beto Luna L\n12 Diego Sanz M'],
  en: ['grey jerseys, red numbers on the back, names above the number', '4 Ana Ruiz M\n7 Beto Luna L\n12 Diego Sanz M'],
}

const after = (language: 'en' | 'es', ...words: readonly string[]) => {
  const played = play({ id: 'own', now: '2026-11-20T10:00', language, says: [...orders[language], ...words], facts: [] }, shop)
  const { roster, decorations } = played.composed.order
  const hues = decorations.map(({ layers }) => (layers?.[0]?.kind === 'vinyl' ? layers[0].colour : undefined))
  const without = roster.map((row) => [row.name?.split(' ')[0], ...(row.without ?? [])].join(' '))
  return { without, hues, replies: played.replies.map(({ code }) => code) }
}

const all = ['Ana', 'Beto', 'Diego']
const off = (...names: readonly string[]) => all.map((name) => (names.includes(name) ? `${name} name` : name))

test.each([
  ['la 12 sin nombre', ['Diego']],
  ['el 12 sin nombre', ['Diego']],
  ['al 12 quítale el nombre', ['Diego']],
  ['el de Diego va sin nombre', ['Diego']],
  ['Diego no quiere nombre', ['Diego']],
  ['Diego no lleva nombre, solo número', ['Diego']],
  ['sin nombre el 12', ['Diego']],
  ['la 12 no lleva nombre', ['Diego']],
  ['quítale el nombre a la 4', ['Ana']],
  ['el 7 va sin nombre, nada más el número', ['Beto']],
  ['a Beto no le pongas nombre', ['Beto']],
  ['Ana y Diego sin nombre', ['Ana', 'Diego']],
  ['sin nombre el 12 y el 4', ['Ana', 'Diego']],
  ['el 7 y el 12 sin nombre porfa', ['Beto', 'Diego']],
  ['todos sin nombre menos el 4', ['Beto', 'Diego']],
])('"%s" takes the name off theirs and nobody off the list', (words, names) => {
  const { without, hues } = after('es', words)
  expect(without).toEqual(off(...names))
  expect(hues).toEqual(['red', 'red'])
})

test.each(['no name for 12', '12 without a name', "Diego doesn't want a name", 'skip the name on 12'])(
  '"%s" is heard in English',
  (words) => {
    expect(after('en', words).without).toEqual(off('Diego'))
  },
)

test('a number is taken off in the same way, and a name comes back', () => {
  expect(after('es', 'quítale el número a Diego').without).toEqual(['Ana', 'Beto', 'Diego back-number'])
  for (const words of ['el 12 sí lleva nombre', 'ponle el nombre al 12', 'Diego siempre sí lleva nombre'])
    expect(after('es', 'el 12 sin nombre', words).without).toEqual(all)
})

test.each([
  'el nombre de Ana en dorado',
  'el nombre de la 4 en amarillo',
  'el número del 7 en negro',
  'a Diego ponle el nombre en blanco',
  'quita el nombre de Ana',
  'quita el número de Diego',
])('"%s" changes nothing for anybody and is said back', (words) => {
  const { without, hues, replies } = after('es', words)
  expect({ without, hues }).toEqual({ without: all, hues: ['red', 'red'] })
  expect(replies).toContain('words-unheard')
})

test.each(['quita el acento del nombre de Ana', 'quita la tilde de Ana', 'Ana sin apellido', 'sin el nombre de la escuela'])(
  '"%s" takes nobody off the list',
  (words) => {
    expect(after('es', words).without).toEqual(all)
  },
)

test('whoever is called by the number is still taken off the list', () => {
  expect(after('es', 'quita el número 12').without).toEqual(['Ana', 'Beto'])
  expect(after('es', 'quita a Diego').without).toEqual(['Ana', 'Beto'])
})
