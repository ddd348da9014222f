import { axisOf, isMirrored, mirrorPoint, symmetric } from '../geometry/mirror.ts'
import { boxOf, type Point } from '../geometry/point.ts'
import { type Polygon, type Region, regionBox } from '../geometry/region.ts'
import type { Ring } from '../geometry/ring.ts'
import { micrometres } from '../units/units.ts'
import { evidenceOf, type Laid } from './evidence.ts'
import type { PieceStones, StoneSetting, StoneStyle } from './layout.ts'
import { isStub, mirroredRingStones, type RingStones, ringStones } from './ring-stones.ts'
import { outlineRows, pitchOf, type Row } from './rows.ts'
import { type Placed, settle } from './settle.ts'

/** Letters whose mirror image lies within a tenth of a pitch are laid out on one half and mirrored. */
const MIRROR = 0.1
/** Stones are rounded to whole micrometres after this much more than the pitch was kept. */
const ROUNDING = 6

type Ways = { readonly pitch: number; readonly axis: number | undefined }

const layRing = (polygon: Polygon, { pitch, axis }: Ways): RingStones | undefined | 'twin' => {
  if (axis === undefined) return ringStones(polygon, pitch)
  const { left, right } = regionBox([polygon])
  if (left > axis) return 'twin'
  if (right < axis) return ringStones(polygon, pitch)
  return mirroredRingStones(polygon, pitch, axis)
}

const layRows = (rows: readonly Row[], ways: Ways): Laid | undefined => {
  const rings: Ring[] = []
  const corners: Point[] = []
  const placed: Placed[] = []
  let dropped = 0
  for (const [row, { rings: polygons }] of rows.entries()) {
    for (const polygon of polygons) {
      if (isStub(polygon, ways.pitch)) {
        dropped += 1
        continue
      }
      const laid = layRing(polygon, ways)
      if (laid === undefined) return undefined
      if (laid === 'twin') continue
      placed.push(...laid.stones.map((stone) => ({ ...stone, row, ring: rings.length })))
      rings.push(laid.ring)
      corners.push(...laid.corners)
    }
  }
  const settled = settle(placed, { pitch: ways.pitch, axis: ways.axis, rings })
  return { rows, rings, corners, dropped, settled, axis: ways.axis }
}

const allPoints = ({ settled, axis }: Laid): readonly Point[] =>
  settled.stones.flatMap(({ point }) => (axis === undefined || point.x >= axis ? [point] : [point, mirrorPoint(axis, point)]))

const rowsOf = (letters: Region, style: StoneStyle, setting: StoneSetting): readonly Row[] => {
  if (style.style === 'outline') return outlineRows(letters, style, setting)
  return []
}

/** Stones of one piece, over the union of its letters in whole micrometres. */
export const layPiece = (letters: Region, style: StoneStyle, setting: StoneSetting, text: string): PieceStones => {
  const pitch = pitchOf(setting) + ROUNDING
  const axis = axisOf(letters)
  const mirrors = isMirrored(letters, axis, pitch * MIRROR)
  const halves = mirrors ? layRows(rowsOf(symmetric(letters, axis), style, setting), { pitch, axis }) : undefined
  const laid = halves ?? layRows(rowsOf(letters, style, setting), { pitch, axis: undefined })
  if (laid === undefined) throw new Error(`no layout for ${text}`)
  const points = [...allPoints(laid)].sort((a, b) => b.y - a.y || a.x - b.x)
  return {
    stones: points.map(({ x, y }) => [micrometres(x), micrometres(y)]),
    box: boxOf(points),
    evidence: evidenceOf(laid, points, { text, pitch: pitchOf(setting) }),
  }
}
