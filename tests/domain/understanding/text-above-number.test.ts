import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: '15 gray jerseys, maroon number on front and back',
  es: '15 jerseys grises, número guinda atrás y adelante',
}

const added = (language: 'en' | 'es', said: string) => {
  const { composed } = play({ id: 'above', now: '2026-11-20T10:00', language, says: [orders[language], said], facts: [] }, shop)
  return composed.order.decorations.flatMap(({ place, content }) =>
    content?.kind === 'number' ? [] : [`${place} ${content?.kind === 'text' ? content.text : content?.kind}`],
  )
}

test.each([
  ['en', 'PANTHERS on front above the number', ['full-front PANTHERS']],
  ['en', 'PANTHERS across the chest over the number', ['full-front PANTHERS']],
  ['en', 'PANTHERS above the front number', ['full-front PANTHERS']],
  ['en', 'team name PANTHERS on the front, above the number', ['full-front PANTHERS']],
  ['en', 'OTTERS over the number on the front', ['full-front OTTERS']],
  ['es', 'PANTERAS al frente arriba del número', ['full-front PANTERAS']],
  ['es', 'PANTERAS arriba del número de adelante', ['full-front PANTERAS']],
  ['es', 'PANTERAS en el pecho, encima del número', ['full-front PANTERAS']],
] as const)('(%s) %j: where it stands above the number is no second place', (language, said, found) => {
  expect(added(language, said)).toEqual(found)
})

test.each([
  ['en', 'PANTHERS above the number', ['yoke PANTHERS']],
  ['en', 'PANTHERS on the back above the number', ['yoke PANTHERS']],
  ['en', 'names on the back above the number', ['name name']],
  ['en', 'PANTHERS on the front, names above the number', ['full-front PANTHERS', 'name name']],
  ['es', 'PANTERAS arriba del número', ['yoke PANTERAS']],
  ['es', 'PANTERAS al frente, nombres arriba del número', ['full-front PANTERAS', 'name name']],
] as const)('(%s) %j: above the number alone is on the back', (language, said, found) => {
  expect(added(language, said).toSorted()).toEqual([...found].toSorted())
})
