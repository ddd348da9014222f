import { type Contour, changeContours, contoursBox, flatten, fromPolygon, moved } from '../geometry/contour.ts'
import { boxGap, cyclic, item, shiftBox } from '../geometry/point.ts'
import { offset, type Polygon, type Region, signedArea, united } from '../geometry/region.ts'
import type { Letter, TextShape, VinylForm, VinylShape } from './layout.ts'

/** How far a flattened curve may lie from the true one where shapes are joined, in micrometres. */
const FLATNESS = 20

export const letterRegion = (letter: Letter, flatness: number): Region =>
  changeContours(letter.contours, moved(letter.at)).map((contour) => flatten(contour, flatness))

const swept = (polygon: Polygon, dx: number, dy: number): Region =>
  polygon.map((from, index) => {
    const to = cyclic(polygon, index + 1)
    const side = [from, to, { x: to.x + dx, y: to.y + dy }, { x: from.x + dx, y: from.y + dy }]
    return signedArea(side) < 0 ? side.reverse() : side
  })

/** The region of the vinyl under or around letters. */
export const formRegion = (letters: Region, form: VinylForm): Region => {
  const joined = united(letters)
  if (form === 'face') return joined
  if ('surround' in form) return offset(joined, form.surround)
  const [dx, dy] = form.shadow
  const image = joined.map((polygon) => polygon.map(({ x, y }) => ({ x: x + dx, y: y + dy })))
  return united([...joined, ...image, ...joined.flatMap((polygon) => swept(polygon, dx, dy))])
}

const standApart = (letters: readonly Letter[]): boolean =>
  letters.every((letter, index) => {
    const next = letters[index + 1]
    return next === undefined || boxGap(shiftBox(letter.box, letter.at), shiftBox(next.box, next.at)) > 0
  })

const crossesItself = (letter: Letter): boolean => {
  const drawn = letter.contours.map((contour) => flatten(contour, FLATNESS))
  const area = (region: Region): number => region.reduce((sum, polygon) => sum + signedArea(polygon), 0)
  const joined = united(drawn)
  return (
    joined.length !== drawn.length || Math.abs(Math.abs(area(drawn)) - Math.abs(area(joined))) > 1e-3 * Math.abs(area(joined))
  )
}

/** The vinyl of a text as closed curves. Letters that stand alone keep their curves; joined or widened ones become polygons. */
export const vinylShape = (shape: TextShape, form: VinylForm): VinylShape => {
  const exact = form === 'face' && standApart(shape.letters) && !shape.letters.some(crossesItself)
  const contours: readonly Contour[] = exact
    ? shape.letters.flatMap((letter) => changeContours(letter.contours, moved(letter.at)))
    : formRegion(
        shape.letters.flatMap((letter) => letterRegion(letter, FLATNESS)),
        form,
      ).map((polygon) => fromPolygon(polygon.map((_, index) => item(polygon, index))))
  return { contours, box: contoursBox(contours) }
}
