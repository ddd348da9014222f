import fc from 'fast-check'
import type { TicketFacts } from '../../../src/domain/ticket/facts.ts'
import { everythingFacts } from '../../domain/ticket/everything.builder.ts'
import { footballFacts, rosterRow, sizesOf } from '../../domain/ticket/facts.builder.ts'

const words = fc.array(
  fc.oneof(
    fc.constantFrom(
      'HERONS',
      'Muñoz',
      'Łukasik',
      'O’Brien',
      'Fitzwilliam-Montgomery',
      'Đorđević',
      '中村',
      'III',
      'de',
      'la',
      'a',
      'WWWWWWWWWW',
    ),
    fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 14 }),
  ),
  { minLength: 1, maxLength: 6 },
)
const text = (most: number): fc.Arbitrary<string> => words.map((list) => list.join(' ').slice(0, most).trim() || 'x')

const row = fc.record({
  name: fc.option(text(60)),
  number: fc.option(fc.integer({ min: 0, max: 199 }).map(String)),
  size: fc.constantFrom('S', 'M', 'L', 'XL', '2XL', 'later'),
  fit: fc.constantFrom('men', 'women', 'youth'),
  quantity: fc.constantFrom(1, 1, 1, 1, 3, 14),
  note: fc.option(text(200), { freq: 4 }),
  age: fc.constantFrom('13-up', '3-12', 'unknown'),
} as const)

const facts = fc.record({
  rows: fc.array(row, { minLength: 1, maxLength: 12 }),
  team: text(200),
  notes: fc.option(text(400)),
  needFor: fc.option(text(200)),
  temperature: fc.constantFrom('F', 'C'),
  length: fc.constantFrom('in', 'cm'),
  pressure: fc.constantFrom('gauge', 'psi', 'bar'),
  paper: fc.constantFrom('letter', 'a4'),
  link: fc.option(fc.webUrl()),
  base: fc.constantFrom('football', 'everything'),
  problems: fc.array(text(300), { maxLength: 6 }),
} as const)

/** Orders of every shape a customer can give: awkward names, long texts, both units, both papers, few and many rows. */
export const randomFacts: fc.Arbitrary<TicketFacts> = facts.map((drawn) => {
  const base = drawn.base === 'everything' ? everythingFacts() : footballFacts(1)
  const home = drawn.rows.map((one, at) =>
    rosterRow(at + 1, {
      ...one,
      marks: rosterRow(at + 1).marks.map((mark) => ({ ...mark, text: one.name ?? one.number ?? '' })),
    }),
  )
  const others = base.roster.filter((one) => one.garment !== 'home').map((one, at) => ({ ...one, line: home.length + at + 1 }))
  const roster = [...home, ...others]
  const lines = roster.map((one) => one.line)
  return {
    ...base,
    team: drawn.team,
    notes: drawn.notes,
    needFor: drawn.needFor,
    link: drawn.link,
    show: {
      temperature: drawn.temperature,
      length: drawn.length,
      pressure: drawn.pressure,
      paper: drawn.paper,
      dateOrder: 'month-first',
    },
    roster,
    garments: base.garments.map((garment) => ({ ...garment, sizes: sizesOf(roster, garment.id) })),
    press: base.press.map((step) => ({ ...step, lines: lines.filter((line) => line <= home.length) })),
    problems: drawn.problems.map((said) => ({ code: 'said', severity: 'caution' as const, text: said })),
  }
})
