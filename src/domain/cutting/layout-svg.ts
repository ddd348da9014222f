import type { StoneLayout, TextShape, VinylForm } from '../layout/layout.ts'
import { vinylShape } from '../layout/vinyl-shape.ts'
import { pathData, penFrom } from './svg-path.ts'

const VINYL = '#8a93a6'
const GROUND = '#1f2a44'
const STONE = '#f4f6fb'

/** A picture of a text with its stones as circles of the hole's width: millimetres, no transforms. */
export const layoutSvg = (shape: TextShape, layout: StoneLayout, form: VinylForm = 'face'): string => {
  const { hole } = layout.setting
  const margin = 2 * hole
  const vinyl = vinylShape(shape, form)
  const boxes = [
    vinyl.box,
    ...layout.pieces.map(({ box, at: [x, y] }) => ({
      left: box.left + x,
      right: box.right + x,
      bottom: box.bottom + y,
      top: box.top + y,
    })),
  ]
  const left = Math.min(...boxes.map((box) => box.left)) - margin
  const top = Math.max(...boxes.map((box) => box.top)) + margin
  const width = (Math.max(...boxes.map((box) => box.right)) + margin - left) / 1000
  const height = (top - Math.min(...boxes.map((box) => box.bottom)) + margin) / 1000
  const pen = penFrom(left, top)
  const circles = layout.pieces.flatMap(({ stones, at: [x, y] }) =>
    stones.map(([sx, sy]) => {
      const [cx, cy] = pen({ x: x + sx, y: y + sy }).split(' ')
      return `<circle cx="${cx}" cy="${cy}" r="${hole / 2000}" fill="${STONE}"/>`
    }),
  )
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<rect width="${width}" height="${height}" fill="${GROUND}"/>`,
    `<path fill="${VINYL}" d="${vinyl.contours.map((contour) => pathData(contour, pen)).join('')}"/>`,
    ...circles,
    '</svg>\n',
  ].join('\n')
}
