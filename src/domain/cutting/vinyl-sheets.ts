import { type Affine, type Contour, changeContours } from '../geometry/contour.ts'
import { type Box, item, type Point } from '../geometry/point.ts'
import { ok, type Result } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { packInTurn } from './pack-in-turn.ts'
import { type LoosePart, placePart } from './place-part.ts'
import type { CuttingProblem } from './problems.ts'
import type { Mark, Sheet, SheetPart, SheetWords } from './sheet.ts'

/** One name or number of one layer. All layers of a piece share their axes, so their ticks meet. */
export type CutPart = {
  readonly key: string
  /** Job, row and place, readable beside the weeding box. */
  readonly tag: string
  readonly contours: readonly Contour[]
  readonly box: Box
  /** Middle of the text in the part's axes; every layer of a piece has the same. */
  readonly centre: number
}

/** The roll a colour is cut from, as its record says. */
export type Roll = {
  readonly id: string
  readonly cut: 'mirrored' | 'as-read'
  readonly grain: boolean
  readonly width: Micrometres
  /** Unusable on each side. */
  readonly margin: Micrometres
  readonly kerf: Micrometres
  readonly bladeOffset: Micrometres
}

export type CutRoom = {
  readonly weedMargin: Micrometres
  /** Between two weeding boxes; at least 3 mm. */
  readonly partGap: Micrometres
  readonly tagHeight: Micrometres
}

/** Common practice: a weeding box 3 mm round the piece, 3 mm from box to box, tags of 4 mm. */
export const usualCutRoom: CutRoom = {
  weedMargin: micrometres(3_000),
  partGap: micrometres(3_000),
  tagHeight: micrometres(4_000),
}

const TICK = 2_000

const ticks = (frame: Box, baseline: Point): readonly Mark[] => {
  const { left, right, bottom, top } = frame
  const tick = (from: Point, to: Point): Mark => ({ kind: 'tick', from, to })
  return [
    tick({ x: baseline.x, y: top }, { x: baseline.x, y: top - TICK }),
    tick({ x: baseline.x, y: bottom }, { x: baseline.x, y: bottom + TICK }),
    tick({ x: left, y: baseline.y }, { x: left + TICK, y: baseline.y }),
    tick({ x: right, y: baseline.y }, { x: right - TICK, y: baseline.y }),
  ]
}

const frameRound = ({ left, bottom, right, top }: Box, by: number): Box => ({
  left: left - by,
  bottom: bottom - by,
  right: right + by,
  top: top + by,
})

const loosePart = (part: CutPart, roll: Roll, room: CutRoom): LoosePart => {
  const mirrored = roll.cut === 'mirrored'
  const change: Affine = mirrored ? [-1, 0, 0, 1, part.box.left + part.box.right, 0] : [1, 0, 0, 1, 0, 0]
  const centre = mirrored ? part.box.left + part.box.right - part.centre : part.centre
  const frame = frameRound(part.box, room.weedMargin)
  const tag: Mark = {
    kind: 'text',
    at: { x: frame.left, y: frame.bottom - room.tagHeight },
    height: room.tagHeight * 0.8,
    text: part.tag,
  }
  const gap = room.partGap
  return {
    key: part.key,
    tag: part.tag,
    contours: changeContours(part.contours, change),
    holes: [],
    frame,
    marks: [...ticks(frame, { x: centre, y: 0 }), tag],
    outside: { left: frame.left, right: frame.right + gap, top: frame.top + gap, bottom: frame.bottom - room.tagHeight },
  }
}

export type CutSheet = Sheet & { readonly material: string; readonly usedLength: Micrometres }

const headMarks = (sheet: Omit<Sheet, 'marks'>, roll: Roll, words: SheetWords): readonly Mark[] => {
  const text = [
    sheet.reads === 'backwards' ? words.backwards : words.right,
    roll.id,
    words.kerf(roll.kerf),
    words.blade(roll.bladeOffset),
  ].join(' · ')
  return [{ kind: 'text', at: { x: roll.margin, y: sheet.length - HEAD * 0.7 }, height: 4_000, text }]
}

/** Room at the top of a sheet for its own line of words. */
const HEAD = 8_000

/**
 * All pieces of one colour on the shop's roll, listed in the order they come (the roster's) and lying within three places of
 * it, each whole, with weeding box, ticks and tag; mirrored where the material is cut mirrored, never turned where it has grain. `part-wider-than-roll` names each piece
 * that cannot be cut from it.
 */
export const vinylSheet = (
  parts: readonly CutPart[],
  roll: Roll,
  words: SheetWords,
  room: CutRoom = usualCutRoom,
): Result<CutSheet, CuttingProblem> => {
  const usable = roll.width - 2 * roll.margin + room.partGap
  const loose = parts.map((part) => loosePart(part, roll, room))
  const sizes = loose.map(({ outside }) => ({
    width: Math.ceil(outside.right - outside.left),
    height: Math.ceil(outside.top - outside.bottom),
  }))
  const turns = sizes.map((size) => ({ size, mayTurn: !roll.grain && size.width > usable }))
  const { spots, height } = packInTurn(turns, usable)
  const problems = parts.flatMap(({ tag }, index): CuttingProblem[] => {
    if (spots[index] !== undefined) return []
    const facts = { tag, widthMicrometres: item(sizes, index).width, mostMicrometres: usable, material: roll.id }
    return [{ code: 'part-wider-than-roll', at: '', severity: 'stop', facts }]
  })
  if (problems.length > 0) return { ok: false, problems }
  const placed = loose.flatMap((part, index): SheetPart[] => {
    const spot = spots[index]
    return spot === undefined ? [] : [placePart(part, { x: spot.x + roll.margin, y: spot.y }, spot.turned)]
  })
  const length = micrometres(height + HEAD)
  const sheet: Omit<Sheet, 'marks'> = {
    id: roll.id,
    width: roll.width,
    length,
    reads: roll.cut === 'mirrored' ? 'backwards' : 'right',
    parts: placed,
  }
  return ok({ ...sheet, marks: headMarks(sheet, roll, words), material: roll.id, usedLength: length })
}
