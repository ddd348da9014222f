/** What is drawn, in points from the left top of a piece, y down. Text is one line, its y the top of the line. */
export type Mark =
  | {
      readonly kind: 'text'
      readonly x: number
      readonly y: number
      readonly text: string
      readonly size: number
      readonly bold: boolean
      readonly width: number
    }
  | {
      readonly kind: 'line'
      readonly from: readonly [number, number]
      readonly to: readonly [number, number]
      readonly weight: number
      readonly dash: boolean
    }
  | {
      readonly kind: 'box'
      readonly x: number
      readonly y: number
      readonly width: number
      readonly height: number
      readonly weight: number
      readonly fill: string | null
    }
  /** An SVG path scaled from its own unit to points. */
  | {
      readonly kind: 'path'
      readonly x: number
      readonly y: number
      readonly scale: number
      readonly path: string
      readonly weight: number
      readonly fill: string | null
    }
  | {
      readonly kind: 'circles'
      readonly x: number
      readonly y: number
      readonly scale: number
      readonly radius: number
      readonly at: readonly (readonly [x: number, y: number])[]
      readonly weight: number
      readonly fill: string | null
    }

/** A part of the tag tree with its marks; `tag` null is decoration that a reader skips. */
export type Node = {
  readonly tag: string | null
  readonly marks: readonly Mark[]
  readonly children: readonly Node[]
  readonly alternative?: string
  readonly scope?: 'Column' | 'Row'
}

/** What a block is in the tag tree while its pieces are spread over pages. */
export type Container = { readonly tag: 'Table' | 'L' | 'Div' }

/**
 * The least that is kept together on a page. `head` is set again when a page begins with this piece; `keep` holds it with the
 * piece that follows.
 */
export type Piece = {
  readonly height: number
  readonly nodes: readonly Node[]
  readonly keep: boolean
  readonly container: Container | null
  readonly head: Piece | null
  /** Pieces of one such group stay on one page where they fit on one. */
  readonly together: object | null
}

export type Page = {
  readonly nodes: readonly {
    readonly sheet: number
    readonly container: Container | null
    readonly node: Node
    readonly y: number
  }[]
}

export const node = (tag: string | null, marks: readonly Mark[], children: readonly Node[] = []): Node => ({
  tag,
  marks,
  children,
})

export const piece = (height: number, nodes: readonly Node[], more: Partial<Piece> = {}): Piece => ({
  height,
  nodes,
  keep: false,
  container: null,
  head: null,
  together: null,
  ...more,
})

export const gap = (height: number): Piece => piece(height, [])

export const rule = (from: readonly [number, number], to: readonly [number, number], weight = 0.5): Mark => ({
  kind: 'line',
  from,
  to,
  weight,
  dash: false,
})

export type Rectangle = readonly [x: number, y: number, width: number, height: number]

export const frame = (
  [x, y, width, height]: Rectangle,
  more: { readonly weight?: number; readonly fill?: string } = {},
): Mark => ({
  kind: 'box',
  x,
  y,
  width,
  height,
  weight: more.weight ?? 0.8,
  fill: more.fill ?? null,
})

const shiftMark = (mark: Mark, dx: number, dy: number): Mark => {
  if (mark.kind !== 'line') return { ...mark, x: mark.x + dx, y: mark.y + dy }
  return { ...mark, from: [mark.from[0] + dx, mark.from[1] + dy], to: [mark.to[0] + dx, mark.to[1] + dy] }
}

export const shift = (part: Node, dx: number, dy: number): Node => ({
  ...part,
  marks: part.marks.map((mark) => shiftMark(mark, dx, dy)),
  children: part.children.map((child) => shift(child, dx, dy)),
})
