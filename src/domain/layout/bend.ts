import { type Affine, moved } from '../geometry/contour.ts'
import type { TextLine } from './layout.ts'

/** An arc may bend to a half circle: its rise is at most the width over π. */
export const mostRise = (width: number): number => width / Math.PI

/** Radius of the arc of the given length whose middle stands `rise` above its ends, by halving the angle's interval. */
const radiusOf = (length: number, rise: number): number => {
  let [low, high] = [1e-6, Math.PI / 2]
  for (let round = 0; round < 60; round += 1) {
    const half = (low + high) / 2
    const sagitta = (length / (2 * half)) * (1 - Math.cos(half))
    if (sagitta < rise) low = half
    else high = half
  }
  return length / (low + high)
}

export type Bend = { readonly turn: string; readonly change: Affine }

const onArc = (centre: number, origin: number, width: number, rise: number): Bend => {
  const radius = radiusOf(width, Math.abs(rise))
  const up = Math.sign(rise)
  const angle = ((centre - width / 2) / radius) * up
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)]
  const x = width / 2 + radius * sine * up
  const y = up * radius * (cosine - Math.cos(width / (2 * radius)))
  const left = origin - centre
  return { turn: angle.toFixed(6), change: [cosine, -sine, sine, cosine, x + left * cosine, y - left * sine] }
}

/** How the line moves one letter: `centre` and `origin` along the straight baseline, from 0 to `width`. */
export const bendLetter = (line: TextLine, centre: number, origin: number, width: number): Bend => {
  if (line.kind === 'straight' || line.rise === 0 || width <= 0) return { turn: '0', change: moved({ x: origin, y: 0 }) }
  if (line.kind === 'arc') return onArc(centre, origin, width, line.rise)
  const climb = line.rise / width
  return { turn: `s${climb.toFixed(6)}`, change: [1, climb, 0, 1, origin, origin * climb] }
}
