import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { changesBetween, throwAwayBetween } from '../../../src/domain/ticket/compare.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { footballFacts, rosterRow } from './facts.builder.ts'

const before = footballFacts(4)
const later = (change: Partial<typeof before>) => ({ ...before, revision: 2, ...change })
const [one, two, three, four] = [rosterRow(1), rosterRow(2), rosterRow(3), rosterRow(4)]

describe('what has changed between two revisions', () => {
  it('is nothing for the same facts', () => {
    expect(changesBetween(before, later({}), ticketWordsEn)).toEqual([])
  })

  it('is said field by field for a row', () => {
    const roster = [one, { ...two, name: 'O’BRIAN', size: 'M' as const }, three, four]
    expect(changesBetween(before, later({ roster }), ticketWordsEn)).toEqual([
      { kind: 'row-changed', line: 2, field: 'name', was: 'O’BRIEN', now: 'O’BRIAN' },
      { kind: 'row-changed', line: 2, field: 'size', was: 'adult L', now: 'adult M' },
    ])
  })

  it('names the row that went and the one that came, though all lines after it moved up', () => {
    const moved = [one, { ...three, line: 2 }, { ...four, line: 3 }, rosterRow(9, { line: 4 })]
    const kinds = changesBetween(before, later({ roster: moved }), ticketWordsEn).map((change) => [
      change.kind,
      'row' in change ? change.row.split(' · ')[0] : '',
    ])
    expect(kinds).toEqual([
      ['row-dropped', '#2'],
      ['row-added', '#9'],
    ])
  })

  it('tells the day before the rows', () => {
    const [first] = changesBetween(before, later({ needBy: '2026-11-11T12:00', roster: [one, two, three] }), ticketWordsEn)
    expect(first).toEqual({
      kind: 'order-changed',
      field: 'needBy',
      was: 'Thursday, November 12, 2026, 5:00 pm',
      now: 'Wednesday, November 11, 2026, 12 noon',
    })
  })

  it('never speaks of a row that is the same in both, wherever it stands', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([one, two, three, four]), (kept) => {
        const roster = kept.map((row, at) => ({ ...row, line: at + 1 }))
        const said = changesBetween(before, later({ roster }), ticketWordsEn)
        expect(said.every((change) => change.kind === 'row-dropped')).toBe(true)
        expect(said).toHaveLength(4 - kept.length)
      }),
    )
  })
})

describe('what is thrown away', () => {
  it('is only what was cut and says something else now', () => {
    const roster = [
      { ...one, name: 'NEW', marks: one.marks.map((mark) => (mark.place === 'name' ? { ...mark, text: 'NEW' } : mark)) },
      two,
      three,
      four,
    ]
    expect(throwAwayBetween(before, later({ roster }), () => 'not-cut')).toEqual([])
    expect(throwAwayBetween(before, later({ roster }), () => 'cut')).toEqual([
      { line: 1, place: 'name', text: 'ALVAREZ', state: 'cut' },
    ])
  })

  it('is every mark of a garment that is already pressed and now wrong', () => {
    const roster = [one, two, three, { ...four, size: 'XL' as const }]
    const gone = throwAwayBetween(before, later({ roster }), (line) => (line === 4 ? 'pressed' : 'not-cut'))
    expect(gone.map((piece) => [piece.line, piece.place])).toEqual([
      [4, 'front-number'],
      [4, 'back-number'],
      [4, 'name'],
    ])
  })

  it('is a piece whose height is another in the new size, and not one that fits both', () => {
    const roster = [{ ...one, size: 'XL' as const }, two, three, four]
    expect(throwAwayBetween(before, later({ roster }), () => 'cut')).toEqual([
      { line: 1, place: 'back-number', text: '1', state: 'cut' },
    ])
  })

  it('is everything cut for a row that was dropped', () => {
    const gone = throwAwayBetween(before, later({ roster: [one, two, three] }), () => 'cut')
    expect(gone).toHaveLength(3)
  })
})
