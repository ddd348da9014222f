import type { Fit, Garment, Size } from '../garment/garment.ts'

/** Lines of a garment laid flat, as SVG paths in whole µm, x right, y down; `collarY` is the collar seam at its middle. */
export type Silhouette = {
  readonly width: number
  readonly height: number
  readonly middle: number
  readonly collarY: number
  readonly hemY: number
  /** Where sleeves are pressed: the middle of the sleeve on the reader's right, and its hem. */
  readonly sleeve: readonly [x: number, y: number]
  readonly outline: readonly string[]
}

/** Half chest in millimetres of a usual cut (common practice): XS to 4XL, toddlers 2T to 5T. */
const HALF_CHEST: Readonly<Record<Fit, Partial<Readonly<Record<Size, number>>>>> = {
  toddler: { '2T': 300, '3T': 310, '4T': 325, '5T': 340 },
  youth: { XS: 380, S: 410, M: 435, L: 460, XL: 485 },
  women: { XS: 430, S: 455, M: 480, L: 510, XL: 545, '2XL': 590, '3XL': 640, '4XL': 690 },
  men: { XS: 460, S: 485, M: 535, L: 560, XL: 610, '2XL': 660, '3XL': 710, '4XL': 760 },
}
const USUAL: Readonly<Record<Fit, number>> = { toddler: 320, youth: 435, women: 480, men: 535 }

type Kind = Garment['kind']
type Side = 'front' | 'back'
type At = (x: number, y: number) => string

/** Shares of the half chest: how long the body is, how far the sleeves reach, how much stands above the shoulders. */
const SHAPE: Readonly<
  Record<Kind, { readonly body: number; readonly sleeve: 'short' | 'long' | 'none'; readonly above: number }>
> = {
  jersey: { body: 1.42, sleeve: 'short', above: 0.04 },
  't-shirt': { body: 1.35, sleeve: 'short', above: 0.04 },
  polo: { body: 1.35, sleeve: 'short', above: 0.1 },
  hoodie: { body: 1.3, sleeve: 'long', above: 0.42 },
  jacket: { body: 1.3, sleeve: 'long', above: 0.1 },
  bodysuit: { body: 1.45, sleeve: 'none', above: 0.04 },
  shorts: { body: 1.05, sleeve: 'none', above: 0 },
}

const NECK = { front: 0.16, back: 0.05 } as const

const sleevePoints = (kind: Kind): readonly (readonly [number, number])[] => {
  if (SHAPE[kind].sleeve === 'none')
    return [
      [0.4, 0.1],
      [0.42, 0.36],
    ]
  if (SHAPE[kind].sleeve === 'long')
    return [
      [0.47, 0.09],
      [0.74, 0.98],
      [0.6, 1.03],
      [0.5, 0.42],
    ]
  return [
    [0.47, 0.09],
    [0.8, 0.36],
    [0.66, 0.52],
    [0.5, 0.38],
  ]
}

const bodyPath = (at: At, kind: Kind, neck: number): string => {
  const points = sleevePoints(kind)
  const { body } = SHAPE[kind]
  const hem: readonly (readonly [number, number])[] =
    kind === 'bodysuit'
      ? [
          [0.4, 0.8],
          [0.46, 1.12],
          [0.1, body],
        ]
      : [[0.5, body]]
  const right = [...points, ...hem]
  const left = [...right].reverse().map(([x, y]) => [-x, y] as const)
  const line = [...right, ...left].map(([x, y]) => `L${at(x, y)}`).join('')
  return `M${at(0.17, 0)}${line}L${at(-0.17, 0)}Q${at(0, 2 * neck)} ${at(0.17, 0)}Z`
}

const shortsPath = (at: At): string =>
  `M${at(-0.4, 0)}L${at(0.4, 0)}L${at(0.56, 1.05)}L${at(0.06, 1.05)}L${at(0, 0.55)}L${at(-0.06, 1.05)}L${at(-0.56, 1.05)}Z`

const detailPaths = (at: At, kind: Kind, side: Side): readonly string[] => {
  const { body } = SHAPE[kind]
  const neck = NECK[side]
  if (kind === 'hoodie') {
    const hood = `M${at(-0.19, 0.02)}Q${at(-0.3, -0.4)} ${at(0, -0.41)}Q${at(0.3, -0.4)} ${at(0.19, 0.02)}`
    const pocket = `M${at(-0.2, 0.86)}L${at(0.2, 0.86)}L${at(0.3, 1.14)}L${at(-0.3, 1.14)}Z`
    return side === 'front' ? [hood, pocket] : [hood]
  }
  if (kind === 'polo' || kind === 'jacket') {
    const collar = `M${at(-0.17, 0)}Q${at(0, -0.16)} ${at(0.17, 0)}`
    const end = kind === 'jacket' ? body : 0.42
    return side === 'front' ? [collar, `M${at(0, neck)}L${at(0, end)}`] : [collar]
  }
  if (kind === 'shorts') return [`M${at(-0.41, 0.06)}L${at(0.41, 0.06)}`]
  return []
}

const zipPath = (at: At, kind: Kind, side: Side): readonly string[] =>
  side === 'front' && kind === 'hoodie' ? [`M${at(0, NECK.front)}L${at(0, SHAPE[kind].body)}`] : []

export type Laid = { readonly kind: Kind; readonly fit: Fit; readonly size: Size; readonly zipped: boolean }

/** A garment of a kind, fit and size laid flat, seen from one side; usual measures, for drawing only (common practice). */
export const silhouette = ({ kind, fit, size, zipped }: Laid, side: Side): Silhouette => {
  const chest = (HALF_CHEST[fit][size] ?? USUAL[fit]) * 1_000
  const { body, above, sleeve } = SHAPE[kind]
  const reach = kind === 'shorts' ? 0.6 : sleeve === 'none' ? 0.52 : 0.82
  const middle = Math.round(reach * chest)
  const top = Math.round((above + 0.02) * chest)
  const at: At = (x, y) => `${middle + Math.round(x * chest)} ${top + Math.round(y * chest)}`
  const first = kind === 'shorts' ? shortsPath(at) : bodyPath(at, kind, NECK[side])
  const sleeveAt: readonly [number, number] = sleeve === 'long' ? [0.62, 0.98] : [0.66, 0.4]
  return {
    width: 2 * middle,
    height: top + Math.round((body + 0.02) * chest),
    middle,
    collarY: kind === 'shorts' ? top : top + Math.round(NECK[side] * chest),
    hemY: top + Math.round(body * chest),
    sleeve: [Math.round(sleeveAt[0] * chest), top + Math.round(sleeveAt[1] * chest)],
    outline: [first, ...detailPaths(at, kind, side), ...(zipped ? zipPath(at, kind, side) : [])],
  }
}
