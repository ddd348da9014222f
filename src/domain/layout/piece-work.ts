import { regionGap } from '../geometry/nearness.ts'
import { boxGap, item, type Point, shiftBox } from '../geometry/point.ts'
import { type Region, shiftRegion } from '../geometry/region.ts'
import { contentKey } from './content-key.ts'
import type { LayoutCache, Letter, StoneSetting, StoneStyle, TextShape, VinylForm } from './layout.ts'
import { roomForRows } from './room.ts'
import { formRegion } from './vinyl-shape.ts'

export type StonePlan = {
  readonly setting: StoneSetting
  readonly style: StoneStyle
  /** The outermost vinyl the stones stand beside or on. */
  readonly around?: VinylForm
  readonly under?: 'vinyl' | 'cloth'
  readonly cache?: LayoutCache
}

/** A piece still to be laid: the letters that are laid out as one, its content key, and the region of its vinyl around `at`. */
export type PieceWork = {
  readonly key: string
  readonly text: string
  readonly letters: readonly Letter[]
  readonly at: Point
  readonly region: () => Region
}

/** Neighbours nearer than the rows need, joined transitively. */
const groupLetters = (letters: readonly Letter[], regions: readonly Region[], room: number): readonly (readonly number[])[] => {
  const owner = letters.map((_, index) => index)
  const root = (index: number): number => (owner[index] === index ? index : root(item(owner, index)))
  for (let one = 0; one < letters.length; one += 1) {
    for (let two = one + 1; two < letters.length; two += 1) {
      const [a, b] = [item(letters, one), item(letters, two)]
      if (root(one) === root(two) || boxGap(shiftBox(a.box, a.at), shiftBox(b.box, b.at)) >= room) continue
      if (regionGap(item(regions, one), item(regions, two), room) < room) owner[root(two)] = root(one)
    }
  }
  const groups = new Map<number, number[]>()
  for (const index of letters.keys()) groups.set(root(index), [...(groups.get(root(index)) ?? []), index])
  return [...groups.values()]
}

const extraRoom = (form: VinylForm): number => {
  if (form === 'face') return 0
  return 'surround' in form ? 2 * form.surround : Math.abs(form.shadow[0]) + Math.abs(form.shadow[1])
}

/** The pieces of a text, in reading order: `regions` are those of its letters, flattened. */
export const pieceWork = (shape: TextShape, plan: StonePlan, regions: readonly Region[]): readonly PieceWork[] => {
  const { setting, style, around = 'face', under = 'vinyl' } = plan
  const room = roomForRows(setting, style) + extraRoom(around)
  return groupLetters(shape.letters, regions, room).map((indexes) => {
    const letters = indexes.map((index) => item(shape.letters, index))
    const { at } = item(letters, 0)
    const joined = (): Region => indexes.flatMap((index) => item(regions, index))
    return {
      key: contentKey(shape, letters, { setting, style, around, under }),
      text: letters.map((letter) => letter.text).join(''),
      letters,
      at,
      region: () => formRegion(shiftRegion(joined(), { x: -at.x, y: -at.y }), around),
    }
  })
}
