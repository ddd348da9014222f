import type { Point } from '../geometry/point.ts'
import type { Region } from '../geometry/region.ts'
import type { Ring } from '../geometry/ring.ts'
import { micrometres } from '../units/units.ts'
import { mostStones } from './hex.ts'
import type { Evidence } from './layout.ts'
import { cornersHit, coverageOf, leastDistance } from './measure.ts'
import type { LayoutProblem, Remedy } from './problems.ts'
import type { Row } from './rows.ts'
import type { Settled } from './settle.ts'

/** A piece as it was laid: rows as areas, their rings and corners, and the stones that came to rest. */
export type Laid = {
  readonly rows: readonly Row[]
  readonly rings: readonly Ring[]
  /** Corners that can each have a stone of their own, and all turns of the rows, those nearer than a pitch included. */
  readonly corners: readonly Point[]
  readonly turns: number
  /** Rows of which a ring was too short to be laid, by number. */
  readonly dropped: readonly number[]
  readonly settled: Settled
  readonly axis: number | undefined
  /** Where the centres of a fill may lie; empty where nothing is filled. */
  readonly area: Region
}

type About = { readonly text: string; readonly pitch: number }

/** Rows from this number on are lines shared by two sides of a narrow place; they give way to true rows. */
export const SHARED = 6

const REMEDIES: readonly Remedy[] = ['smaller-stone', 'fewer-rows', 'larger-letters', 'another-face']

const flagsOf = (laid: Laid, about: About, coverage: number, bald: number): readonly LayoutProblem[] => {
  const { text } = about
  const remedies = [...REMEDIES]
  const flags: LayoutProblem[] = []
  for (const [row, { lost }] of laid.rows.entries())
    if (lost > 0 || laid.dropped.includes(row))
      flags.push({ code: 'row-dropped', at: '', severity: 'note', facts: { text, row: row + 1, remedies } })
  if (laid.settled.stones.some(({ row }) => row >= SHARED))
    flags.push({ code: 'row-shared', at: '', severity: 'note', facts: { text, remedies } })
  if (coverage > 1)
    flags.push({
      code: 'row-gap',
      at: '',
      severity: 'note',
      facts: { text, pitches: Math.round(coverage * 100) / 100, remedies },
    })
  const blunt = laid.turns - laid.corners.length
  if (blunt > 0) flags.push({ code: 'corner-blunt', at: '', severity: 'note', facts: { text, corners: blunt, remedies } })
  if (bald > 0) flags.push({ code: 'corner-bald', at: '', severity: 'note', facts: { text, corners: bald, remedies } })
  return flags
}

/** A shared line that came to nothing is no row. */
const ringsWithStones = ({ rings, settled }: Laid): readonly Ring[] => {
  const used = new Set(settled.stones.map(({ ring }) => ring))
  return rings.filter((_, index) => used.has(index))
}

/** What can be shown for a layout: measured on the finished stones, not taken from the way they were made. */
export const evidenceOf = (laid: Laid, points: readonly Point[], about: About): Evidence => {
  const least = leastDistance(points, about.pitch)
  const coverage = Math.round(coverageOf(ringsWithStones(laid), points, about.pitch) * 1000) / 1000
  const hit = cornersHit(laid.corners, points, about.pitch)
  const lost = laid.rows.reduce((sum, row) => sum + row.lost, 0)
  return {
    leastDistance: least === Infinity ? null : micrometres(Math.floor(least)),
    coverage,
    fill: laid.area.length === 0 ? null : Math.round((points.length / mostStones(laid.area, about.pitch)) * 1000) / 1000,
    corners: laid.corners.length,
    cornersHit: hit,
    rowsDropped: laid.dropped.length + lost,
    stonesMoved: laid.settled.moved,
    mirrored: laid.axis !== undefined,
    flags: flagsOf(laid, about, coverage, laid.corners.length - hit),
  }
}
