import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bagsOf } from '../../../src/domain/ticket/bags.ts'
import { rosterRow } from './facts.builder.ts'

const shown = (bags: ReturnType<typeof bagsOf>) =>
  bags.map(({ name, number, rows }) => [name, number, rows.map((row) => row.line)])

describe('bags', () => {
  it('are one a player, by name without accents, whatever garments the player has', () => {
    const rows = [
      rosterRow(1, { name: 'Zeta', number: '4' }),
      rosterRow(2, { name: 'Ábel', number: '9' }),
      rosterRow(3, { name: 'Zeta', number: '4', garment: 'away' }),
      rosterRow(4, { name: 'Abel', number: '12' }),
    ]
    expect(shown(bagsOf(rows))).toEqual([
      ['Ábel', '9', [2]],
      ['Abel', '12', [4]],
      ['Zeta', '4', [1, 3]],
    ])
  })

  it('join nobody by name alone where the numbers differ, and nothing that is nobody’s', () => {
    const rows = [
      rosterRow(1, { name: 'Lee', number: '4' }),
      rosterRow(2, { name: 'Lee', number: '5' }),
      rosterRow(3, { name: null, number: null }),
      rosterRow(4, { name: null, number: null }),
      rosterRow(5, { name: null, number: '7' }),
      rosterRow(6, { name: null, number: '7' }),
    ]
    expect(shown(bagsOf(rows))).toEqual([
      ['Lee', '4', [1]],
      ['Lee', '5', [2]],
      [null, null, [3]],
      [null, null, [4]],
      [null, '7', [5, 6]],
    ])
  })

  it('hold every line of a roster once', () => {
    const person = fc.record({
      name: fc.constantFrom(null, 'Lee', 'Núñez', 'Nunez'),
      number: fc.constantFrom(null, '1', '01', '7'),
    })
    fc.assert(
      fc.property(fc.array(person, { maxLength: 30 }), (people) => {
        const rows = people.map((one, at) => rosterRow(at + 1, one))
        const lines = bagsOf(rows).flatMap((bag) => bag.rows.map(({ line }) => line))
        expect(lines.toSorted((a, b) => a - b)).toEqual(rows.map(({ line }) => line))
      }),
      { seed: 5 },
    )
  })
})
