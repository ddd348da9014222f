import type { Point } from './point.ts'

type Entry = { readonly id: number; readonly x: number; readonly y: number }

/** Points by cells of one width: finds what lies near a place. Ids may repeat (a stone and its mirror image). */
export type Grid = {
  readonly add: (id: number, point: Point) => void
  readonly remove: (id: number) => void
  /** Ids of points nearer than `reach` (at most the cell's width) to the place. */
  readonly near: (place: Point, reach: number) => readonly number[]
  /** Distance to the nearest point of another id; Infinity when none lies within the cell's width. */
  readonly room: (place: Point, except: number) => number
}

const KEYS = 1 << 20

export const createGrid = (cell: number): Grid => {
  const cells = new Map<number, Entry[]>()
  const keyOf = (x: number, y: number): number => (Math.floor(x / cell) + KEYS / 2) * KEYS + Math.floor(y / cell) + KEYS / 2
  const places = new Map<number, number[]>()
  const visit = ({ x, y }: Point, look: (entry: Entry) => void): void => {
    const key = keyOf(x, y)
    for (let column = -1; column <= 1; column += 1)
      for (let row = -1; row <= 1; row += 1) for (const entry of cells.get(key + column * KEYS + row) ?? []) look(entry)
  }
  return {
    add: (id, { x, y }) => {
      const key = keyOf(x, y)
      const entries = cells.get(key)
      if (entries === undefined) cells.set(key, [{ id, x, y }])
      else entries.push({ id, x, y })
      places.set(id, [...(places.get(id) ?? []), key])
    },
    remove: (id) => {
      for (const key of places.get(id) ?? []) {
        const entries = cells.get(key) ?? []
        cells.set(
          key,
          entries.filter((entry) => entry.id !== id),
        )
      }
      places.delete(id)
    },
    near: (place, reach) => {
      const found: number[] = []
      visit(place, ({ id, x, y }) => {
        const [dx, dy] = [x - place.x, y - place.y]
        if (dx * dx + dy * dy < reach * reach) found.push(id)
      })
      return found
    },
    room: (place, except) => {
      let least = Infinity
      visit(place, ({ id, x, y }) => {
        if (id === except) return
        const [dx, dy] = [x - place.x, y - place.y]
        least = Math.min(least, dx * dx + dy * dy)
      })
      return Math.sqrt(least)
    },
  }
}
