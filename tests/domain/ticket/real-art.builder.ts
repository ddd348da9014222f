import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { projectRoot } from '../../../src/adapters/folder/root.ts'
import { openFace } from '../../../src/domain/face/open-face.ts'
import { joinBoxes } from '../../../src/domain/geometry/point.ts'
import { placeStones } from '../../../src/domain/layout/place-stones.ts'
import { roomForRows } from '../../../src/domain/layout/room.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { vinylShape } from '../../../src/domain/layout/vinyl-shape.ts'
import { type Art, artBox, pathOf, stonesOf } from '../../../src/domain/ticket/art.ts'
import { fromMillimetres, micrometres } from '../../../src/domain/units/units.ts'
import { crystal, white } from './facts.builder.ts'

const FOLDER = join(projectRoot(), 'node_modules/@fontsource/saira-condensed/files')
const bytes = ['latin', 'latin-ext'].map(
  (part) => new Uint8Array(readFileSync(join(FOLDER, `saira-condensed-${part}-800-normal.woff`))),
)
const opened = openFace({ id: 'saira-condensed-800', kind: 'numeral', files: [] }, bytes)
if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
const face = opened.value

const setting = { size: 'SS10', hole: fromMillimetres(3.3), web: fromMillimetres(0.5), edgeGap: fromMillimetres(1) }
const style = { style: 'outline', rows: 2, contours: 'both' } as const

/** Letters of a real face with an outline of stones in two rows, or plain vinyl, as the layout engine makes them. */
export const realArt = (text: string, height: number, stones: 'stones' | 'plain'): Art => {
  const leastGap = stones === 'stones' ? { leastGap: roomForRows(setting, style) } : {}
  const shape = setText({ face, text, height: micrometres(height), ...leastGap })
  if (!shape.ok) throw new Error(JSON.stringify(shape.problems))
  const vinyl = vinylShape(shape.value, 'face')
  const path = { kind: 'vinyl', colour: white, path: pathOf(vinyl.contours) } as const
  if (stones === 'plain') return { box: artBox(vinyl.box), inks: [path] }
  const laid = placeStones(shape.value, { setting, style })
  if (!laid.ok) throw new Error(JSON.stringify(laid.problems))
  const at = stonesOf(laid.value)
  const box = {
    left: Math.min(...at.map(([x]) => x)) - 1400,
    right: Math.max(...at.map(([x]) => x)) + 1400,
    bottom: Math.min(...at.map(([, y]) => -y)) - 1400,
    top: Math.max(...at.map(([, y]) => -y)) + 1400,
  }
  return {
    box: artBox(joinBoxes([vinyl.box, box])),
    inks: [path, { kind: 'stones', colour: crystal, diameterMicrometres: 2800, at }],
  }
}
