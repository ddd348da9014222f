import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { emptyShopFloor } from '../../src/desk/floor.ts'
import { ticketFacts } from '../../src/desk/ticket/ticket-facts.ts'
import { workOut } from '../../src/desk/work-out.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { unwrap } from '../support/embedded.ts'
import { decoration, order, row } from '../support/orders.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))
const workshop = unwrap(await openWorkshop(root, `${root}/templates/shop`))
const plain = [{ kind: 'vinyl', class: 'standard', colour: 'white', shape: 'face' }] as const
const name = decoration({ id: 'name', place: 'name', content: { kind: 'name' }, layers: [...plain] })
const now = '2026-11-09T09:00'

/** The texts that are drawn for one size, by the kind of what is drawn. */
const drawn = (roster: Parameters<typeof order>[0]) => {
  const document = order({ decorations: [decoration({ layers: [...plain] }), name], ...roster })
  const { work, problems } = workOut({ document, now, job: 'j', floor: emptyShopFloor }, workshop)
  if (work === null) throw new Error(problems.map(({ code }) => code).join())
  const identity = { ticket: 'T1', order: 'o', revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  const { placements } = ticketFacts(work, workshop.shop, { identity, problems, now })
  return placements.map(({ content, groups }) => [content, groups[0]?.sample])
}

test.each([
  [
    [
      ['7', 'Po'],
      ['44', 'Ng'],
      ['3', 'De la O'],
    ],
    ['3', 'De la O'],
  ],
  [
    [
      ['88', 'Ruiz'],
      ['4', 'Ruize'],
      ['11', 'Ruizo'],
    ],
    ['11', 'Ruizo'],
  ],
  [
    [
      ['21', 'Ida'],
      ['5', 'Ada'],
    ],
    ['21', 'Ida'],
  ],
])('the picture shows a player who is on the list: %j', (players, [number, called]) => {
  const roster = players.map(([no, text], index) => row(index + 1, { number: no, name: text }))
  expect(drawn({ roster })).toEqual([
    ['number', number],
    ['name', called],
  ])
})
