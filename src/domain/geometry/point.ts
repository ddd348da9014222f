/** A point in micrometres: x to the right, y up. Fractions are allowed while computing; results are whole. */
export type Point = { readonly x: number; readonly y: number }

export type Box = { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number }

export const distance = (a: Point, b: Point): number => Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y))

export const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
})

/** The element at an index that the caller knows to exist; a missing one is a bug and is thrown. */
export const item = <T>(list: ArrayLike<T>, index: number): T => {
  const found = list[index]
  if (found === undefined) throw new RangeError(`no element ${index} in a list of ${list.length}`)
  return found
}

/** The element of a closed ring, counted round and round. */
export const cyclic = <T>(ring: readonly T[], index: number): T => {
  const length = ring.length
  return item(ring, ((index % length) + length) % length)
}

export const boxOf = (points: Iterable<Point>): Box => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const { x, y } of points) {
    if (x < left) left = x
    if (x > right) right = x
    if (y < bottom) bottom = y
    if (y > top) top = y
  }
  return { left, bottom, right, top }
}

export const joinBoxes = (boxes: Iterable<Box>): Box => {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const box of boxes) {
    left = Math.min(left, box.left)
    bottom = Math.min(bottom, box.bottom)
    right = Math.max(right, box.right)
    top = Math.max(top, box.top)
  }
  return { left, bottom, right, top }
}

export const shiftBox = (box: Box, by: Point): Box => ({
  left: box.left + by.x,
  bottom: box.bottom + by.y,
  right: box.right + by.x,
  top: box.top + by.y,
})

export const isEmptyBox = (box: Box): boolean => !(box.right >= box.left && box.top >= box.bottom)

/** The room between two boxes; 0 when they touch or overlap. */
export const boxGap = (a: Box, b: Box): number => {
  const across = Math.max(0, b.left - a.right, a.left - b.right)
  const along = Math.max(0, b.bottom - a.top, a.bottom - b.top)
  return Math.hypot(across, along)
}
