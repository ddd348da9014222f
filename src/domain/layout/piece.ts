import { centreLines } from '../geometry/centre-line.ts'
import { axisOf, isMirrored, mirroredInside, mirroredOutside, mirrorPoint } from '../geometry/mirror.ts'
import { boxOf, type Point } from '../geometry/point.ts'
import { offset, type Region } from '../geometry/region.ts'
import { micrometres } from '../units/units.ts'
import { evidenceOf, type Laid } from './evidence.ts'
import { hexFill } from './hex.ts'
import { drawLines, drawRows, emptyDrawing, type Ways } from './lay-rows.ts'
import type { PieceStones, StoneSetting, StoneStyle } from './layout.ts'
import { principalCorners } from './measure.ts'
import { innerCentres, innerRows, outlineRows, pitchOf, type Row, separate, slackOf } from './rows.ts'
import { settle } from './settle.ts'

/** Letters whose mirror image lies within a tenth of a pitch are laid out on one half and mirrored. */
const MIRROR = 0.1
/** Stones are rounded to whole micrometres after this share more than the pitch was kept: at least 4 µm at the smallest stone. */
const ROUNDING = 0.0016
/** Strokes wider than this many pitches look best with one row along the edge and a hexagonal core. */
const WIDE = 6
/** Rows enough to fill any stroke that is not wide. */
const FULL = 12

export type PiecePlan = {
  readonly text: string
  readonly setting: StoneSetting
  readonly style: StoneStyle
  readonly under: 'vinyl' | 'cloth'
  /** The face's usual stroke, in micrometres: all its letters are filled alike. */
  readonly pen: number
}

/** What is to be laid: rows, an area to fill, lines to follow. */
type Work = { readonly rows: readonly Row[]; readonly core: Region; readonly stroke: Region; readonly area: Region }

const solidWork = (letters: Region, plan: PiecePlan): Work => {
  const pitch = pitchOf(plan.setting)
  const area = innerCentres(letters, plan.setting, plan.under)
  if (plan.pen <= WIDE * pitch) return { rows: innerRows(area, pitch, FULL), core: [], stroke: [], area }
  const rows = innerRows(area, pitch, 1)
  const core = offset(
    rows.flatMap(({ rings }) => rings),
    -pitch - slackOf(pitch),
  )
  return { rows, core, stroke: [], area }
}

const workFor = (letters: Region, plan: PiecePlan): Work => {
  const { style, setting, under } = plan
  if (style.style === 'outline') return { rows: outlineRows(letters, style, setting), core: [], stroke: [], area: [] }
  if (style.style === 'single-line') return { rows: [], core: [], stroke: letters, area: [] }
  if (style.style === 'solid') return solidWork(letters, plan)
  const rows = innerRows(innerCentres(letters, setting, under), pitchOf(setting), style.rows)
  return { rows, core: [], stroke: [], area: [] }
}

const layWork = (work: Work, ways: Ways, pen: number): Laid | undefined => {
  const drawn = emptyDrawing()
  if (!drawRows(drawn, work.rows, ways)) return undefined
  for (const stroke of separate(work.stroke))
    drawLines(drawn, centreLines(stroke, Math.max(ways.pitch / 6, pen / 12), Math.max(ways.pitch * 1.5, pen / 2)), ways, 0)
  const core = hexFill(work.core, ways.pitch, ways.axis)
  drawn.placed.push(...core.map((point) => ({ point, along: 0, fixed: true, row: 1, ring: -1 })))
  const facing = work.area.length === 0 && work.stroke.length === 0
  const pitch = ways.least
  const corners = principalCorners(drawn.corners, pitch)
  const settled = settle(drawn.placed, { pitch, axis: ways.axis, rings: drawn.rings, facing, corners }, work.area)
  return {
    rows: work.rows,
    rings: drawn.rings,
    corners,
    turns: drawn.corners.length,
    dropped: drawn.dropped,
    settled,
    axis: ways.axis,
    area: work.area,
  }
}

const allPoints = ({ settled, axis }: Laid): readonly Point[] =>
  settled.stones.flatMap(({ point }) => (axis === undefined || point.x >= axis ? [point] : [point, mirrorPoint(axis, point)]))

/** Stones of one piece, over the union of its letters in whole micrometres. */
export const layPiece = (letters: Region, plan: PiecePlan): PieceStones => {
  const least = pitchOf(plan.setting)
  const pitch = least * (1 + ROUNDING)
  const axis = axisOf(letters)
  const mirrors = plan.style.style !== 'single-line' && isMirrored(letters, axis, pitch * MIRROR)
  const both = plan.style.style === 'outline' ? mirroredOutside : mirroredInside
  const halves = mirrors ? layWork(workFor(both(letters, axis), plan), { pitch, least, axis }, plan.pen) : undefined
  const laid = halves ?? layWork(workFor(letters, plan), { pitch, least, axis: undefined }, plan.pen)
  if (laid === undefined) throw new Error(`no layout for ${plan.text}`)
  const points = [...allPoints(laid)].sort((a, b) => b.y - a.y || a.x - b.x)
  return {
    stones: points.map(({ x, y }) => [micrometres(x), micrometres(y)]),
    box: boxOf(points),
    evidence: evidenceOf(laid, points, { text: plan.text, pitch: pitchOf(plan.setting) }),
  }
}
