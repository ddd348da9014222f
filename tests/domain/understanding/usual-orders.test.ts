import { expect, test } from 'vitest'
import type { Layer } from '../../../src/domain/order/order.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'
import { english } from './usual/english.ts'
import { englishInTurns, spanishInTurns } from './usual/in-turns.ts'
import { spanish } from './usual/spanish.ts'

type Order = ReturnType<typeof play>['composed']['order']

const shop = await starterShop()

const layerFacts = (layer: Layer): readonly string[] => {
  if (layer.kind === 'stones') return [`stones ${layer.size}`, `stones ${layer.colour}`]
  if (layer.shape === 'face') return [layer.colour, layer.class]
  return [`${'shadow' in layer.shape ? 'shadow' : 'outline'} ${layer.colour}`]
}

const decorationFacts = ({ decorations }: Order): readonly string[] =>
  decorations.flatMap(({ place, content, height, layers = [], on = [] }) => {
    const tall = height !== undefined && 'micrometres' in height ? [String(Math.round(height.micrometres / 1_000))] : []
    const text = content?.kind === 'text' ? [content.text] : []
    const own = [...layers.flatMap(layerFacts), ...tall, ...text].map((fact) => `${place} ${fact}`)
    return [place ?? '', ...own, ...on.flatMap((id) => own.map((fact) => `${id} ${fact}`)), ...text.map((one) => `text ${one}`)]
  })

const garmentFacts = (order: Order, kinds: readonly (readonly [string, string | undefined])[]): readonly string[] =>
  order.garments.flatMap(({ id, colour, from }) => {
    const kind = kinds.find(([own]) => own === id)?.[1] ?? ''
    const names = [id, kind === 't-shirt' ? 'tee' : kind, ...(['t-shirt', 'jersey'].includes(kind) ? ['top'] : [])]
    return names.flatMap((name) => [`${name} ${colour ?? ''}`, ...(from === 'customer' ? [`${name} own`] : [])])
  })

const rowFacts = ({ roster }: Order): readonly string[] => [
  `rows ${roster.length}`,
  ...roster.flatMap(({ number, name, fit, size, quantity }) => {
    const amount = quantity === 1 ? undefined : `x${quantity}`
    const lines = [[number, name, fit, size, amount], [number, name, size, amount], [number]]
    return lines.map((parts) => `# ${parts.filter((part) => part !== undefined).join(' ')}`)
  }),
]

const headFacts = ({ team, sport, use, needBy, people }: Order): readonly string[] => [
  `team ${team ?? ''}`,
  `team ${(team ?? '').replace(/^(?:The|Las?|Los) /, '')}`,
  `sport ${sport ?? ''}`,
  `use ${use ?? ''}`,
  ...Object.entries(people).map(([role, name]) => `${role} ${name}`),
  ...(needBy === undefined ? [] : [needBy]).map(String),
]

/**
 * A fact is a garment with its colour ("jersey navy", "tee own"; "top" where it may be called either), a place with the colour, class, edge, stones, text or height in millimetres of
 * what is there ("back-number white", "home back-number 203"), a line of the list ("# 7 Ana women M", "# M x4"), "team …", "sport …",
 * "day …", "hour …", a person; "no name" holds where that place is free.
 */
const heardIn = (says: string, language: 'en' | 'es'): ((fact: string) => boolean) => {
  const { composed, conversation } = play(
    { id: 'usual', now: '2026-11-20T10:00', language, says: says.split(' || '), facts: [] },
    shop,
  )
  const { draft } = conversation
  const kinds = Object.entries(draft.garments).map(([id, { kind }]) => [id, kind] as const)
  const all = new Set([
    ...decorationFacts(composed.order),
    ...garmentFacts(composed.order, kinds),
    ...rowFacts(composed.order),
    ...headFacts(composed.order),
    `day ${draft.day ?? ''}`,
    `day ${draft.gameDay ?? ''}`,
    `hour ${draft.hour ?? ''}`,
  ])
  return (fact) => (fact.startsWith('no ') ? !all.has(fact.slice(3)) : all.has(fact))
}

test.each([
  { language: 'en', orders: english, understood: 319 },
  { language: 'es', orders: spanish, understood: 312 },
  { language: 'en', orders: englishInTurns, understood: 111 },
  { language: 'es', orders: spanishInTurns, understood: 104 },
] as const)('usual orders are heard no worse than they have been: $language', ({ language, orders, understood }) => {
  const facts = orders.flatMap(([says, heard]) => {
    const holds = heardIn(says, language)
    return heard.split('; ').map((fact) => ({ says, fact, heard: holds(fact) }))
  })
  for (const { says, fact } of facts.filter((one) => !one.heard)) console.log(`missed ${fact}   <- ${says}`)
  const found = facts.filter((one) => one.heard).length
  console.log(
    `${language}: ${orders.length} orders, ${found} of ${facts.length} facts (${((found / facts.length) * 100).toFixed(1)} %)`,
  )
  expect(found).toBeGreaterThanOrEqual(understood)
})
