import { type Affine, applied, changeContours } from '../geometry/contour.ts'
import type { Box, Point } from '../geometry/point.ts'
import type { Hole, Mark, SheetPart } from './sheet.ts'

/** A part before it is packed, in its own axes; `outside` is all the room it takes, tag and frame included. */
export type LoosePart = Omit<SheetPart, 'turned'> & { readonly outside: Box }

const boxAfter = (change: Affine, { left, bottom, right, top }: Box): Box => {
  const [a, b] = [applied(change, { x: left, y: bottom }), applied(change, { x: right, y: top })]
  return { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), bottom: Math.min(a.y, b.y), top: Math.max(a.y, b.y) }
}

const moveMark = (change: Affine, mark: Mark): Mark =>
  mark.kind === 'text'
    ? { ...mark, at: applied(change, mark.at) }
    : { ...mark, from: applied(change, mark.from), to: applied(change, mark.to) }

const moveHole = (change: Affine, { at, radius }: Hole): Hole => ({ at: applied(change, at), radius })

/** The part with its room's lower left corner at the spot, turned by 90° anticlockwise where asked. */
export const placePart = (part: LoosePart, spot: Point, turned: boolean): SheetPart => {
  const { left, bottom, top } = part.outside
  const change: Affine = turned ? [0, 1, -1, 0, spot.x + top, spot.y - left] : [1, 0, 0, 1, spot.x - left, spot.y - bottom]
  return {
    key: part.key,
    tag: part.tag,
    turned,
    contours: changeContours(part.contours, change),
    holes: part.holes.map((hole) => moveHole(change, hole)),
    frame: boxAfter(change, part.frame),
    marks: part.marks.map((mark) => moveMark(change, mark)),
  }
}
