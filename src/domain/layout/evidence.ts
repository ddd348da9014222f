import type { Point } from '../geometry/point.ts'
import type { Ring } from '../geometry/ring.ts'
import { micrometres } from '../units/units.ts'
import type { Evidence } from './layout.ts'
import type { LayoutProblem, Remedy } from './problems.ts'
import type { Row } from './rows.ts'
import { cornersHit, coverageOf, leastDistance, type Settled } from './settle.ts'

/** A piece as it was laid: rows as areas, their rings and corners, and the stones that came to rest. */
export type Laid = {
  readonly rows: readonly Row[]
  readonly rings: readonly Ring[]
  readonly corners: readonly Point[]
  readonly dropped: number
  readonly settled: Settled
  readonly axis: number | undefined
}

type About = { readonly text: string; readonly pitch: number }

const REMEDIES: readonly Remedy[] = ['smaller-stone', 'fewer-rows', 'larger-letters', 'another-face']

const flagsOf = (laid: Laid, about: About, coverage: number, bald: number): readonly LayoutProblem[] => {
  const { text } = about
  const remedies = [...REMEDIES]
  const flags: LayoutProblem[] = []
  for (const [row, { lost }] of laid.rows.entries())
    if (lost > 0) flags.push({ code: 'row-dropped', at: '', severity: 'note', facts: { text, row: row + 1, remedies } })
  if (laid.rows.some(({ channels }) => channels.length > 0))
    flags.push({ code: 'row-shared', at: '', severity: 'note', facts: { text, remedies } })
  if (coverage > 1)
    flags.push({
      code: 'row-gap',
      at: '',
      severity: 'note',
      facts: { text, pitches: Math.round(coverage * 100) / 100, remedies },
    })
  if (bald > 0) flags.push({ code: 'corner-bald', at: '', severity: 'note', facts: { text, corners: bald, remedies } })
  return flags
}

/** What can be shown for a layout: measured on the finished stones, not taken from the way they were made. */
export const evidenceOf = (laid: Laid, points: readonly Point[], about: About): Evidence => {
  const least = leastDistance(points, about.pitch)
  const coverage = Math.round(coverageOf(laid.rings, points, about.pitch) * 1000) / 1000
  const hit = cornersHit(laid.corners, points, about.pitch)
  const lost = laid.rows.reduce((sum, row) => sum + row.lost, 0)
  return {
    leastDistance: least === Infinity ? null : micrometres(Math.floor(least)),
    coverage,
    fill: null,
    corners: laid.corners.length,
    cornersHit: hit,
    rowsDropped: laid.dropped + lost,
    stonesMoved: laid.settled.moved,
    mirrored: laid.axis !== undefined,
    flags: flagsOf(laid, about, coverage, laid.corners.length - hit),
  }
}
