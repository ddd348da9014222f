import { item } from '../geometry/point.ts'
import { emptyStrip, heightOf, placeNext, type Size, type Spot, type Strip } from './skyline.ts'

/** A part may be placed this many places before its turn, or as many after it. */
const AHEAD = 3

const copied = ({ levels }: Strip): Strip => ({ levels: levels.map((level) => ({ ...level })) })

/** A rectangle and whether it may be turned by 90°. */
export type Turn = { readonly size: Size; readonly mayTurn: boolean }

export type InTurn = { readonly spots: readonly (Spot | undefined)[]; readonly height: number }

/**
 * Rectangles on a strip nearly in the order they come: of the next four the first that makes the strip no longer is placed, or
 * else the one whose turn it is; none waits more than three places past its turn. A spot is undefined where a rectangle is wider than the strip.
 */
export const packInTurn = (turns: readonly Turn[], width: number): InTurn => {
  const strip = emptyStrip(width)
  const spots: (Spot | undefined)[] = turns.map(() => undefined)
  const waiting = [...turns.keys()]
  const fits = (index: number): boolean => {
    const trial = copied(strip)
    const { size, mayTurn } = item(turns, index)
    placeNext(trial, size, mayTurn, Infinity)
    return heightOf(trial) <= heightOf(strip)
  }
  for (let placed = 0; waiting.length > 0; placed += 1) {
    const first = item(waiting, 0)
    const late = placed - first >= AHEAD
    const index = late ? first : (waiting.slice(0, 1 + AHEAD).find(fits) ?? first)
    const { size, mayTurn } = item(turns, index)
    spots[index] = placeNext(strip, size, mayTurn, Infinity)
    waiting.splice(waiting.indexOf(index), 1)
  }
  return { spots, height: heightOf(strip) }
}
