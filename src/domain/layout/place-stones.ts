import { perimeter, type Region, regionArea } from '../geometry/region.ts'
import { ok, type Result, refuse } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { gatherFlags } from './gather-flags.ts'
import type { Letter, StoneLayout, StonePiece, StoneStyle, TextShape } from './layout.ts'
import { meltNote } from './letters-melt.ts'
import { layPiece } from './piece.ts'
import { type PieceWork, pieceWork, type StonePlan } from './piece-work.ts'
import type { LayoutProblem } from './problems.ts'
import { roomForRows } from './room.ts'
import { pitchOf } from './rows.ts'
import { letterRegion } from './vinyl-shape.ts'

const MOST_ROWS = 3
const MOST_INNER_ROWS = 12
/** More stones than this on one text are a slip of the pen: over two hundred gross. */
const MOST_STONES = 30_000

const refusePlan = ({ setting, style }: StonePlan): readonly LayoutProblem[] => {
  const { size, hole, web, edgeGap } = setting
  const problems: LayoutProblem[] = []
  if (!(hole >= 500 && hole <= 30_000 && web >= 0 && web <= 30_000 && edgeGap >= 0 && edgeGap <= 30_000))
    problems.push({
      code: 'stone-setting-impossible',
      at: '',
      severity: 'stop',
      facts: { size, holeMicrometres: hole, webMicrometres: web },
    })
  if (style.style === 'outline' || style.style === 'rows') {
    const most = style.style === 'outline' ? MOST_ROWS : MOST_INNER_ROWS
    if (!(Number.isInteger(style.rows) && style.rows >= 1 && style.rows <= most))
      problems.push({ code: 'too-many-rows', at: '', severity: 'stop', facts: { rows: style.rows, most } })
  }
  return problems
}

const perRow = (style: StoneStyle): number => (style.style === 'outline' || style.style === 'rows' ? style.rows : 1)

/** About how many stones a style takes: along the edges, or over the area of a fill. */
const expected = (regions: readonly Region[], { setting, style }: StonePlan): number => {
  const pitch = pitchOf(setting)
  if (style.style === 'solid')
    return Math.round(regions.reduce((sum, region) => sum + Math.abs(regionArea(region)), 0) / (0.866 * pitch * pitch))
  const edges = regions.flat().reduce((sum, polygon) => sum + perimeter(polygon), 0)
  return Math.round((edges * perRow(style)) / pitch)
}

const joinedNote = (group: readonly Letter[], room: Micrometres, shape: TextShape): readonly LayoutProblem[] =>
  group.length < 2 || !/^\d+$/.test(shape.text)
    ? []
    : [
        {
          code: 'letters-joined',
          at: '',
          severity: 'note',
          facts: {
            text: group.map(({ text }) => text).join(''),
            neededMicrometres: room,
            remedies: ['wider-tracking', 'fewer-rows', 'smaller-stone'],
          },
        },
      ]

/** The pieces a text takes, once the plan is one that can be laid. */
const workFor = (shape: TextShape, plan: StonePlan): Result<readonly PieceWork[], LayoutProblem> => {
  const refused = refusePlan(plan)
  if (refused.length > 0) return { ok: false, problems: refused }
  const flatness = pitchOf(plan.setting) / 165
  const regions = shape.letters.map((letter) => letterRegion(letter, flatness))
  const about = expected(regions, plan)
  if (about <= MOST_STONES) return ok(pieceWork(shape, plan, regions))
  const remedies = ['larger-stone', 'fewer-rows', 'shorter-text']
  return refuse({
    code: 'stones-too-many',
    at: '',
    severity: 'stop',
    facts: { text: shape.text, about, most: MOST_STONES, remedies },
  })
}

/** Content keys of the pieces that `placeStones` will ask its cache for; none when it will refuse. */
export const pieceKeys = (shape: TextShape, plan: StonePlan): readonly string[] => {
  const work = workFor(shape, plan)
  return work.ok ? work.value.map(({ key }) => key) : []
}

const laidPiece = ({ key, text, at, region }: PieceWork, plan: StonePlan, pen: number): StonePiece => {
  const { setting, style, under = 'vinyl', cache } = plan
  const stones = cache?.get(key) ?? layPiece(region(), { text, setting, style, under, pen })
  cache?.set(key, stones)
  return { ...stones, text, key, at: [micrometres(at.x), micrometres(at.y)], count: stones.stones.length }
}

/**
 * Stones for a text, piece by piece: letters whose rows would crowd each other are one piece, laid out as their union.
 * Whole micrometres, each piece relative to its `at`. Refuses impossible settings, more rows than can be made, and text that
 * leaves no room for a single stone.
 */
export const placeStones = (shape: TextShape, plan: StonePlan): Result<StoneLayout, LayoutProblem> => {
  const work = workFor(shape, plan)
  if (!work.ok) return work
  const { setting, style } = plan
  const pieces = work.value.map((one) => laidPiece(one, plan, shape.pen))
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0)
  if (count === 0) {
    const remedies = ['smaller-stone', 'larger-letters']
    const facts = { text: shape.text, size: setting.size, remedies }
    return refuse({ code: 'no-room-for-stones', at: '', severity: 'stop', facts })
  }
  const room = roomForRows(setting, style)
  const notes = work.value.flatMap(({ letters }) => joinedNote(letters, room, shape))
  const flags = gatherFlags([...meltNote(shape, plan), ...notes, ...pieces.flatMap(({ evidence }) => evidence.flags)])
  return ok({ setting, style, pieces, count, flags })
}
