import { beforeAll, expect, test } from 'vitest'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { emptyShopFloor } from '../../src/desk/floor.ts'
import { type Workshop, workOut } from '../../src/desk/work-out.ts'
import type { Order } from '../../src/domain/order/order.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { unwrap } from '../support/embedded.ts'
import { decoration, order, row } from '../support/orders.ts'

let workshop: Workshop
beforeAll(async () => {
  workshop = unwrap(await openWorkshop(projectRoot(), undefined))
}, 60_000)

const saying = (text: string): Order =>
  order({ decorations: [decoration({ id: 'slogan', place: 'full-front', content: { kind: 'text', text } })] })

const named = (name: string): Order =>
  order({ decorations: [decoration({ id: 'name', place: 'name', content: { kind: 'name' } })], roster: [row(1, { name })] })

const rows = (count: number) => ({
  ...decoration(),
  layers: [{ kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'outline', rows: count, contours: 'both' } }],
})

test.each<readonly [string, unknown]>([
  ['a text of nothing', saying('')],
  ['a text of blanks', saying('   ')],
  ['a text of 500 signs', saying('HERONS '.repeat(72))],
  ['a name of 500 signs', named('W'.repeat(500))],
  ['an emoji', named('ACE 🏈')],
  ['a name written from right to left', named('שלום')],
  ['a height of nothing', order({ decorations: [{ ...decoration(), height: { micrometres: 0 } }] })],
  ['fifty rows of stones', { ...order(), decorations: [rows(50)] }],
])('an order with %s is refused with the place of the trouble', (_, document) => {
  const { work, problems } = workOut({ document, now: '2026-11-25T09:00', job: 'o-1', floor: emptyShopFloor }, workshop)
  expect(work).toBeNull()
  const stops = problems.filter(({ severity }) => severity === 'stop')
  expect(stops.length).toBeGreaterThan(0)
  for (const { at } of stops) expect(at).toMatch(/^\/(?:decorations|roster)\/0/)
})
