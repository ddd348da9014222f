import { between, distance, type Point } from '../geometry/point.ts'
import { crowdsItself, put, type Table, take, twinOf, whole } from './table.ts'

const serves = (point: Point, corners: readonly Point[], pitch: number): boolean =>
  corners.every((corner) => distance(corner, point) <= pitch / 2)

/** Each corner's nearest stone within half a pitch is fixed to it; returns the corners by stone. */
export const guardCorners = (table: Table): Map<number, readonly Point[]> => {
  const guards = new Map<number, readonly Point[]>()
  for (const corner of table.rows.corners) {
    let [nearest, least] = [-1, table.rows.pitch / 2]
    for (const id of table.grid.near(corner, table.rows.pitch / 2)) {
      const stone = table.stones.get(id)
      const twin = stone && twinOf(table.rows, stone.point)
      const away =
        stone === undefined ? Infinity : Math.min(distance(stone.point, corner), twin ? distance(twin, corner) : Infinity)
      if (away < least) [nearest, least] = [id, away]
    }
    const stone = table.stones.get(nearest)
    if (stone === undefined) continue
    table.stones.set(nearest, { ...stone, fixed: true })
    if (distance(stone.point, corner) <= least) guards.set(nearest, [...(guards.get(nearest) ?? []), corner])
  }
  return guards
}

/** Of two corner stones that crowd each other, moves one onto its corner where that parts them. */
const standOnCorner = (table: Table, pair: readonly [number, number], guards: Map<number, readonly Point[]>): void => {
  for (const [id, other] of [pair, [pair[1], pair[0]] as const]) {
    const [stone, found] = [table.stones.get(id), table.stones.get(other)]
    const corners = guards.get(id)
    if (stone === undefined || found === undefined || corners === undefined) continue
    const place = whole(middleOf(corners))
    if (distance(place, found.point) < table.rows.pitch) continue
    take(table, id)
    put(table, id, { ...stone, point: place })
    return
  }
}

/** Two corner stones that face each other across less than a pitch become one that still serves their corners. */
export const shareCorners = (table: Table, guards: Map<number, readonly Point[]>): void => {
  const { pitch, axis } = table.rows
  for (const id of guards.keys()) {
    const stone = table.stones.get(id)
    if (stone === undefined) continue
    if (axis !== undefined && crowdsItself(table.rows, stone.point)) {
      take(table, id)
      put(table, id, { ...stone, point: { x: axis, y: stone.point.y } })
      continue
    }
    for (const other of table.grid.near(stone.point, pitch)) {
      const found = table.stones.get(other)
      if (other === id || found === undefined || !guards.has(other)) continue
      const corners = [...(guards.get(id) ?? []), ...(guards.get(other) ?? [])]
      const places = [between(stone.point, found.point, 0.5), stone.point, found.point, middleOf(corners)]
      const place = places.find((point) => serves(point, corners, pitch - 4))
      if (place === undefined) {
        standOnCorner(table, [id, other], guards)
        continue
      }
      take(table, id)
      take(table, other)
      guards.delete(other)
      guards.set(id, corners)
      put(table, id, { ...stone, point: whole(place) })
      break
    }
  }
}

const middleOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
})
