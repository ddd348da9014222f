import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const made = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed } = play({ id: 'sheen', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  return composed.order.decorations.map(({ place, layers = [] }) =>
    [place, ...layers.map((layer) => (layer.kind === 'stones' ? 'stones' : `${layer.class} ${layer.colour}`))].join(' '),
  )
}

test.each([
  ['en', ['14 maroon jerseys of ours, kinda shiny slick material, tag says nylon. white numbers on the back']],
  ['en', ['the jerseys are shiny, maroon', 'white numbers on the back']],
  ['en', ['maroon jerseys, the fabric looks glossy', 'white numbers on the back']],
  ['en', ["maroon jerseys, they're really shiny. white numbers on the back"]],
  ['es', ['jerseys guindas de tela brillosa, con número blanco atrás']],
  ['es', ['los jerseys son brillosos, guindas', 'número blanco atrás']],
  ['es', ['jerseys guindas, la tela es medio brillante. número blanco atrás']],
] as const)('(%s) %j: cloth that shines says nothing of the numbers', (language, says) => {
  expect(made(language, ...says)).toEqual(['back-number standard white'])
})

test.each([
  ['en', ['black hoodies with shiny gold letters TEAM on the front'], ['full-front foil gold']],
  ['en', ['maroon jerseys, shiny gold numbers on the back'], ['back-number foil gold']],
  ['en', ['maroon jerseys, gold numbers on the back', 'make the numbers shiny'], ['back-number foil gold']],
  ['es', ['jerseys guindas con números dorados brillosos atrás'], ['back-number glitter gold']],
  ['es', ['jerseys guindas, números dorados atrás, que los números sean brillosos'], ['back-number glitter gold']],
] as const)('(%s) %j: letters and numbers that shall shine do', (language, says, marks) => {
  expect(made(language, ...says)).toEqual(marks)
})
