import { expect, test } from 'vitest'
import type { Draft } from '../../../src/domain/understanding/draft.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: [
    '3 royal jerseys, white numbers on the front and back with a navy outline, crystal stones around, names above the number in white with a gold outline. For Rivera High volleyball',
    '4 Zoe Ruiz M\n7 Abel Luna L\n12 Eli Sanz M',
  ],
  es: [
    '3 jerseys negros, números blancos atrás y adelante con contorno azul marino y piedras cristal alrededor, nombres arriba del número en blanco con contorno dorado. Para Halcones volibol',
    '4 Zoe Ruiz M\n7 Abel Luna L\n12 Eli Sanz M',
  ],
}

const layersOf = ({ marks }: Draft): readonly string[] =>
  Object.entries(marks).flatMap(([id, { style = {} }]) => [
    ...(style.outlines ?? []).map(({ colour }) => `${id} ${colour}`),
    ...(style.stones?.wanted === true ? [`${id} stones`] : []),
  ])

const after = (language: 'en' | 'es', words: string) => {
  const played = play({ id: 'off', now: '2026-11-20T10:00', language, says: [...orders[language], words], facts: [] }, shop)
  const { draft } = played.conversation
  const plain = ['number', 'name', 'text', 'all'].every((key) => {
    const { colour, outlines, shadow } = draft.styles[key] ?? {}
    return colour === undefined && outlines === undefined && shadow === undefined
  })
  const white = ['front-number', 'back-number', 'name'].every((id) => draft.marks[id]?.style?.colour === 'white')
  return {
    layers: layersOf(draft),
    untouched: plain && white && Object.keys(draft.rows).length === 3,
    replies: played.replies.map(({ code }) => code),
  }
}

const all = ['front-number navy', 'front-number stones', 'back-number navy', 'back-number stones', 'name gold']
const without = (...gone: readonly string[]) => all.filter((layer) => !gone.some((one) => layer.includes(one)))

test.each([
  ['remove the crystal outline', ['stones']],
  ['take the rhinestone outline away', ['stones']],
  ['take the stones off the numbers', ['stones']],
  ['no crystal please', ['stones']],
  ['get rid of the stones on the front', ['front-number stones']],
  ['drop the navy outline', ['navy']],
  ['get rid of the navy border', ['navy']],
  ['the navy outline can go', ['navy']],
  ['actually skip the outline in gold', ['gold']],
  ['no gold outline on the names please', ['gold']],
  ['remove the outline from the names', ['gold']],
  ['remove the outline and the stones', ['navy', 'gold', 'stones']],
  ['take the stones off, the outline is enough', ['stones']],
  ['drop the gold outline, keep the navy one', ['gold']],
])('"%s" takes that layer off and changes nothing else', (words, gone) => {
  const { layers, untouched } = after('en', words)
  expect(layers).toEqual(without(...gone))
  expect(untouched).toBe(true)
})

test.each([
  ['quita el contorno de cristal', ['stones']],
  ['quítale las piedras a los números', ['stones']],
  ['elimina las piedras', ['stones']],
  ['ya no van las piedras', ['stones']],
  ['quita las piedras de adelante', ['front-number stones']],
  ['ya no queremos el contorno azul marino', ['navy']],
  ['el contorno dorado ya no va', ['gold']],
  ['quita el contorno y las piedras', ['navy', 'gold', 'stones']],
])('"%s" does so in Spanish', (words, gone) => {
  const { layers, untouched } = after('es', words)
  expect(layers).toEqual(without(...gone))
  expect(untouched).toBe(true)
})

test.each([
  ['en', "don't remove the crystal outline"],
  ['en', "please don't take the stones off"],
  ['en', 'keep the outline'],
  ['en', 'remove the green outline'],
  ['en', 'remove the crystals from the names'],
  ['es', 'no quiten el contorno'],
  ['es', 'quita el contorno rojo'],
  ['es', 'quítenle la pedrería a los nombres'],
] as const)('(%s) "%s" takes nothing off', (language, words) => {
  const { layers, untouched } = after(language, words)
  expect(layers).toEqual(all)
  expect(untouched).toBe(true)
})

test.each([
  ['en', 'remove the navy outline, make it red'],
  ['en', 'lose the navy outline and put a red one'],
  ['es', 'quita el contorno azul marino y ponlo rojo'],
] as const)('(%s) "%s" gives that layer alone the other colour', (language, words) => {
  const { layers, untouched } = after(language, words)
  expect(layers).toEqual(all.map((layer) => layer.replace('navy', 'red')))
  expect(untouched).toBe(true)
})

test('what is said of another thing beside it is heard', () => {
  const { layers } = after('en', 'take the gold outline off the names and make the numbers red')
  expect(layers).toEqual(without('gold'))
})

test.each([
  ['en', 'leave the stones off Abel'],
  ['en', 'no stones for Zoe and Eli'],
  ['en', "Abel doesn't want stones"],
  ['en', "no stones on 7's"],
  ['en', 'stones for everyone except Abel'],
  ['en', 'only Zoe gets an outline'],
  ['en', 'leave the stones off Marcus please'],
  ['es', 'sin piedras para Zoe y Eli'],
  ['es', 'a Abel quítale las piedras'],
  ['es', 'todos con piedras menos Eli'],
  ['es', 'el 7 sin piedras'],
] as const)('(%s) "%s" is of some, changes nothing for anybody and is told', (language, words) => {
  const { layers, untouched, replies } = after(language, words)
  expect(layers).toEqual(all)
  expect(untouched).toBe(true)
  expect(replies).toContain('layers-alike')
})

test.each([
  ['en', 'no stones for anybody'],
  ['es', 'quita las piedras de todos'],
] as const)('(%s) "%s" is of all', (language, words) => {
  const { layers, replies } = after(language, words)
  expect(layers).toEqual(without('stones'))
  expect(replies).not.toContain('layers-alike')
})
